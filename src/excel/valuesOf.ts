import type { PortProblem } from '../workbook/port'
import { ask } from './ask'
import { isAddress } from '../formula/address'
import type { ReadCell } from '../workbook/openBook'
import { readCell } from './readCell'

/** See WorkbookPort. */
export function valuesOf(reference: string, sheet: string): Promise<readonly (readonly ReadCell[])[] | undefined> {
  return ask((context) => {
    const found = rangeOf(context, reference, sheet)
    const candidates = 'ofBook' in found ? [found.ofSheet, found.ofBook] : [found]
    for (const range of candidates) range.load(['values', 'valueTypes'])
    return () => {
      const range = 'ofBook' in found ? (found.own.isNullObject ? found.ofBook : found.ofSheet) : found
      return range.isNullObject ? undefined : cellsOf(range)
    }
  }).catch((problem: PortProblem) => {
    if (namesNoCells.has((problem.cause as { code?: string } | undefined)?.code ?? '')) return undefined
    throw problem
  })
}

function cellsOf({ values, valueTypes }: Excel.Range): readonly (readonly ReadCell[])[] {
  return values.map((row, index) => row.map((value: unknown, column) => readCell(value, valueTypes[index]?.[column])))
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
