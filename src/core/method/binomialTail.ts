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
  return chances(need, stuck, survival).enough
}

/** Ratios of neighbours add up their rounding; beta-binomial sums are long, so a term is computed anew now and then. */
const termsPerAnchor = 1000

interface Chances {
  /** Of at least the need. */
  readonly enough: number
  /** By how much that grows with one cutting more: the chance of being one short, and of that one surviving. */
  readonly gain: number
}

function chances(need: number, stuck: number, survival: Survival): Chances {
  if (need <= 0) return { enough: 1, gain: 0 }
  if (need > stuck) return { enough: 0, gain: 0 }
  const { mean } = survival
  const lost = 1 - mean
  const prior = priorOf(survival)
  const last = need - 1
  let term = prior === undefined ? binomialTerm(last, stuck, mean, lost) : betaBinomialTerm(last, stuck, prior)
  // Underflow: the whole distribution lies on one side of the need.
  if (term === 0) return { enough: last > stuck * mean ? 0 : 1, gain: 0 }
  const gain = term * (prior === undefined ? mean : (prior.alive + last) / (prior.alive + prior.dead + stuck))

  // Where the terms fall towards 0 without rising again, the sum may stop once all that is left cannot count.
  const fallsTowardsZero = prior === undefined || prior.alive >= 1
  let below = term
  for (let k = last; k > 0; k--) {
    const next = prior === undefined
      ? term * (k / (stuck - k + 1)) * (lost / mean)
      : (last - k + 1) % termsPerAnchor === 0
        ? betaBinomialTerm(k - 1, stuck, prior)
        : term * ((k * (stuck - k + prior.dead)) / ((stuck - k + 1) * (k - 1 + prior.alive)))
    below += next
    if (fallsTowardsZero && next < term && next * k < 1e-16) break
    term = next
  }
  return { enough: Math.max(0, 1 - below), gain }
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
 * or undefined where `most` are not enough.
 *
 * The chance grows with the number, so the answer is bracketed; Newton's step, with the exact gain of one cutting
 * more, finds it in a few sums, and halving takes over where the step leaves the bracket or tarries.
 */
export function leastToStick(need: number, confidence: number, survival: Survival, most: number): number | undefined {
  const met = confidence - tieTolerance
  const first = Math.max(need, Math.ceil(need / survival.mean))
  if (first > most || chanceOfAtLeast(need, most, survival) < met) return undefined
  let tooFew = need - 1
  let enough = most
  let tried = first
  for (let round = 1; enough > tooFew + 1; round++) {
    const { enough: chance, gain } = chances(need, tried, survival)
    if (chance >= met) enough = tried
    else tooFew = tried
    const newton = Math.round(tried + (met - chance) / gain)
    const near = Math.min(Math.max(newton, Math.ceil(tried / 8)), tried * 8)
    const inside = Math.min(Math.max(near, tooFew + 1), enough - 1)
    tried = round > mostNewtonSteps || !Number.isFinite(inside) ? Math.floor((tooFew + enough) / 2) : inside
  }
  return enough
}

const mostNewtonSteps = 20
