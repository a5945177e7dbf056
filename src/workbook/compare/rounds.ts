/** What something used again costs with every further round, beside what is used once. */
import { rowsOf } from '../../core/definition/evaluate'
import { Decimal, one, toCell } from '../../core/quantity/decimal'
import { breakEven } from '../../functions/reuse/breakEven'
import { levelCosts } from '../../functions/reuse/levelCost'
import { reuseLedger } from '../../functions/reuse/reuseLedger'
import { compare } from '../../functions/review/compare'
import type { OpenBook } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { evaluated, type NoChart } from './evaluated'
import { lookedUpName } from './lookedUpName'
import { breakEvenRound, perLinerOver, rootedOfCompare } from './rooted'
import { orderOf } from './ways'

export interface Rounds {
  /** Of the costs, as the function has it. */
  readonly unit: string
  readonly lines: readonly RoundsLine[]
  /** All that could be compared with, the cheapest first. */
  readonly singleUses: readonly SingleUse[]
  /** The one of them that is compared with; absent where there is none. */
  readonly singleUse?: SingleUse
}

export interface SingleUse {
  /** Absent where the workbook does not tell it. */
  readonly name?: string
  readonly cost: number
  /** Of several. */
  readonly isCheapest: boolean
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

export interface RoundsPoint {
  readonly round: number
  readonly cost: number
}

/** @param against Which single use it is compared with, from 0 for the cheapest on. */
export function roundsOf(cell: ChartedCell, book: OpenBook, against = 0): Rounds | NoChart {
  if (cell.id === 'COMPARE') return roundsOfCompare(cell, against)
  return cell.id === 'BREAKEVEN' ? roundsOfBreakEven(cell, book) : roundsOfLedger(cell)
}

function roundsOfCompare({ args }: ChartedCell, against: number): Rounds | NoChart {
  const comparison = evaluated(compare, args)
  if ('noChart' in comparison) return comparison
  const { names } = comparison.args
  const given = rootedOfCompare(comparison.args)
  const ways = orderOf(given).map((place) => ({ name: names[place]!, rooted: given[place]! }))
  const [reused, usedOnce] = [
    ways.filter(({ rooted }) => rooted.rounds.gt(one)),
    ways.filter(({ rooted }) => rooted.rounds.eq(one)),
  ]
  if (reused.length === 0) return { noChart: { kind: 'oneRoundOnly' } }
  const costs = usedOnce.map(({ rooted }) => perLinerOver(rooted)(one))
  const singleUses = usedOnce.map(({ name }, place): SingleUse => ({
    name,
    cost: toCell(costs[place]!),
    isCheapest: place === 0,
  }))
  const compared = against < costs.length ? against : 0
  const [allowed, singleUse] = [costs[compared], singleUses[compared]]
  return {
    unit: 'money per liner',
    lines: reused.map(({ name, rooted }) => ({
      name,
      ...line(perLinerOver(rooted), rooted.rounds, allowed && breakEvenRound(rooted, allowed)),
    })),
    singleUses,
    ...(singleUse && { singleUse }),
  }
}

function roundsOfBreakEven(cell: ChartedCell, book: OpenBook): Rounds | NoChart {
  const found = evaluated(breakEven, cell.args)
  if ('noChart' in found) return found
  const { args, result } = found
  const { over } = levelCosts(args)
  const breakEvenAt = result as number
  const [name, nameOfOnce] = [
    lookedUpName(cell, breakEven, 'firstCost', book),
    lookedUpName(cell, breakEven, 'singleUseCost', book),
  ]
  const singleUse: SingleUse = {
    ...(nameOfOnce && { name: nameOfOnce }),
    cost: toCell(args.singleUseCost.div(args.singleUseYield)),
    isCheapest: false,
  }
  // Beyond twice the round there is little to see.
  const least = 10
  const last = Decimal.min(args.mostRounds, Math.max(least, 2 * breakEvenAt))
  return {
    unit: 'money per unit and round, over the yield',
    lines: [{ ...(name && { name }), ...line((rounds) => over(rounds).div(args.reusableYield), last, breakEvenAt) }],
    singleUses: [singleUse],
    singleUse,
  }
}

function roundsOfLedger({ args }: ChartedCell): Rounds | NoChart {
  const ledger = evaluated(reuseLedger, args)
  if ('noChart' in ledger) return ledger
  const points = rowsOf(ledger.result).map(({ round, levelCost }): RoundsPoint => ({
    round: Number(round),
    cost: Number(levelCost),
  }))
  return { unit: 'money per unit and round', lines: [{ points }], singleUses: [] }
}

/** @param breakEven The round from which it is no dearer than what it is compared with, if it is compared with any. */
function line(
  costOver: (rounds: Decimal) => Decimal,
  last: Decimal,
  breakEven?: number | 'never',
): Omit<RoundsLine, 'name'> {
  const point = (round: number): RoundsPoint => ({ round, cost: toCell(costOver(new Decimal(round))) })
  const marked = typeof breakEven === 'number' ? breakEven : undefined
  return {
    points: roundsShown(last.toNumber(), marked).map(point),
    ...(marked !== undefined && { breakEven: point(marked) }),
    ...(breakEven === 'never' && { neverIn: last.toNumber() }),
  }
}

const mostPoints = 60

/** Every round of an ordinary life; of a longer one ever wider steps, since the cost changes ever more slowly. */
function roundsShown(last: number, marked: number | undefined): readonly number[] {
  if (last <= mostPoints) return Array.from({ length: last }, (_, index) => index + 1)
  const stepped = Array.from({ length: mostPoints }, (_, index) => Math.round(last ** (index / (mostPoints - 1))))
  return [...new Set([...stepped, ...(marked === undefined ? [] : [marked])])].sort((a, b) => a - b)
}
