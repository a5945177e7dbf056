/** Reads the open workbook sheet by sheet: what stands in the used cells, and the calls that the log knows of them. */
import { idsCalled } from '../formula/idsCalled'
import { addressOf } from '../formula/address'
import type { OpenBook, OpenCell, OpenSheet, ReadCell } from '../workbook/openBook'
import { isWaiting } from '../workbook/waiting'
import type { CallLog } from './callLog'
import { loadNames, namesOfCells, namesOfSheet } from './names'
import { knows } from './run'
import { plainFormulas, tablesOf, type Tables } from './tables'
import { withoutSheet } from './withoutSheet'

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
    loadPlace(range)
    return { name: sheet.name, range, own: namesOfSheet(sheet) }
  })
  await context.sync()
  const sheets: OpenSheet[] = []
  const tables = tablesOf(context)
  for (const { name, range, own } of used) sheets.push(await readSheet(name, range, own, log, tables))
  return { names: await namesOfCells(names, tables), sheets }
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
  loadPlace(range)
  const own = namesOfSheet(worksheet)
  await context.sync()
  return readSheet(worksheet.name, range, own, log, tablesOf(context))
}

/** Where a range is and how large. */
function loadPlace(range: Excel.Range): void {
  range.load(['rowIndex', 'columnIndex', 'rowCount', 'columnCount'])
}

/** @param used Loaded with its place. @param own The names of the sheet, loaded. */
async function readSheet(
  name: string,
  used: Excel.Range,
  own: Excel.NamedItemCollection,
  log: CallLog,
  tables: Tables,
): Promise<OpenSheet> {
  if (used.isNullObject) return { name, cells: new Map<string, OpenCell>() }
  const contents = await contentsOf(name, used)
  const formulas = await plainFormulas(contents, name, own, tables)
  return { name, cells: cellsOf(name, contents, formulas, log, await spillsOf(name, contents, used.context)) }
}

interface Contents {
  readonly rowIndex: number
  readonly columnIndex: number
  readonly formulas: readonly (readonly unknown[])[]
  readonly values: readonly (readonly unknown[])[]
  readonly valueTypes: readonly (readonly unknown[])[]
  /** Which cells are bold; of none where this Excel cannot say. */
  readonly bold: readonly (readonly boolean[])[]
}

/** So many cells are asked for at once. */
const mostCells = 20_000

/** In parts that fit into an answer of Excel, which gives none above 5 MB. */
async function contentsOf(sheet: string, used: Excel.Range): Promise<Contents> {
  const { rowIndex, columnIndex, rowCount, columnCount } = used
  const worksheet = used.context.workbook.worksheets.getItem(sheet)
  const parts: Part[] = []
  let rowsAtOnce = Math.max(1, Math.floor(mostCells / columnCount))
  for (let row = 0; row < rowCount;) {
    const count = Math.min(rowsAtOnce, rowCount - row)
    const part = await partOf(worksheet.getRangeByIndexes(rowIndex + row, columnIndex, count, columnCount), count > 1)
    // The texts are long: fewer rows at once.
    if (part === undefined) rowsAtOnce = Math.ceil(count / 4)
    else {
      parts.push(part)
      row += count
    }
  }
  const joined = <K extends keyof Part>(key: K) => parts.flatMap((part) => part[key]) as unknown as Contents[K]
  return {
    rowIndex,
    columnIndex,
    formulas: joined('formulas'),
    values: joined('values'),
    valueTypes: joined('valueTypes'),
    bold: joined('bold'),
  }
}

type Part = Omit<Contents, 'rowIndex' | 'columnIndex'>

/** Undefined where the answer would be too long and fewer rows can be asked for. */
async function partOf(range: Excel.Range, canBeSmaller: boolean): Promise<Part | undefined> {
  range.load(['formulas', 'values', 'valueTypes'])
  const letters = knows('1.9') ? range.getCellProperties({ format: { font: { bold: true } } }) : undefined
  try {
    await range.context.sync()
  } catch (problem) {
    const { code = '' } = problem as { code?: string }
    if (canBeSmaller && code === 'ResponsePayloadSizeLimitExceeded') return undefined
    throw problem
  }
  const { formulas, values, valueTypes } = range
  const bold = letters?.value.map((row) => row.map(({ format }) => format?.font?.bold === true)) ?? []
  return { formulas, values, valueTypes, bold }
}

/** A question about so many cells stays far below the longest message that Excel takes. */
const mostAsked = 4000

/** The ranges that formulas of ours fill, by their place in the used range: "3,0". */
async function spillsOf(
  sheet: string,
  { rowIndex, columnIndex, formulas }: Contents,
  context: Excel.RequestContext,
): Promise<ReadonlyMap<string, string>> {
  const worksheet = context.workbook.worksheets.getItem(sheet)
  const places = formulas.flatMap((row, down) =>
    row.flatMap((content, across) => (isOurs(content) ? [{ down, across }] : [])),
  )
  const spills = new Map<string, string>()
  if (!knows('1.12')) return spills
  for (let first = 0; first < places.length; first += mostAsked) {
    const asked = places.slice(first, first + mostAsked).map(({ down, across }) => {
      const filled = worksheet
        .getRangeByIndexes(rowIndex + down, columnIndex + across, 1, 1)
        .getSpillingToRangeOrNullObject()
      filled.load(['address', 'cellCount'])
      return { place: `${down},${across}`, filled }
    })
    await worksheet.context.sync()
    for (const { place, filled } of asked) {
      if (!filled.isNullObject && filled.cellCount > 1) spills.set(place, withoutSheet(filled.address))
    }
  }
  return spills
}

function isOurs(content: unknown): boolean {
  return isFormula(content) && idsCalled(content).length > 0
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
  { rowIndex, columnIndex, values, valueTypes, bold }: Contents,
  formulas: readonly (readonly unknown[])[],
  log: CallLog,
  spills: ReadonlyMap<string, string>,
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
