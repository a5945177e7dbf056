/** What something used again costs with every further round, beside what is used once. */
import { Decimal, one, toCell } from '../../core/quantity/decimal'
import { levelCosts } from '../../functions/reuse/levelCost'
import type { ChartedCell } from './chartedCells'
import { evaluated, rowsOf, type NoChart } from './evaluated'
import { perLinerOver, rootedOfCompare } from './rooted'

export interface Rounds {
  /** Of the costs, as the function has it. */
  readonly unit: string
  readonly lines: readonly RoundsLine[]
  /** The cheapest single use, with its name where it has one; absent where the cell compares with none. */
  readonly singleUse?: { readonly name?: string; readonly cost: number }
}

export interface RoundsLine {
  /** Absent where the cell has one thing that is used again and does not call it anything. */
  readonly name?: string
  /** From round 1 on; of a long life not every round. */
  readonly points: readonly RoundsPoint[]
  /** The rounds from which it is no dearer than single use. */
  readonly breakEven?: RoundsPoint
  /** Where there is no such round: how many there are. */
  readonly neverIn?: number
}

export interface RoundsPoint { readonly round: number; readonly cost: number }

export function roundsOf(cell: ChartedCell): Rounds | NoChart {
  if (cell.id === 'COMPARE') return roundsOfCompare(cell)
  return cell.id === 'BREAKEVEN' ? roundsOfBreakEven(cell) : roundsOfLedger(cell)
}

function roundsOfCompare({ args }: ChartedCell): Rounds | NoChart {
  const comparison = evaluated('COMPARE', args)
  if ('noChart' in comparison) return comparison
  const unit = 'money per liner'
  const names = comparison.texts('names')
  const ways = rootedOfCompare(comparison).map((rooted, row) => ({ name: names[row]!, rooted, perLiner: perLinerOver(rooted) }))
  const [reused, usedOnce] = [ways.filter(({ rooted }) => rooted.rounds.gt(one)), ways.filter(({ rooted }) => rooted.rounds.eq(one))]
  if (reused.length === 0) return { noChart: { kind: 'oneRoundOnly' } }
  const singles = usedOnce.map(({ name, perLiner }) => ({ name, cost: toCell(perLiner(one)) }))
  const [singleUse] = [...singles].sort((a, b) => a.cost - b.cost)
  // The cheapest first, as in the table, from which the break-even rounds are taken.
  const rows = rowsOf(comparison.result)
  const lines = reused.map(({ name, rooted: { rounds }, perLiner }): RoundsLine & { readonly row: number } => {
    const cost = toCell(perLiner(rounds))
    const row = rows.findIndex(([rowName, , , rowCost]) => rowName === name && rowCost === cost)
    return { name, row, ...line(perLiner, rounds, rows[row]?.[5], singleUse !== undefined) }
  })
  return {
    unit,
    lines: lines.sort((a, b) => a.row - b.row).map(({ row: _row, ...rest }) => rest),
    ...(singleUse === undefined ? {} : { singleUse }),
  }
}

function roundsOfBreakEven({ args }: ChartedCell): Rounds | NoChart {
  const found = evaluated('BREAKEVEN', args)
  if ('noChart' in found) return found
  const { decimal } = found
  const { over } = levelCosts({
    firstCost: decimal('firstCost'), washCost: decimal('washCost'), topUpShare: decimal('topUpShare'), lossShare: decimal('lossShare'), endValue: decimal('endValue'),
    yearlyInterest: decimal('yearlyInterest'), roundsPerYear: decimal('roundsPerYear'),
  })
  const breakEven = found.result as number
  // Beyond twice the round there is little to see.
  const least = 10
  const last = Decimal.min(decimal('mostRounds'), Math.max(least, 2 * breakEven))
  return {
    unit: 'money per unit and round, over the yield',
    lines: [{ ...line((rounds) => over(rounds).div(decimal('reusableYield')), last, breakEven, true) }],
    singleUse: { cost: toCell(decimal('singleUseCost').div(decimal('singleUseYield'))) },
  }
}

function roundsOfLedger({ args }: ChartedCell): Rounds | NoChart {
  const ledger = evaluated('REUSELEDGER', args)
  if ('noChart' in ledger) return ledger
  const points = rowsOf(ledger.result).map((row): RoundsPoint => ({ round: Number(row[0]), cost: Number(row[5]) }))
  return { unit: 'money per unit and round', lines: [{ points }] }
}

function line(costOver: (rounds: Decimal) => Decimal, last: Decimal, says: number | string | undefined, compared: boolean): Omit<RoundsLine, 'name'> {
  const point = (round: number): RoundsPoint => ({ round, cost: toCell(costOver(new Decimal(round))) })
  const breakEven = typeof says === 'number' ? says : undefined
  return {
    points: roundsShown(last.toNumber(), breakEven).map(point),
    ...(breakEven === undefined ? {} : { breakEven: point(breakEven) }),
    ...(compared && typeof says === 'string' ? { neverIn: last.toNumber() } : {}),
  }
}

const mostPoints = 60

/** Every round of an ordinary life; of a longer one ever wider steps, since the cost changes ever more slowly. */
function roundsShown(last: number, marked: number | undefined): readonly number[] {
  if (last <= mostPoints) return Array.from({ length: last }, (_, index) => index + 1)
  const stepped = Array.from({ length: mostPoints }, (_, index) => Math.round(last ** (index / (mostPoints - 1))))
  return [...new Set([...stepped, ...(marked === undefined ? [] : [marked])])].sort((a, b) => a - b)
}
