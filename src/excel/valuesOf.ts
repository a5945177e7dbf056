import { isAddress } from '../formula/address'
import type { ReadCell } from '../workbook/openBook'
import { readCell } from './readWorkbook'
import { run } from './run'

/** See WorkbookPort. */
export function valuesOf(reference: string, sheet: string): Promise<readonly (readonly ReadCell[])[] | undefined> {
  return run(async (context) => {
    const range = rangeOf(context, reference, sheet)
    range.load(['values', 'valueTypes'])
    try {
      await context.sync()
    } catch (problem) {
      const { code = '' } = problem as { code?: string }
      if (namesNoCells.has(code)) return undefined
      throw problem
    }
    return range.isNullObject
      ? undefined
      : range.values.map((row, index) =>
          row.map((value: unknown, column) => readCell(value, range.valueTypes[index]?.[column])),
        )
  })
}

/** Excel's codes for a reference that is none, or whose sheet is not there. */
const namesNoCells = new Set(['InvalidArgument', 'InvalidReference', 'ItemNotFound'])

function rangeOf(context: Excel.RequestContext, reference: string, sheet: string): Excel.Range {
  const { worksheets, names } = context.workbook
  const end = reference.lastIndexOf('!')
  if (end >= 0)
    return worksheets
      .getItem(reference.slice(0, end).replace(/^'|'$/g, '').replaceAll("''", "'"))
      .getRange(reference.slice(end + 1))
  return isAddress(reference)
    ? worksheets.getItem(sheet).getRange(reference)
    : names.getItemOrNullObject(reference).getRangeOrNullObject()
}
