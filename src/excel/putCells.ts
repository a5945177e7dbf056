/** Changes cells in Excel: all of them, or none. */
import { addressOf, blockAddress, blockOf, type Position } from '../formula/address'
import { changesBySheet } from '../workbook/changesBySheet'
import { PortProblem, type CellChange } from '../workbook/port'
import { asText } from './asText'
import { namesOfSheet } from './names'
import { asOneUndo, run } from './run'
import { columnsOf, type Content, holds, standAsBefore, type TableColumn, writeColumns } from './tableColumns'
import { plainFormulas } from './plainFormulas'
import { tablesOf, type Tables } from './tables'

/** See WorkbookPort. */
export async function putCells(changes: readonly CellChange[]): Promise<void> {
  if (changes.length === 0) return
  const sheets = [...changesBySheet(changes)].map(([sheet, ofSheet]): ChangedSheet => ({
    sheet,
    placed: ofSheet.map((change): Placed => ({ change, at: blockOf(change.address)! })),
    columns: [],
  }))
  let begun = 0
  try {
    await run(async (context) => {
      for (const { sheet, placed } of sheets) {
        const other = await changedMeanwhile(context, sheet, placed)
        if (other !== undefined) throw new PortProblem('cellChanged', other.address)
      }
      const tables = tablesOf(context)
      for (const one of sheets) one.columns = await filledColumns(context, one, tables)
      for (const one of sheets) {
        begun += 1
        const filled = await write(context, one, ({ change: { now } }) =>
          'formula' in now ? now.formula : contentOf(now.value),
        )
        if (filled !== undefined) throw new PortProblem('columnFilled', `${filled} on ${one.sheet}`)
      }
    }, asOneUndo())
  } catch (problem) {
    await takeBack(sheets.slice(0, begun))
    throw problem
  }
}

interface Placed {
  readonly change: CellChange
  readonly at: { readonly top: number; readonly left: number }
  /** What stood there before anything was changed, as Excel writes it. */
  stood?: Content
}

interface ChangedSheet {
  readonly sheet: string
  readonly placed: readonly Placed[]
  /** The columns of tables into which formulas are put. */
  columns: readonly TableColumn[]
}

/** Excel reads what is written as if it were typed; an empty text empties a cell. */
function contentOf(value: Content | null): Content {
  return typeof value === 'string' ? (asText(value) ?? '') : (value ?? '')
}

/** The smallest block that holds all of them. */
function around(placed: readonly Placed[]): {
  readonly top: number
  readonly left: number
  readonly rows: number
  readonly columns: number
} {
  const [tops, lefts] = [placed.map(({ at }) => at.top), placed.map(({ at }) => at.left)]
  const [top, left] = [tops.reduce((a, b) => Math.min(a, b)), lefts.reduce((a, b) => Math.min(a, b))]
  return {
    top,
    left,
    rows: tops.reduce((a, b) => Math.max(a, b)) - top + 1,
    columns: lefts.reduce((a, b) => Math.max(a, b)) - left + 1,
  }
}

/** The first that no longer holds the formula that it is said to hold. */
async function changedMeanwhile(
  context: Excel.RequestContext,
  sheet: string,
  placed: readonly Placed[],
): Promise<CellChange | undefined> {
  const { top, left, rows, columns } = around(placed)
  const worksheet = context.workbook.worksheets.getItem(sheet)
  const block = worksheet.getRangeByIndexes(top, left, rows, columns)
  block.load(['rowIndex', 'columnIndex', 'formulas'])
  const own = namesOfSheet(worksheet)
  await context.sync()
  for (const one of placed) one.stood ??= block.formulas[one.at.top - top]?.[one.at.left - left] as Content
  const formulas = await plainFormulas(block, sheet, own, tablesOf(context))
  return placed.find(({ change: { was }, at }) => was !== undefined && formulas[at.top - top]?.[at.left - left] !== was)
    ?.change
}

/** In characters: Excel takes no message above 5 MB, and a message is sent once so many wait. */
const mostOfMessage = 1_000_000

function filledColumns(
  context: Excel.RequestContext,
  { sheet, placed }: ChangedSheet,
  tables: Tables,
): Promise<readonly TableColumn[]> {
  const formulas = placed.filter(({ change: { now } }) => 'formula' in now).map(positionOf)
  return columnsOf(context.workbook.worksheets.getItem(sheet), sheet, formulas, tables)
}

const positionOf = ({ at }: Placed): Position => ({ row: at.top, column: at.left })

/**
 * Row by row, so that a formula comes before the cells that it would fill, and columns of tables as a whole. Gives the
 * address of a column that Excel has filled by itself.
 */
async function write(
  context: Excel.RequestContext,
  { sheet, placed, columns }: ChangedSheet,
  contentFor: (placed: Placed) => Content,
): Promise<string | undefined> {
  const worksheet = context.workbook.worksheets.getItem(sheet)
  const byRow = new Map<number, Placed[]>()
  const inColumns = new Map<string, Placed>()
  for (const one of placed) {
    if (columns.some((column) => holds(column, positionOf(one)))) inColumns.set(one.change.address, one)
    else byRow.set(one.at.top, [...(byRow.get(one.at.top) ?? []), one])
  }
  let waiting = 0
  for (const [top, inRow] of [...byRow].sort(([a], [b]) => a - b)) {
    const { left, columns: width } = around(inRow)
    // Excel leaves a cell alone where null stands.
    const contents: (Content | null)[] = Array.from({ length: width }, () => null)
    for (const one of inRow) contents[one.at.left - left] = contentFor(one)
    worksheet.getRangeByIndexes(top, left, 1, width).formulas = [contents]
    waiting += JSON.stringify(contents).length
    if (waiting < mostOfMessage) continue
    waiting = 0
    await worksheet.context.sync()
  }
  await worksheet.context.sync()
  return writeColumns(worksheet, columns, ({ row, column }) => {
    const one = inColumns.get(addressOf(row, column))
    return one && contentFor(one)
  })
}

/** A cell that only showed what a formula spilled into it is emptied again. */
async function takeBack(sheets: readonly ChangedSheet[]): Promise<void> {
  const left: string[] = []
  for (const one of sheets) {
    const { sheet, placed, columns } = one
    try {
      // Also while the user types in a cell: Excel then takes it back once that has ended.
      const filled = await run(
        async (context) => {
          // A protected sheet took nothing, and would not take this either.
          const areAsBefore = (await changedMeanwhile(context, sheet, placed)) === undefined
          if (areAsBefore && (await standAsBefore(context.workbook.worksheets.getItem(sheet), columns)))
            return undefined
          return write(context, one, ({ change, stood = '' }) => (change.was === undefined ? '' : stood))
        },
        { delayForCellEdit: true },
      )
      if (filled !== undefined) left.push(`${filled} on ${sheet}`)
    } catch {
      const { top, left: first, rows, columns: width } = around(placed)
      left.push(`${blockAddress({ top, left: first, bottom: top + rows - 1, right: first + width - 1 })} on ${sheet}`)
    }
  }
  if (left.length > 0) throw new PortProblem('partChanged', left.join(', '))
}
