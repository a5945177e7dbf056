import type { CellPlace } from '../workbook/cellPlace'
import { isFormula } from './readCell'
import { asOneUndo, run } from './run'

/** See WorkbookPort. */
export async function insertRows({ sheet, address }: CellPlace, count: number): Promise<void> {
  await run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet)
    const cell = worksheet.getRange(address)
    cell.load(['rowIndex'])
    await context.sync()
    const row = cell.rowIndex
    const above = worksheet.getRange(`${row}:${row}`).getUsedRange()
    above.load(['columnIndex', 'formulas'])
    const insertedRows = () => worksheet.getRange(`${row + 1}:${row + count}`)
    insertedRows().insert('Down')
    await context.sync()

    try {
      insertedRows().copyFrom(`${row}:${row}`)
      above.formulas[0]?.forEach((content: unknown, index) => {
        if (content !== '' && !isFormula(content))
          worksheet.getRangeByIndexes(row, above.columnIndex + index, count, 1).formulas = Array(count).fill([''])
      })
      await context.sync()
    } catch (problem) {
      // Empty rows in the middle of the lines would be halves of lines.
      insertedRows().delete('Up')
      await context.sync()
      throw problem
    }
  }, asOneUndo())
}
