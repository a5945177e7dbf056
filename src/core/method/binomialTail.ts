/**
 * Chances of a number of survivors, binomial or beta-binomial, in doubles.
 *
 * One term is computed by the saddle-point form of C. Loader, "Fast and Accurate Computation of Binomial
 * Probabilities" (2000), which keeps full accuracy where log-gamma differences lose it; the neighbours follow by
 * the ratio of successive terms.
 */

export interface Survival {
  /** The share of the cuttings that becomes a liner, on average. Above 0 and below 1. */
  readonly mean: number
  /**
   * The standard deviation of that share from batch to batch. With 0 the count is binomial, else beta-binomial.
   * Below the square root of mean x (1 - mean).
   */
  readonly batchSpread: number
}

/** The chance of at least `need` survivors out of `stuck`. Both whole. */
export function chanceOfAtLeast(need: number, stuck: number, survival: Survival): number {
  if (need <= 0) return 1
  if (need > stuck) return 0
  const { mean } = survival
  const lost = 1 - mean
  const prior = priorOf(survival)
  const last = need - 1
  let term = prior === undefined ? binomialTerm(last, stuck, mean, lost) : betaBinomialTerm(last, stuck, prior)
  // Underflow: the whole distribution lies on one side of the need.
  if (term === 0) return last > stuck * mean ? 0 : 1

  // Where the terms fall towards 0 without rising again, the sum may stop once they no longer count.
  const fallsTowardsZero = prior === undefined || prior.alive >= 1
  let below = term
  for (let k = last; k > 0; k--) {
    const next = prior === undefined
      ? term * (k / (stuck - k + 1)) * (lost / mean)
      : term * (k / (stuck - k + 1)) * ((stuck - k + prior.dead) / (k - 1 + prior.alive))
    below += next
    if (fallsTowardsZero && next < term && next < below * 1e-18) break
    term = next
  }
  return Math.max(0, 1 - below)
}

/** The parameters of the beta distribution of the batches' rates. */
interface Prior { readonly alive: number; readonly dead: number }

/** Beyond this the batches differ by less than a double can show, and the count is binomial. */
const largestPrior = 1e13

function priorOf({ mean, batchSpread }: Survival): Prior | undefined {
  if (batchSpread === 0) return undefined
  const size = (mean * (1 - mean)) / (batchSpread * batchSpread) - 1
  return size > largestPrior ? undefined : { alive: mean * size, dead: (1 - mean) * size }
}

function betaBinomialTerm(k: number, n: number, { alive, dead }: Prior): number {
  const size = alive + dead
  const [p, q] = [alive / size, dead / size]
  const scale = (alive * dead * (n + size)) / (size * (k + alive) * (n - k + dead))
  return Math.exp(
    logBinomialTerm(k, n, p, q) + logBinomialTerm(alive, size, p, q) - logBinomialTerm(k + alive, n + size, p, q),
  ) * scale
}

function binomialTerm(k: number, n: number, p: number, q: number): number {
  return Math.exp(logBinomialTerm(k, n, p, q))
}

/** log of n! / (k! (n - k)!) p^k q^(n - k), the factorials extended to real numbers. */
function logBinomialTerm(k: number, n: number, p: number, q: number): number {
  if (k === 0) return n * Math.log1p(-p)
  if (k === n) return n * Math.log(p)
  const dead = n - k
  return stirlingError(n) - stirlingError(k) - stirlingError(dead)
    - deviance(k, n * p) - deviance(dead, n * q)
    - 0.5 * (Math.log(2 * Math.PI) + Math.log(k) + Math.log1p(-k / n))
}

/** log(x!) less Stirling's formula for it. */
function stirlingError(x: number): number {
  let [at, sum] = [x, 0]
  for (; at < 16; at++) sum += (at + 0.5) * Math.log1p(1 / at) - 1
  const square = at * at
  return sum + (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / (1188 * square)) / square) / square) / square) / at
}

/** x log(x / mean) + mean - x, without cancellation where x is near the mean. */
function deviance(x: number, mean: number): number {
  if (Math.abs(x - mean) >= 0.1 * (x + mean)) return x * Math.log(x / mean) + mean - x
  const ratio = (x - mean) / (x + mean)
  let sum = (x - mean) * ratio
  let power = 2 * x * ratio
  for (let j = 1; j < 1000; j++) {
    power *= ratio * ratio
    const next = sum + power / (2 * j + 1)
    if (next === sum) break
    sum = next
  }
  return sum
}

/** Exact ties exist (one cutting at 0.5 meets a confidence of 0.5), and doubles may miss them by a hair. */
const tieTolerance = 1e-12

/**
 * The least number to stick so that at least `need` survive with the given confidence,
 * or undefined where `most` are not enough. The chance grows with the number, so halving finds it.
 */
export function leastToStick(need: number, confidence: number, survival: Survival, most: number): number | undefined {
  const meets = (stuck: number) => chanceOfAtLeast(need, stuck, survival) >= confidence - tieTolerance
  let tooFew = need - 1
  let enough = Math.max(need, Math.ceil(need / survival.mean))
  while (!meets(enough)) {
    if (enough >= most) return undefined
    tooFew = enough
    enough = Math.min(most, enough * 2)
  }
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (meets(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}
