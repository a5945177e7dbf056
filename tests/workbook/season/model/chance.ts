/**
 * How many of some cuttings survive: binomial, or beta-binomial where the rate differs from batch to batch. Each chance
 * is a sum of plain ratios of neighbours, from the likeliest number outwards.
 */
import { fraction, product, root, sum, type Fraction } from '../fraction'

/** The chance of each number of survivors from 0 to n. @param spread Standard deviation of the rate. */
export function chances(n: number, rate: number, spread = 0): Float64Array {
  const weights = new Float64Array(n + 1)
  if (rate >= 1) {
    weights[n] = 1
    return weights
  }
  const together = spread > 0 ? (rate * (1 - rate)) / spread ** 2 - 1 : Infinity
  /** The chance of k + 1 over that of k. */
  const step = (k: number) =>
    spread > 0
      ? ((n - k) * (k + together * rate)) / ((k + 1) * (n - k - 1 + together * (1 - rate)))
      : ((n - k) * rate) / ((k + 1) * (1 - rate))
  const middle = Math.min(n, Math.floor((n + 1) * rate))
  weights[middle] = 1
  for (let k = middle; k < n; k++) weights[k + 1] = weights[k]! * step(k)
  for (let k = middle - 1; k >= 0; k--) weights[k] = weights[k + 1]! / step(k)
  const total = added(weights)
  return weights.map((weight) => weight / total)
}

/** What each addition loses is added too (Kahan and Neumaier), so that thousands of terms lose nothing. */
function added(values: Float64Array): number {
  let [total, lost] = [0, 0]
  for (const value of values) {
    const next = total + value
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total
    total = next
  }
  return total + lost
}

/** Of two groups that have nothing to do with each other, together. */
export function together(one: Float64Array, other: Float64Array): Float64Array {
  const both = new Float64Array(one.length + other.length - 1)
  one.forEach((chance, k) => {
    if (chance < 1e-30) return
    for (let j = 0; j < other.length; j++) both[k + j]! += chance * other[j]!
  })
  return both
}

export function atLeast(wanted: number, survivors: Float64Array): number {
  if (wanted <= 0) return 1
  return wanted >= survivors.length ? 0 : Math.min(1, added(survivors.subarray(wanted)))
}

/** The least number for which something holds that goes on holding. */
export function least(from: number, holds: (n: number) => boolean): number {
  let step = 1
  while (!holds(from + step - 1)) step *= 2
  let [low, high] = [from, from + step - 1]
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (holds(middle)) high = middle
    else low = middle + 1
  }
  return low
}

/** @param confidence Left out, the average decides. */
export function cuttingsFor(liners: number, rate: Fraction, confidence: number | undefined, spread: number): Fraction {
  if (confidence === undefined) return fraction(liners).over(rate).up()
  return fraction(least(liners, (n) => atLeast(liners, chances(n, rate.toNumber(), spread)) >= confidence))
}

/** Of the true rate between batches: analysis of variance (Ridout, Demetrio & Firth, Biometrics 55:137, 1999). */
export function spreadBetween(batches: readonly { readonly stuck: Fraction; readonly taken: Fraction }[]): Fraction {
  const count = fraction(batches.length)
  const stuck = sum(batches.map((batch) => batch.stuck))
  const taken = sum(batches.map((batch) => batch.taken))
  const within = sum(batches.map((batch) => batch.taken.times(batch.taken).over(batch.stuck)))
  const between = within.minus(taken.times(taken).over(stuck)).over(count.minus(1))
  const inside = taken.minus(within).over(stuck.minus(count))
  const size = stuck.minus(sum(batches.map((batch) => batch.stuck.power(2))).over(stuck)).over(count.minus(1))
  const correlation = between.minus(inside).over(between.plus(size.minus(1).times(inside)))
  const rate = taken.over(stuck)
  return root(product([correlation.atLeast(0), rate, fraction(1).minus(rate)]), 2n)
}
