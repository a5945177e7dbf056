/** Changes cells in Excel: all of them, or none. */
import { blockAddress, blockOf } from '../formula/address'
import { changesBySheet } from '../workbook/changesBySheet'
import { PortProblem, type CellChange } from '../workbook/port'
import { asText } from './asText'
import { asOneUndo, run } from './run'
import { plainFormulas, tablesOf } from './tables'

/** See WorkbookPort. */
export async function putCells(changes: readonly CellChange[]): Promise<void> {
  if (changes.length === 0) return
  const sheets = [...changesBySheet(changes)].map(([sheet, ofSheet]) => ({
    sheet,
    placed: ofSheet.map((change): Placed => ({ change, at: blockOf(change.address)! })),
  }))
  let begun = 0
  try {
    await run(async (context) => {
      for (const { sheet, placed } of sheets) {
        const other = await changedMeanwhile(context, sheet, placed)
        if (other !== undefined) throw new PortProblem('cellChanged', other.address)
      }
      for (const { sheet, placed } of sheets) {
        begun += 1
        await write(context.workbook.worksheets.getItem(sheet), placed, ({ change: { now } }) =>
          'formula' in now ? now.formula : contentOf(now.value),
        )
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
}

type Content = string | number | boolean

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
  const block = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(top, left, rows, columns)
  block.load(['rowIndex', 'columnIndex', 'formulas'])
  await context.sync()
  for (const one of placed) one.stood ??= block.formulas[one.at.top - top]?.[one.at.left - left] as Content
  const formulas = await plainFormulas(block, sheet, tablesOf(context))
  return placed.find(({ change: { was }, at }) => was !== undefined && formulas[at.top - top]?.[at.left - left] !== was)
    ?.change
}

/** In characters: Excel takes no message above 5 MB, and a message is sent once so many wait. */
const mostOfMessage = 1_000_000

/** Row by row, so that a formula comes before the cells that it would fill. */
async function write(
  worksheet: Excel.Worksheet,
  placed: readonly Placed[],
  contentFor: (placed: Placed) => Content,
): Promise<void> {
  const byRow = new Map<number, Placed[]>()
  for (const one of placed) byRow.set(one.at.top, [...(byRow.get(one.at.top) ?? []), one])
  let waiting = 0
  for (const [top, inRow] of [...byRow].sort(([a], [b]) => a - b)) {
    const { left, columns } = around(inRow)
    // Excel leaves a cell alone where null stands.
    const contents: (Content | null)[] = Array.from({ length: columns }, () => null)
    for (const one of inRow) contents[one.at.left - left] = contentFor(one)
    worksheet.getRangeByIndexes(top, left, 1, columns).formulas = [contents]
    waiting += JSON.stringify(contents).length
    if (waiting < mostOfMessage) continue
    waiting = 0
    await worksheet.context.sync()
  }
  await worksheet.context.sync()
}

/** A cell that only showed what a formula spilled into it is emptied again. */
async function takeBack(sheets: readonly ChangedSheet[]): Promise<void> {
  const left: string[] = []
  for (const { sheet, placed } of sheets) {
    try {
      // Also while the user types in a cell: Excel then takes it back once that has ended.
      await run(
        async (context) => {
          // A protected sheet took nothing, and would not take this either.
          if ((await changedMeanwhile(context, sheet, placed)) === undefined) return
          await write(context.workbook.worksheets.getItem(sheet), placed, ({ change, stood = '' }) =>
            change.was === undefined ? '' : stood,
          )
        },
        { delayForCellEdit: true },
      )
    } catch {
      const { top, left: first, rows, columns } = around(placed)
      left.push(`${blockAddress({ top, left: first, bottom: top + rows - 1, right: first + columns - 1 })} on ${sheet}`)
    }
  }
  if (left.length > 0) throw new PortProblem('partChanged', left.join(', '))
}
