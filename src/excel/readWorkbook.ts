/** Reads the open workbook sheet by sheet: what stands in the used cells, and the calls that the log knows of them. */
import { addressOf } from '../derived/reference'
import type { OpenBook, OpenCell, ReadCell } from '../workbook/openBook'
import type { CallLog } from './callLog'

export async function readWorkbook(context: Excel.RequestContext, log: CallLog): Promise<OpenBook> {
  const { worksheets, names } = context.workbook
  worksheets.load(['items/name'])
  names.load(['items/name', 'items/formula', 'items/type'])
  await context.sync()
  const used = worksheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true)
    range.load(['rowIndex', 'columnIndex', 'formulas', 'values', 'valueTypes'])
    return { name: sheet.name, range }
  })
  await context.sync()
  return {
    names: names.items.filter(({ type }) => type === 'Range').map(({ name, formula }) => ({ name, refersTo: String(formula).replace(/^=/, '') })),
    sheets: used.map(({ name, range }) => ({ name, cells: range.isNullObject ? new Map<string, OpenCell>() : cellsOf(name, range, log) })),
  }
}

export async function isEmpty(context: Excel.RequestContext): Promise<boolean> {
  const { worksheets } = context.workbook
  worksheets.load(['items/name'])
  await context.sync()
  const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true))
  await context.sync()
  return used.every(({ isNullObject }) => isNullObject)
}

function cellsOf(sheet: string, { rowIndex, columnIndex, formulas, values, valueTypes }: Excel.Range, log: CallLog): ReadonlyMap<string, OpenCell> {
  const cells = new Map<string, OpenCell>()
  values.forEach((row, down) => row.forEach((content: unknown, across: number) => {
    const value = readCell(content, valueTypes[down]?.[across])
    const typed: unknown = formulas[down]?.[across]
    const formula = isFormula(typed) ? typed : ''
    if (value === null && formula === '') return
    const address = addressOf(rowIndex + down, columnIndex + across)
    const calls = log.of(`${sheet}!${address}`)
    cells.set(address, { row: rowIndex + down, column: columnIndex + across, formula, value, calls: calls.length === 0 ? undefined : calls })
  }))
  return cells
}

export function isFormula(content: unknown): content is string {
  return typeof content === 'string' && content.startsWith('=')
}

export function readCell(value: unknown, type: unknown): ReadCell {
  return type === 'Error' ? { kind: 'cellError', code: String(value) } : blankAsNull(value)
}

export function blankAsNull(value: unknown): string | number | boolean | null {
  return value === '' || value === undefined ? null : value as string | number | boolean
}
