/** Ways of rooting side by side, in parts that add up to the figures of their cells. */
import { toCell } from '../../core/quantity/decimal'
import { addressOf } from '../../derived/reference'
import type { OpenBook, OpenSheet } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { evaluated, rowsOf, type NoChart } from './evaluated'
import { partsPerLiner, perLinerOver, rootedOfCompare, rootedOfRootingCost, type CostPart, type Rooted } from './rooted'

export interface WayCost {
  readonly name: string
  readonly parts: Readonly<Record<CostPart, number>>
  /** The figure of the cell. */
  readonly perLiner: number
}

/** The ways in the order of the cells, the cheapest first. */
export function waysOfCompare({ args }: ChartedCell): readonly WayCost[] | NoChart {
  const comparison = evaluated('COMPARE', args)
  if ('sentence' in comparison) return comparison
  // Names need not differ, so the ways are put into the table's order by what it is sorted by.
  const sorted = rootedOfCompare(comparison)
    .map((rooted) => ({ rooted, shown: perLinerOver(rooted)(rooted.rounds).toSignificantDigits(15) }))
    .sort((a, b) => a.shown.cmp(b.shown))
  return rowsOf(comparison.result).map(([name, , , perLiner], row) => (
    { name: String(name), parts: cellsOf(sorted[row]!.rooted), perLiner: Number(perLiner) }
  ))
}

/** Neighbours in a row or column that each call ROOTINGCOST, as one comparison. */
export function rootingCostRuns(cells: readonly ChartedCell[]): readonly (readonly ChartedCell[])[] {
  const own = cells.filter(({ id }) => id === 'ROOTINGCOST')
  const acrossRuns = runs(own, ({ row, column }) => [row, column])
  const alone = acrossRuns.filter(({ length }) => length === 1).flat()
  return [...acrossRuns.filter(({ length }) => length > 1), ...runs(alone, ({ row, column }) => [column, row])]
}

/** Cells of one line that follow one another along it. */
function runs(cells: readonly ChartedCell[], placeOf: (cell: ChartedCell) => readonly [line: number, along: number]): readonly (readonly ChartedCell[])[] {
  const sorted = [...cells].sort((a, b) => a.sheet.localeCompare(b.sheet) || placeOf(a)[0] - placeOf(b)[0] || placeOf(a)[1] - placeOf(b)[1])
  const found: ChartedCell[][] = []
  for (const cell of sorted) {
    const last = found.at(-1)?.at(-1)
    const follows = last !== undefined && last.sheet === cell.sheet && placeOf(last)[0] === placeOf(cell)[0] && placeOf(last)[1] + 1 === placeOf(cell)[1]
    if (follows) found.at(-1)!.push(cell)
    else found.push([cell])
  }
  return found
}

export function waysOfRootingCosts(run: readonly ChartedCell[], book: OpenBook): readonly WayCost[] | NoChart {
  const names = namesOf(run, book.sheets.find(({ name }) => name === run[0]?.sheet))
  const ways: WayCost[] = []
  for (const [index, { args }] of run.entries()) {
    const cost = evaluated('ROOTINGCOST', args)
    if ('sentence' in cost) return cost
    ways.push({ name: names[index]!, parts: cellsOf(rootedOfRootingCost(cost)), perLiner: cost.result as number })
  }
  return ways
}

/** From the first line of the sheet in which each of them has a name of its own, else their addresses. */
function namesOf(run: readonly ChartedCell[], sheet: OpenSheet | undefined): readonly string[] {
  const [first] = run
  const across = run.length === 1 || run[1]!.row === first!.row
  const before = across ? first!.row : first!.column
  for (let line = 0; line < before; line += 1) {
    const names = run.map(({ row, column }) => sheet?.cells.get(across ? addressOf(line, column) : addressOf(row, line))?.value)
    const allNamed = names.every((name) => typeof name === 'string' && /\p{L}/u.test(name))
    if (allNamed && new Set(names).size === run.length) return names as readonly string[]
  }
  return run.map(({ address }) => address)
}

function cellsOf(rooted: Rooted): WayCost['parts'] {
  const { bought, upkeep, other, losses } = partsPerLiner(rooted)
  return { bought: toCell(bought), upkeep: toCell(upkeep), other: toCell(other), losses: toCell(losses) }
}
