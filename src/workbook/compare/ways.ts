/** Rooting methods side by side, in parts that add up to the figures of their cells. */
import { rowsOf } from '../../core/definition/evaluate'
import { toCell } from '../../core/quantity/decimal'
import { rootingCost } from '../../functions/cost/rootingCost'
import { compare } from '../../functions/review/compare'
import { labelsOf } from '../labels'
import type { OpenBook } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import type { ChartedCell } from './chartedCells'
import { evaluated, type NoChart } from './evaluated'
import { otherCosts, type OtherCosts } from './otherCosts'
import { partsPerLiner, perLinerOver, rootedOfCompare, rootedOfRootingCost, type CostPart, type Rooted } from './rooted'

export interface WayCost {
  readonly name: string
  readonly parts: Readonly<Partial<Record<CostPart, number>>>
  /** Where the workbook tells the other costs apart: how the cells of each part are called. */
  readonly calledIn?: Readonly<Partial<Record<CostPart, readonly string[]>>>
  /** The figure of the cell. */
  readonly perLiner: number
}

/** The ways in the order of the cells, the cheapest first. */
export function waysOfCompare(cell: ChartedCell, book: OpenBook): readonly WayCost[] | NoChart {
  const comparison = evaluated(compare, cell.args)
  if ('noChart' in comparison) return comparison
  const given = rootedOfCompare(comparison.args)
  const others = otherCosts(
    cell,
    given.map(({ other }) => other),
    book,
  )
  const sorted = orderOf(given)
  return rowsOf(comparison.result).map(({ name, perLiner }, row) =>
    wayCost(String(name), Number(perLiner), given[sorted[row]!]!, others[sorted[row]!]),
  )
}

/** The places of the ways as given, the cheapest first. Names need not differ, so they are sorted as the function does. */
export function orderOf(ways: readonly Rooted[]): readonly number[] {
  return ways
    .map((rooted, place) => ({ place, shown: perLinerOver(rooted)(rooted.rounds).toSignificantDigits(15) }))
    .sort((a, b) => a.shown.cmp(b.shown))
    .map(({ place }) => place)
}

/** Neighbours in a row or column that each call ROOTINGCOST, as one comparison. */
export function rootingCostRuns(cells: readonly ChartedCell[]): readonly (readonly ChartedCell[])[] {
  const own = cells.filter(({ id }) => id === 'ROOTINGCOST')
  const acrossRuns = runs(own, ({ row, column }) => [row, column])
  const alone = acrossRuns.filter(({ length }) => length === 1).flat()
  return [...acrossRuns.filter(({ length }) => length > 1), ...runs(alone, ({ row, column }) => [column, row])]
}

/** Cells of one line that follow one another along it. */
function runs(
  cells: readonly ChartedCell[],
  placeOf: (cell: ChartedCell) => readonly [line: number, along: number],
): readonly (readonly ChartedCell[])[] {
  const sorted = [...cells].sort(
    (a, b) => a.sheet.localeCompare(b.sheet) || placeOf(a)[0] - placeOf(b)[0] || placeOf(a)[1] - placeOf(b)[1],
  )
  const found: ChartedCell[][] = []
  for (const cell of sorted) {
    const last = found.at(-1)?.at(-1)
    const follows =
      last !== undefined &&
      last.sheet === cell.sheet &&
      placeOf(last)[0] === placeOf(cell)[0] &&
      placeOf(last)[1] + 1 === placeOf(cell)[1]
    if (follows) found.at(-1)!.push(cell)
    else found.push([cell])
  }
  return found
}

export function waysOfRootingCosts(run: readonly ChartedCell[], book: OpenBook): readonly WayCost[] | NoChart {
  const names = namesInOneLine(run, book)
  const ways: WayCost[] = []
  for (const [index, cell] of run.entries()) {
    const cost = evaluated(rootingCost, cell.args)
    if ('noChart' in cost) return cost
    const rooted = rootedOfRootingCost(cost.args)
    ways.push(wayCost(names[index]!, cost.result as number, rooted, otherCosts(cell, [rooted.other], book)[0]))
  }
  return ways
}

/** What the sheet calls each of them, where those are names that differ, else their addresses. */
function namesInOneLine(run: readonly ChartedCell[], book: OpenBook): readonly string[] {
  const [first] = run
  const isAcross = run.length === 1 || run[1]!.row === first!.row
  const held = sheetNamed(book, first!.sheet)
  const names = run.map((cell) => held && labelsOf(held.cells).of(cell)[isAcross ? 'column' : 'row'])
  const areNames = names.every((name) => name !== undefined) && new Set(names).size === run.length
  return areNames ? names : run.map(({ address }) => address)
}

function wayCost(name: string, perLiner: number, rooted: Rooted, others: OtherCosts | undefined): WayCost {
  const parts = Object.fromEntries(
    Object.entries(partsPerLiner(rooted, others)).map(([key, amount]) => [key, toCell(amount)]),
  )
  const calledIn =
    others &&
    Object.fromEntries(Object.entries(others).map(([key, { cells }]) => [key, cells.map(({ heading }) => heading)]))
  return { name, parts, perLiner, ...(calledIn && { calledIn }) }
}
