/** What stands in the used cells of sheets, in as few messages as Excel takes and gives. */
import { addressOf } from '../formula/address'
import { idsCalled } from '../formula/idsCalled'
import type { OpenCell, OpenSheet } from '../workbook/openBook'
import type { CallLog } from './callLog'
import { isFormula, readCell } from './readCell'
import { knows } from './run'
import { plainFormulas } from './plainFormulas'
import type { Tables } from './tables'
import { withoutSheet } from './withoutSheet'

/** Where a range is and how large. */
export function loadPlace(range: Excel.Range): void {
  range.load(['rowIndex', 'columnIndex', 'rowCount', 'columnCount'])
}

export interface UsedRange {
  readonly name: string
  /** Loaded with its place. */
  readonly range: Excel.Range
  /** The names of the sheet, loaded. */
  readonly own: Excel.NamedItemCollection
}

/** Small sheets are read together. */
export async function readSheets(
  used: readonly UsedRange[],
  log: CallLog,
  tables: Tables,
): Promise<readonly OpenSheet[]> {
  const read = new Map<UsedRange, OpenSheet>()
  for (const group of groupsOf(used.filter(({ range }) => !range.isNullObject))) {
    const contents = await contentsOfGroup(group)
    const spills = await spillsOf(group.map(({ name, range }, index) => ({ name, range, contents: contents[index]! })))
    for (const [index, one] of group.entries()) {
      const formulas = await plainFormulas(contents[index]!, one.name, one.own, tables)
      const cells = cellsOf(one.name, contents[index]!, formulas, log, spills[index]!)
      read.set(one, { name: one.name, cells })
    }
  }
  return used.map((one) => read.get(one) ?? { name: one.name, cells: new Map<string, OpenCell>() })
}

function* groupsOf(used: readonly UsedRange[]): Generator<readonly UsedRange[]> {
  let group: UsedRange[] = []
  let cells = 0
  for (const one of used) {
    const { rowCount, columnCount } = one.range
    if (group.length > 0 && cells + rowCount * columnCount > mostCells) {
      yield group
      group = []
      cells = 0
    }
    group.push(one)
    cells += rowCount * columnCount
  }
  if (group.length > 0) yield group
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

async function contentsOfGroup(group: readonly UsedRange[]): Promise<readonly Contents[]> {
  if (group.length > 1) {
    const parts = await answered(
      group.map(({ name, range: { context, rowIndex, columnIndex, rowCount, columnCount } }) =>
        askPart(
          context.workbook.worksheets.getItem(name).getRangeByIndexes(rowIndex, columnIndex, rowCount, columnCount),
        ),
      ),
    )
    if (parts !== undefined)
      return group.map(({ range: { rowIndex, columnIndex } }, index) => ({ rowIndex, columnIndex, ...parts[index]! }))
  }
  const contents: Contents[] = []
  for (const { name, range } of group) contents.push(await contentsOf(name, range))
  return contents
}

/** In parts that fit into an answer of Excel, which gives none above 5 MB. */
async function contentsOf(sheet: string, used: Excel.Range): Promise<Contents> {
  const { rowIndex, columnIndex, rowCount, columnCount } = used
  const worksheet = used.context.workbook.worksheets.getItem(sheet)
  const parts: Part[] = []
  let rowsAtOnce = Math.max(1, Math.floor(mostCells / columnCount))
  for (let row = 0; row < rowCount;) {
    const count = Math.min(rowsAtOnce, rowCount - row)
    const asked = askPart(worksheet.getRangeByIndexes(rowIndex + row, columnIndex, count, columnCount))
    const part = await answered([asked], count === 1)
    // The texts are long: fewer rows at once.
    if (part === undefined) rowsAtOnce = Math.ceil(count / 4)
    else {
      parts.push(...part)
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

interface AskedPart {
  readonly range: Excel.Range
  readonly letters: OfficeExtension.ClientResult<Excel.CellProperties[][]> | undefined
}

function askPart(range: Excel.Range): AskedPart {
  range.load(['formulas', 'values', 'valueTypes'])
  const letters = knows('1.9') ? range.getCellProperties({ format: { font: { bold: true } } }) : undefined
  return { range, letters }
}

/** Undefined where the answer would be too long and less can be asked for. */
async function answered(asked: readonly AskedPart[], isLeast = false): Promise<readonly Part[] | undefined> {
  try {
    await asked[0]?.range.context.sync()
  } catch (problem) {
    const { code = '' } = problem as { code?: string }
    if (!isLeast && code === 'ResponsePayloadSizeLimitExceeded') return undefined
    throw problem
  }
  return asked.map(({ range: { formulas, values, valueTypes }, letters }) => ({
    formulas,
    values,
    valueTypes,
    bold: letters?.value.map((row) => row.map(({ format }) => format?.font?.bold === true)) ?? [],
  }))
}

/** A question about so many cells stays far below the longest message that Excel takes. */
const mostAsked = 4000

interface ReadSheet {
  readonly name: string
  readonly range: Excel.Range
  readonly contents: Contents
}

/** The ranges that formulas of ours fill in each sheet, by their place in the used range: "3,0". */
async function spillsOf(sheets: readonly ReadSheet[]): Promise<readonly ReadonlyMap<string, string>[]> {
  const spills = sheets.map(() => new Map<string, string>())
  if (!knows('1.12')) return spills
  const places = sheets.flatMap(({ name, range, contents }, index) =>
    contents.formulas.flatMap((row, down) =>
      row.flatMap((content, across) => (isOurs(content) ? [{ index, name, range, contents, down, across }] : [])),
    ),
  )
  for (let first = 0; first < places.length; first += mostAsked) {
    const asked = places.slice(first, first + mostAsked).map(({ index, name, range, contents, down, across }) => {
      const filled = range.context.workbook.worksheets
        .getItem(name)
        .getRangeByIndexes(contents.rowIndex + down, contents.columnIndex + across, 1, 1)
        .getSpillingToRangeOrNullObject()
      filled.load(['address', 'cellCount'])
      return { index, place: `${down},${across}`, filled }
    })
    await sheets[0]?.range.context.sync()
    for (const { index, place, filled } of asked) {
      if (!filled.isNullObject && filled.cellCount > 1) spills[index]!.set(place, withoutSheet(filled.address))
    }
  }
  return spills
}

function isOurs(content: unknown): boolean {
  return isFormula(content) && idsCalled(content).length > 0
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
