import { isAddress } from '../formula/address'
import type { ReadCell } from '../workbook/openBook'
import { readCell } from './readWorkbook'
import { run } from './run'

/** See WorkbookPort. */
export function valuesOf(reference: string, sheet: string): Promise<readonly (readonly ReadCell[])[] | undefined> {
  return run(async (context) => {
    const found = rangeOf(context, reference, sheet)
    const candidates = 'ofBook' in found ? [found.ofSheet, found.ofBook] : [found]
    for (const range of candidates) range.load(['values', 'valueTypes'])
    try {
      await context.sync()
    } catch (problem) {
      const { code = '' } = problem as { code?: string }
      if (namesNoCells.has(code)) return undefined
      throw problem
    }
    const range = 'ofBook' in found ? (found.own.isNullObject ? found.ofBook : found.ofSheet) : found
    return range.isNullObject
      ? undefined
      : range.values.map((row, index) =>
          row.map((value: unknown, column) => readCell(value, range.valueTypes[index]?.[column])),
        )
  })
}

/** Excel's codes for a reference that is none, or whose sheet is not there. */
const namesNoCells = new Set(['InvalidArgument', 'InvalidReference', 'ItemNotFound'])

/** What a name stands for; one of the sheet itself goes before one of the workbook, even where it names no cells. */
interface Named {
  readonly own: Excel.NamedItem
  readonly ofSheet: Excel.Range
  readonly ofBook: Excel.Range
}

function rangeOf(context: Excel.RequestContext, reference: string, sheet: string): Excel.Range | Named {
  const { worksheets, names } = context.workbook
  const end = reference.lastIndexOf('!')
  if (end >= 0)
    return worksheets
      .getItem(reference.slice(0, end).replace(/^'|'$/g, '').replaceAll("''", "'"))
      .getRange(reference.slice(end + 1))
  if (isAddress(reference)) return worksheets.getItem(sheet).getRange(reference)
  const own = worksheets.getItemOrNullObject(sheet).names.getItemOrNullObject(reference)
  own.load(['name'])
  return {
    own,
    ofSheet: own.getRangeOrNullObject(),
    ofBook: names.getItemOrNullObject(reference).getRangeOrNullObject(),
  }
}
