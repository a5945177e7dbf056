/**
 * The level cost of REUSECOST over one number of rounds after the other, by its very steps. BREAKEVEN searches in it,
 * REUSELEDGER lists it and COMPARE puts it beside others.
 */
import type { Arguments } from '../../core/definition/definition'
import { runSteps, splitWhereRead, valuesOfSteps } from '../../core/definition/runSteps'
import { one, type Decimal } from '../../core/quantity/decimal'
import { isAtMost } from '../../core/quantity/rounding'
import { reuseCost, type reuseParameters } from './reuseCost'

/** The arguments of REUSECOST but for the rounds. */
export type Reuse = Omit<Arguments<typeof reuseParameters>, 'rounds'>

export interface LevelCosts {
  readonly over: (rounds: Decimal) => Decimal
  /** Washing and topping up before each later round. */
  readonly upkeep: Decimal
  /** What the next round counts today, for a unit in use now. */
  readonly kept: Decimal
  /** What the level cost moves towards, with ever more rounds. */
  readonly limit: Decimal
}

/** The first steps, a root among them, are the same for every number of rounds, and a search computes them once. */
let split: ReturnType<typeof splitSteps> | undefined
const splitSteps = () => splitWhereRead(reuseCost, 'rounds')

export function levelCosts({
  firstCost,
  washCost,
  topUpShare,
  lossShare,
  endValue,
  yearlyInterest,
  roundsPerYear,
}: Reuse): LevelCosts {
  const [sameForAll, perRounds] = (split ??= splitSteps())
  const args = { firstCost, washCost, topUpShare, lossShare, endValue, yearlyInterest, roundsPerYear }
  const same = valuesOfSteps(sameForAll, args)
  const kept = same.kept as Decimal
  const upkeep = washCost.add(topUpShare.mul(firstCost))
  return {
    over: (rounds) => runSteps(perRounds, { ...args, ...same, rounds }) as Decimal,
    upkeep,
    kept,
    limit: upkeep.add(one.sub(kept).mul(firstCost.sub(upkeep))),
  }
}

/**
 * The least number of rounds at which the reusable costs no more than allowed, or why there is none.
 * @param costAt What is compared with it, which grows with the level cost.
 *
 * The level cost is upkeep + (1 - kept)(surplus - endValue y) / (1 - y) with y = kept^rounds. Its slope in y has one
 * sign, that of surplus - endValue, so with every further round it moves the same way towards one limit.
 */
export function payback(
  { over, limit }: LevelCosts,
  costAt: (level: Decimal) => Decimal,
  allowed: Decimal,
  mostRounds: Decimal,
): Decimal | 'never' | 'tooLate' {
  const pays = (rounds: Decimal) => isAtMost(costAt(over(rounds)), allowed)
  if (pays(one)) return one
  if (isAtMost(allowed, costAt(limit))) return 'never'
  if (!pays(mostRounds)) return 'tooLate'
  let [tooFew, enough] = [one, mostRounds]
  while (enough.sub(tooFew).gt(1)) {
    const middle = tooFew.add(enough).div(2).floor()
    if (pays(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}
