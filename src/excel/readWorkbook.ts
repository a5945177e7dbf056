/** Reads the open workbook sheet by sheet: what stands in the used cells, and the calls that the log knows of them. */
import { idsCalled } from '../formula/idsCalled'
import { addressOf } from '../formula/address'
import type { DefinedName } from '../workbook/book'
import type { OpenBook, OpenCell, OpenSheet, ReadCell } from '../workbook/openBook'
import type { CallLog } from './callLog'
import { knows } from './run'

export async function readWorkbook(context: Excel.RequestContext, log: CallLog): Promise<OpenBook> {
  const { worksheets, names } = context.workbook
  worksheets.load(['items/name'])
  loadNames(names)
  await context.sync()
  const used = worksheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true)
    range.load(['rowIndex', 'columnIndex', 'formulas', 'values', 'valueTypes'])
    return { name: sheet.name, range }
  })
  await context.sync()
  const sheets: OpenSheet[] = []
  for (const { name, range } of used) {
    sheets.push({ name, cells: range.isNullObject ? new Map<string, OpenCell>() : cellsOf(name, range, log, await spillsOf(name, range)) })
  }
  return { names: namesOfCells(names), sheets }
}

export function loadNames(names: Excel.NamedItemCollection): void {
  names.load(['items/name', 'items/formula', 'items/type'])
}

/** Of names that were loaded: those that stand for cells. */
export function namesOfCells({ items }: Excel.NamedItemCollection): readonly DefinedName[] {
  return items.filter(({ type }) => type === 'Range').map(({ name, formula }) => ({ name, refersTo: String(formula).replace(/^=/, '') }))
}

/** A question about so many cells stays far below the longest message that Excel takes. */
const mostAsked = 4000

/** The ranges that formulas of ours fill, by their place in the used range: "3,0". */
async function spillsOf(sheet: string, range: Excel.Range): Promise<ReadonlyMap<string, string>> {
  const worksheet = range.context.workbook.worksheets.getItem(sheet)
  const places = range.formulas.flatMap((row: readonly unknown[], down) => row.flatMap((content, across) => (isOurs(content) ? [{ down, across }] : [])))
  const spills = new Map<string, string>()
  if (!knows('1.12')) return spills
  for (let first = 0; first < places.length; first += mostAsked) {
    const asked = places.slice(first, first + mostAsked).map(({ down, across }) => {
      const filled = worksheet.getRangeByIndexes(range.rowIndex + down, range.columnIndex + across, 1, 1).getSpillingToRangeOrNullObject()
      filled.load(['address', 'cellCount'])
      return { place: `${down},${across}`, filled }
    })
    await range.context.sync()
    for (const { place, filled } of asked) {
      if (!filled.isNullObject && filled.cellCount > 1) spills.set(place, withoutSheet(filled.address))
    }
  }
  return spills
}

function isOurs(content: unknown): boolean {
  return isFormula(content) && idsCalled(content).length > 0
}

/** Excel names the sheet too, and a sheet's name may itself hold an exclamation mark. */
export function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf('!') + 1)
}

export async function isEmpty(context: Excel.RequestContext): Promise<boolean> {
  const { worksheets } = context.workbook
  worksheets.load(['items/name'])
  await context.sync()
  const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true))
  await context.sync()
  return used.every(({ isNullObject }) => isNullObject)
}

function cellsOf(sheet: string, { rowIndex, columnIndex, formulas, values, valueTypes }: Excel.Range, log: CallLog, spills: ReadonlyMap<string, string>): ReadonlyMap<string, OpenCell> {
  const cells = new Map<string, OpenCell>()
  values.forEach((row, down) => row.forEach((content: unknown, across: number) => {
    const value = readCell(content, valueTypes[down]?.[across])
    const typed: unknown = formulas[down]?.[across]
    const formula = isFormula(typed) ? typed : ''
    if (value === null && formula === '') return
    const address = addressOf(rowIndex + down, columnIndex + across)
    const calls = log.of(`${sheet}!${address}`)
    const spill = spills.get(`${down},${across}`)
    cells.set(address, { row: rowIndex + down, column: columnIndex + across, formula, value, calls: calls.length === 0 ? undefined : calls, ...(spill && { spill }) })
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
