/** One way of rooting, as COMPARE and ROOTINGCOST take it, and what a saleable liner costs in it. */
import { Decimal, one, zero } from '../../core/quantity/decimal'
import { levelCosts, payback, type Reuse } from '../../functions/reuse/levelCost'
import type { Evaluated } from './evaluated'
import type { OtherCosts } from './otherCosts'

export interface Rooted extends Reuse {
  readonly rounds: Decimal
  readonly cuttings: Decimal
  readonly yielded: Decimal
  readonly other: Decimal
}

/** The ways in the order in which COMPARE was given them. */
export function rootedOfCompare({ decimal, decimals }: Evaluated): readonly Rooted[] {
  return decimals('firstCosts').map((firstCost, row) => {
    const at = (parameter: string) => decimals(parameter)[row]!
    return {
      firstCost, rounds: at('rounds'), cuttings: at('cuttingsPerRound'), yielded: at('yields'), washCost: at('washCosts'), topUpShare: at('topUpShares'),
      lossShare: at('lossShares'), other: at('otherCostsPerCutting'), endValue: at('endValues'), yearlyInterest: decimal('yearlyInterest'), roundsPerYear: decimal('roundsPerYear'),
    }
  })
}

export function rootedOfRootingCost({ decimal }: Evaluated): Rooted {
  return {
    firstCost: decimal('firstCost'), rounds: decimal('rounds'), cuttings: decimal('cuttingsPerRound'), yielded: decimal('yield'), washCost: decimal('washCost'), topUpShare: decimal('topUpShare'),
    lossShare: decimal('lossShare'), other: decimal('otherCostPerCutting'), endValue: decimal('endValue'), yearlyInterest: decimal('yearlyInterest'), roundsPerYear: decimal('roundsPerYear'),
  }
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
  const bought = levelCosts({ ...rooted, washCost: zero, topUpShare: zero }).over(rounds).div(cuttings)
  const upkeep = levelCosts({ ...rooted, firstCost: zero, topUpShare: zero, endValue: zero, washCost: washCost.add(topUpShare.mul(firstCost)) }).over(rounds).div(cuttings)
  const losses = bought.add(upkeep).add(other).mul(one.div(yielded).sub(one))
  if (others === undefined) return { medium: bought, reuse: upkeep, other, losses }
  return { medium: bought.add(others.medium.amount), reuse: upkeep, bench: others.bench.amount, labour: others.labour.amount, other: others.other.amount, losses }
}
