import type { CellPlace } from '../workbook/port'
import { isFormula } from './readWorkbook'
import { asOneUndo, run } from './run'

/** See WorkbookPort. */
export async function insertRow({ sheet, address }: CellPlace): Promise<void> {
  await run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet)
    const cell = worksheet.getRange(address)
    cell.load(['rowIndex'])
    await context.sync()
    const row = cell.rowIndex
    const above = worksheet.getRange(`${row}:${row}`).getUsedRange()
    above.load(['columnIndex', 'formulas'])
    worksheet.getRange(`${row + 1}:${row + 1}`).insert('Down')
    await context.sync()

    const inserted = worksheet.getRange(`${row + 1}:${row + 1}`)
    try {
      inserted.copyFrom(`${row}:${row}`)
      above.formulas[0]?.forEach((content: unknown, index) => {
        if (content !== '' && !isFormula(content))
          worksheet.getRangeByIndexes(row, above.columnIndex + index, 1, 1).formulas = [['']]
      })
      await context.sync()
    } catch (problem) {
      // An empty row in the middle of the lines would be half a line.
      worksheet.getRange(`${row + 1}:${row + 1}`).delete('Up')
      await context.sync()
      throw problem
    }
  }, asOneUndo())
}
