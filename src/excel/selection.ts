/** What is selected in Excel; see WorkbookPort. */
import type { CellPlace } from '../workbook/cellPlace'
import type { SelectedCell } from '../workbook/port'
import { namesOfSheet } from './names'
import { blankAsNull, isFormula } from './readCell'
import { run } from './run'
import { plainFormulas } from './plainFormulas'
import { tablesOf } from './tables'
import { withoutSheet } from './withoutSheet'

export function selectedCell(): Promise<SelectedCell> {
  return run(async (context) => {
    const cell = context.workbook.getActiveCell()
    cell.load(['address', 'rowIndex', 'columnIndex', 'formulas', 'values'])
    const sheet = context.workbook.worksheets.getActiveWorksheet()
    sheet.load(['name'])
    const own = namesOfSheet(sheet)
    await context.sync()
    const formula = (await plainFormulas(cell, sheet.name, own, tablesOf(context)))[0]?.[0]
    return {
      sheet: sheet.name,
      address: withoutSheet(cell.address),
      formula: isFormula(formula) ? formula : '',
      value: blankAsNull(cell.values[0]?.[0]),
    }
  })
}

export function selectedRange(): Promise<CellPlace> {
  return run(async (context) => {
    const range = context.workbook.getSelectedRange()
    range.load(['address'])
    const sheet = context.workbook.worksheets.getActiveWorksheet()
    sheet.load(['name'])
    await context.sync()
    return { sheet: sheet.name, address: withoutSheet(range.address) }
  })
}

export function select({ sheet, address }: CellPlace): Promise<void> {
  return run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet)
    worksheet.activate()
    worksheet.getRange(address).select()
    await context.sync()
  })
}
