/** One rooting method, as COMPARE and ROOTINGCOST take it, and what a saleable liner costs in it. */
import type { Arguments } from '../../core/definition/definition'
import { Decimal, one, zero } from '../../core/quantity/decimal'
import type { rootingCost } from '../../functions/cost/rootingCost'
import { levelCosts, payback, type Reuse } from '../../functions/reuse/levelCost'
import type { compare } from '../../functions/review/compare'
import type { OtherCosts } from './otherCosts'

export interface Rooted extends Reuse {
  readonly rounds: Decimal
  readonly cuttings: Decimal
  readonly yielded: Decimal
  readonly other: Decimal
}

/** The ways in the order in which COMPARE was given them. */
export function rootedOfCompare(args: Arguments<typeof compare.parameters>): readonly Rooted[] {
  const { yearlyInterest, roundsPerYear } = args
  return args.firstCosts.map((firstCost, row) => ({
    firstCost,
    rounds: args.rounds[row]!,
    cuttings: args.cuttingsPerRound[row]!,
    yielded: args.yields[row]!,
    washCost: args.washCosts[row]!,
    topUpShare: args.topUpShares[row]!,
    lossShare: args.lossShares[row]!,
    other: args.otherCostsPerCutting[row]!,
    endValue: args.endValues[row]!,
    yearlyInterest,
    roundsPerYear,
  }))
}

export function rootedOfRootingCost(args: Arguments<typeof rootingCost.parameters>): Rooted {
  return { ...args, cuttings: args.cuttingsPerRound, yielded: args.yield, other: args.otherCostPerCutting }
}

/** What a saleable liner costs when the way serves so many rounds. */
export function perLinerOver(rooted: Rooted): (rounds: Decimal) => Decimal {
  const { over } = levelCosts(rooted)
  return (rounds) => perLinerAt(rooted, over(rounds))
}

function perLinerAt({ cuttings, other, yielded }: Rooted, level: Decimal): Decimal {
  return level.div(cuttings).add(other).div(yielded)
}

/** The least number of its rounds over which a saleable liner costs no more than allowed, found as COMPARE finds it. */
export function breakEvenRound(rooted: Rooted, allowed: Decimal): number | 'never' {
  const found = payback(levelCosts(rooted), (level) => perLinerAt(rooted, level), allowed, rooted.rounds)
  return found instanceof Decimal ? found.toNumber() : 'never'
}

/** In the order in which they are stacked. */
export const costParts = ['medium', 'reuse', 'bench', 'labour', 'other', 'losses'] as const
export type CostPart = (typeof costParts)[number]

/**
 * The cost of a saleable liner, taken apart. The level cost is a sum in which each kind of money stands once, so that
 * what is bought and its upkeep can each be levelled alone, and add up to the whole. Bench and labour are missing
 * where the workbook does not tell them from the other costs.
 */
export function partsPerLiner(rooted: Rooted, others?: OtherCosts): Readonly<Partial<Record<CostPart, Decimal>>> {
  const { firstCost, washCost, topUpShare, rounds, cuttings, other, yielded } = rooted
  const bought = levelCosts({ ...rooted, washCost: zero, topUpShare: zero })
    .over(rounds)
    .div(cuttings)
  const upkeep = levelCosts({
    ...rooted,
    firstCost: zero,
    topUpShare: zero,
    endValue: zero,
    washCost: washCost.add(topUpShare.mul(firstCost)),
  })
    .over(rounds)
    .div(cuttings)
  const losses = bought.add(upkeep).add(other).mul(one.div(yielded).sub(one))
  if (others === undefined) return { medium: bought, reuse: upkeep, other, losses }
  return {
    medium: bought.add(others.medium.amount),
    reuse: upkeep,
    bench: others.bench.amount,
    labour: others.labour.amount,
    other: others.other.amount,
    losses,
  }
}
