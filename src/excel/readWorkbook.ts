/** Reads the open workbook sheet by sheet: what stands in the used cells, and the calls that the log knows of them. */
import { idsCalled } from '../formula/idsCalled'
import { addressOf } from '../formula/address'
import type { DefinedName } from '../workbook/book'
import type { OpenBook, OpenCell, OpenSheet, ReadCell } from '../workbook/openBook'
import { isWaiting } from '../workbook/waiting'
import type { CallLog } from './callLog'
import { knows } from './run'

/** In milliseconds: so long a read waits for results, asking so often. What waits longer is read as it is. */
const [longestWait, betweenReads] = [20_000, 100]

/** Excel shows an error value in a cell whose function it is still asking, so the workbook is read once none is left. */
export async function readWorkbook(
  context: Excel.RequestContext,
  log: CallLog,
  patience = longestWait,
): Promise<OpenBook> {
  const book = await readOnce(context, log)
  const waits = book.sheets.some(({ cells }) => [...cells.values()].some(({ value }) => isWaiting(value)))
  if (!waits || patience <= 0) return book
  await new Promise((resolve) => setTimeout(resolve, betweenReads))
  return readWorkbook(context, log, patience - betweenReads)
}

async function readOnce(context: Excel.RequestContext, log: CallLog): Promise<OpenBook> {
  const { worksheets, names } = context.workbook
  worksheets.load(['items/name'])
  loadNames(names)
  await context.sync()
  const used = worksheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true)
    loadCells(range)
    return { name: sheet.name, range }
  })
  await context.sync()
  const sheets: OpenSheet[] = []
  for (const { name, range } of used) sheets.push(await readSheet(name, range, log))
  return { names: namesOfCells(names), sheets }
}

/** See WorkbookPort. */
export async function readRows(
  context: Excel.RequestContext,
  log: CallLog,
  sheet: string,
  first: number,
  last: number,
): Promise<OpenSheet | undefined> {
  const { worksheets } = context.workbook
  worksheets.load(['items/name'])
  await context.sync()
  const worksheet = worksheets.items.find(({ name }) => name.toLowerCase() === sheet.toLowerCase())
  if (worksheet === undefined) return undefined
  const range = worksheet.getRange(`${first + 1}:${last + 1}`).getUsedRangeOrNullObject(true)
  loadCells(range)
  await context.sync()
  return readSheet(worksheet.name, range, log)
}

function loadCells(range: Excel.Range): void {
  range.load(['rowIndex', 'columnIndex', 'formulas', 'values', 'valueTypes'])
}

/** @param range Loaded. */
async function readSheet(name: string, range: Excel.Range, log: CallLog): Promise<OpenSheet> {
  if (range.isNullObject) return { name, cells: new Map<string, OpenCell>() }
  return { name, cells: cellsOf(name, range, log, await spillsOf(name, range), await boldIn(name, range)) }
}

export function loadNames(names: Excel.NamedItemCollection): void {
  names.load(['items/name', 'items/formula', 'items/type', 'items/visible'])
}

/** Of names that were loaded: those that stand for cells. Hidden ones Excel makes for itself, such as that of a filter. */
export function namesOfCells({ items }: Excel.NamedItemCollection): readonly DefinedName[] {
  return items
    .filter(({ type, visible }) => type === 'Range' && visible)
    .map(({ name, formula }) => ({ name, refersTo: String(formula).replace(/^=/, '') }))
}

/** A question about so many cells stays far below the longest message that Excel takes. */
const mostAsked = 4000

/** The ranges that formulas of ours fill, by their place in the used range: "3,0". */
async function spillsOf(sheet: string, range: Excel.Range): Promise<ReadonlyMap<string, string>> {
  const worksheet = range.context.workbook.worksheets.getItem(sheet)
  const places = range.formulas.flatMap((row: readonly unknown[], down) =>
    row.flatMap((content, across) => (isOurs(content) ? [{ down, across }] : [])),
  )
  const spills = new Map<string, string>()
  if (!knows('1.12')) return spills
  for (let first = 0; first < places.length; first += mostAsked) {
    const asked = places.slice(first, first + mostAsked).map(({ down, across }) => {
      const filled = worksheet
        .getRangeByIndexes(range.rowIndex + down, range.columnIndex + across, 1, 1)
        .getSpillingToRangeOrNullObject()
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

/** So many cells are asked for their letters at once, which stays far below the longest answer that Excel gives. */
const mostLetters = 20_000

/** Which cells of a range are bold, row by row; of none where this Excel cannot say. */
async function boldIn(sheet: string, range: Excel.Range): Promise<readonly (readonly boolean[])[]> {
  if (!knows('1.9')) return []
  const worksheet = range.context.workbook.worksheets.getItem(sheet)
  const [rows, columns] = [range.values.length, range.values[0]?.length ?? 0]
  const rowsAtOnce = Math.max(1, Math.floor(mostLetters / columns))
  const bold: boolean[][] = []
  for (let first = 0; first < rows; first += rowsAtOnce) {
    const count = Math.min(rowsAtOnce, rows - first)
    const some = worksheet.getRangeByIndexes(range.rowIndex + first, range.columnIndex, count, columns)
    const letters = some.getCellProperties({ format: { font: { bold: true } } })
    await range.context.sync()
    bold.push(...letters.value.map((row) => row.map(({ format }) => format?.font?.bold === true)))
  }
  return bold
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

function cellsOf(
  sheet: string,
  { rowIndex, columnIndex, formulas, values, valueTypes }: Excel.Range,
  log: CallLog,
  spills: ReadonlyMap<string, string>,
  bold: readonly (readonly boolean[])[],
): ReadonlyMap<string, OpenCell> {
  const cells = new Map<string, OpenCell>()
  values.forEach((row, down) =>
    row.forEach((content: unknown, across: number) => {
      const value = readCell(content, valueTypes[down]?.[across])
      const typed: unknown = formulas[down]?.[across]
      const formula = isFormula(typed) ? typed : ''
      if (value === null && formula === '') return
      const address = addressOf(rowIndex + down, columnIndex + across)
      const calls = log.of(`${sheet}!${address}`)
      const spill = spills.get(`${down},${across}`)
      cells.set(address, {
        row: rowIndex + down,
        column: columnIndex + across,
        formula,
        value,
        calls: calls.length === 0 ? undefined : calls,
        ...(bold[down]?.[across] && { isHeading: true }),
        ...(spill && { spill }),
      })
    }),
  )
  return cells
}

export function isFormula(content: unknown): content is string {
  return typeof content === 'string' && content.startsWith('=')
}

export function readCell(value: unknown, type: unknown): ReadCell {
  return type === 'Error' ? { kind: 'cellError', code: String(value) } : blankAsNull(value)
}

export function blankAsNull(value: unknown): string | number | boolean | null {
  return value === '' || value === undefined ? null : (value as string | number | boolean)
}
