import { Decimal, one } from './decimal'

/**
 * What two amounts may differ by and still be meant as equal: one part in 10^12, and a millionth at most.
 * A single cell is read to 15 digits, but a cell that adds up a column of some hundred cells carries the binary dust
 * of them all: 36 times 23.7, added one by one, shows as 853.200000000001. That must not buy a bag.
 */
const dustShare = new Decimal('1e-12')
const mostDust = new Decimal('1e-6')

function dustOf(value: Decimal): Decimal {
  return Decimal.min(value.abs().mul(dustShare), mostDust)
}

/**
 * No count grows by less than this, which is also what the plain Excel formula rounds away: a need less a stock that
 * all but covers it is small, and yet carries the dust of the two large sums.
 */
const leastDustOfCount = new Decimal('5e-10')

/** The least whole number that is not below the value, but for dust: 5.000000000001 is 5, 5.0000001 is 6. */
export function roundUpToWhole(value: Decimal): Decimal {
  const below = value.floor()
  const over = value.sub(below)
  // No dust is more than the most; to find how much it is takes longer than all else.
  const isDust = over.lte(mostDust) && over.lte(Decimal.max(dustOf(value), leastDustOfCount))
  return isDust ? below : below.add(one)
}

/**
 * The least that covers an amount in whole parts, but for dust: as many parts as roundUpToWhole counts cover it. Three
 * parts of 33.3333333333333 cover 100.
 */
export function leastCovering(amount: Decimal, part: Decimal): Decimal {
  return Decimal.max(0, amount.sub(Decimal.max(dustOf(amount.div(part)), leastDustOfCount).mul(part)))
}

/** The largest whole number that is not above the value, but for dust: 59.9999999999999 is 60. */
export function roundDownToWhole(value: Decimal): Decimal {
  return roundUpToWhole(value.neg()).neg()
}

/** Whether an amount is at most the other, but for dust: an exact tie of sums counts as reached. */
export function isAtMost(amount: Decimal, other: Decimal): boolean {
  return amount.lte(other.add(dustOf(other)))
}
