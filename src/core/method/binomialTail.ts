/**
 * Chances of a number of survivors, binomial or beta-binomial, in doubles.
 *
 * One chance is computed by the saddle-point form of C. Loader, "Fast and Accurate Computation of Binomial
 * Probabilities" (2000), which keeps full accuracy where log-gamma differences lose it. A long sum of them is an
 * integral with the corrections of the Euler-Maclaurin formula, so that ten million cost no more than a thousand.
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

/** How many liners are short of the need, and how many are over, on average. The need is above 0; both whole. */
export function expectedShortAndSurplus(
  need: number,
  stuck: number,
  survival: Survival,
): { readonly short: number; readonly surplus: number } {
  const expected = stuck * survival.mean
  const { enough, fewer, reached } = chances(need, stuck, survival)
  const { prior } = distributionOf(survival)
  // With t(k) = k (stuck - k + dead) / (alive + dead) the chance f(k) of just k survivors has (k - expected) f(k) =
  // t(k) f(k) - t(k + 1) f(k + 1), so that a sum of it over a tail is one term.
  const deviation =
    reached *
    need *
    (prior === undefined ? 1 - survival.mean : (stuck - need + prior.dead) / (prior.alive + prior.dead))
  return {
    short: Math.max(0, (need - expected) * fewer + deviation),
    surplus: Math.max(0, (expected - need) * enough + deviation),
  }
}

/** The survival of a cutting's whole batch where that one cutting is known to survive: such batches are the better ones. */
export function besideASurvivor(survival: Survival): Survival {
  const { mean, batchSpread } = survival
  if (batchSpread === 0) return survival
  const size = sizeOf(survival)
  const better = (mean * size + 1) / (size + 1)
  return { mean: better, batchSpread: Math.sqrt((better * (1 - better)) / (size + 2)) }
}

interface Chances {
  /** Of at least the need, and of fewer. */
  readonly enough: number
  readonly fewer: number
  /** Of just the need. */
  readonly reached: number
  /** By how much `enough` grows with one cutting more: the chance of being one short, and of that one surviving. */
  readonly gain: number
}

function chances(need: number, stuck: number, survival: Survival): Chances {
  if (need <= 0) return { enough: 1, fewer: 0, reached: 0, gain: 0 }
  if (need > stuck) return { enough: 0, fewer: 1, reached: 0, gain: 0 }
  const { chanceOf, prior, deviation } = distributionOf(survival)
  const odds = survival.mean / (1 - survival.mean)
  // By how many times the chance of one survivor more is that of k.
  const growth = (k: number) =>
    ((stuck - k) / (k + 1)) * (prior === undefined ? odds : (k + prior.alive) / (stuck - k - 1 + prior.dead))
  const oneShort = chanceOf(need - 1, stuck)
  const gain =
    oneShort * (prior === undefined ? survival.mean : (prior.alive + need - 1) / (prior.alive + prior.dead + stuck))
  // The tail away from the average is summed, because 1 less a small tail would lose its digits.
  const isAbove = need > stuck * survival.mean
  const tail = sumOfTail(
    (place) => chanceOf(isAbove ? need + place : need - 1 - place, stuck),
    (place) => (isAbove ? growth(need + place) : 1 / growth(need - 2 - place)),
    isAbove ? stuck - need : need - 1,
    deviation(stuck),
  )
  const [summed, rest] = [Math.min(1, tail), Math.max(0, 1 - tail)]
  const [enough, fewer] = isAbove ? [summed, rest] : [rest, summed]
  return { enough, fewer, reached: chanceOf(need, stuck), gain }
}

/** How many terms are added one by one at either end, where they may change too fast for the integral. */
const termsAtEnds = 256

/** How many of them are made from one another before one is computed anew, while no more than the last digit is lost. */
const termsInSteps = 16

/** What is so small a share of a sum does not change it. */
const nothing = 1e-18

/**
 * The sum of the terms from 0 to `last`: a tail, counted outwards, of a distribution with that standard deviation.
 *
 * Between the ends it is an integral from half to half, less its corrections at both (Euler and Maclaurin's, written
 * in central differences), of which the first that is left out falls with the fifth power of the terms at the ends.
 * The integral is taken in panels as wide as the deviation, but no wider than their distance from the start, nor than
 * half of what is left: near the ends the terms may change as a power of the distance, and so do the panels. Far out
 * nothing but such a power is left, and they widen again. Once what follows is nothing, the sum ends: terms that rise
 * again at the far end fall before it as a power of the distance at most, so they are never so small.
 *
 * @param growth By how many times the next term is what this one is.
 */
function sumOfTail(
  term: (place: number) => number,
  growth: (place: number) => number,
  last: number,
  deviation: number,
): number {
  let [sum, one] = [0, 0]
  const oneByOne = last < 6 * termsAtEnds ? last : termsAtEnds - 1
  for (let place = 0; place <= oneByOne; place++) {
    one = place % termsInSteps === 0 ? term(place) : one * growth(place - 1)
    sum += one
    if (one * (last - place) < sum * nothing) return sum
  }
  if (oneByOne === last) return sum
  const [from, to] = [oneByOne + 0.5, last - termsAtEnds + 0.5]
  sum += correction(term, from)
  for (let low = from; low < to;) {
    const high = Math.min(low + Math.min(Math.max(deviation, low / 4), low, (last - low) / 2), to)
    const panel = integral(term, low, high)
    sum += panel
    low = high
    if (panel < sum * nothing) return sum
  }
  sum -= correction(term, to)
  for (let place = to + 0.5; place <= last; place++) sum += term(place)
  return sum
}

/** By how much a sum from the whole number above that place on exceeds the integral from it on. */
function correction(term: (k: number) => number, between: number): number {
  const [before, after] = [between - 0.5, between + 0.5]
  const first = term(after) - term(before)
  const third = term(after + 1) - 3 * term(after) + 3 * term(before) - term(before - 1)
  return first / 24 - (17 * third) / 5760
}

/** The nodes above 0 and the weights of the Gauss-Legendre rule with 16 nodes on -1 to 1, found by Newton's steps. */
const gaussRule: readonly (readonly [node: number, weight: number])[] = Array.from({ length: 8 }, (_, index) => {
  const nodes = 16
  let [node, slope] = [Math.cos((Math.PI * (index + 0.75)) / (nodes + 0.5)), 0]
  for (let step = 0; step < 8; step++) {
    let [before, polynomial] = [1, node]
    for (let degree = 2; degree <= nodes; degree++)
      [before, polynomial] = [polynomial, ((2 * degree - 1) * node * polynomial - (degree - 1) * before) / degree]
    slope = (nodes * (node * polynomial - before)) / (node * node - 1)
    node -= polynomial / slope
  }
  return [node, 2 / ((1 - node * node) * slope * slope)] as const
})

function integral(term: (k: number) => number, low: number, high: number): number {
  const [middle, half] = [(low + high) / 2, (high - low) / 2]
  let sum = 0
  for (const [node, weight] of gaussRule) sum += weight * (term(middle - half * node) + term(middle + half * node))
  return sum * half
}

interface Distribution {
  /** The chance of just k survivors out of n; k may lie between whole numbers. */
  readonly chanceOf: (k: number, n: number) => number
  /** Nothing where the batches do not differ. */
  readonly prior: Prior | undefined
  readonly deviation: (n: number) => number
}

function distributionOf(survival: Survival): Distribution {
  const { mean } = survival
  const lost = 1 - mean
  const prior = priorOf(survival)
  if (prior === undefined) {
    return {
      chanceOf: (k, n) => Math.exp(logBinomialTerm(k, n, mean, lost)),
      prior,
      deviation: (n) => Math.sqrt(n * mean * lost),
    }
  }
  const size = prior.alive + prior.dead
  return {
    chanceOf: betaBinomialTerm(prior),
    prior,
    deviation: (n) => Math.sqrt((n * mean * lost * (size + n)) / (size + 1)),
  }
}

/** The parameters of the beta distribution of the batches' rates. */
interface Prior {
  readonly alive: number
  readonly dead: number
}

/** Beyond this the batches differ by less than a double can show, and the count is binomial. */
const largestPrior = 1e13

function sizeOf({ mean, batchSpread }: Survival): number {
  return (mean * (1 - mean)) / (batchSpread * batchSpread) - 1
}

export function priorOf(survival: Survival): Prior | undefined {
  if (survival.batchSpread === 0) return undefined
  const size = sizeOf(survival)
  return size > largestPrior ? undefined : { alive: survival.mean * size, dead: (1 - survival.mean) * size }
}

function betaBinomialTerm({ alive, dead }: Prior): Distribution['chanceOf'] {
  const size = alive + dead
  const [p, q] = [alive / size, dead / size]
  const logOfPrior = logBinomialTerm(alive, size, p, q)
  return (k, n) => {
    const scale = (alive * dead * (n + size)) / (size * (k + alive) * (n - k + dead))
    return Math.exp(logBinomialTerm(k, n, p, q) + logOfPrior - logBinomialTerm(k + alive, n + size, p, q)) * scale
  }
}

/** log of n! / (k! (n - k)!) p^k q^(n - k), the factorials extended to real numbers. */
function logBinomialTerm(k: number, n: number, p: number, q: number): number {
  if (k === 0) return n * logOfShare(q, p)
  if (k === n) return n * logOfShare(p, q)
  const dead = n - k
  return (
    stirlingError(n) -
    stirlingError(k) -
    stirlingError(dead) -
    deviance(k, n * p) -
    deviance(dead, n * q) -
    0.5 * (Math.log(2 * Math.PI) + Math.log(k) + Math.log1p(-k / n))
  )
}

/** Near 1 a share has lost digits that the rest still has. */
function logOfShare(share: number, rest: number): number {
  return share < 0.5 ? Math.log(share) : Math.log1p(-rest)
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
export const tieTolerance = 1e-12

/**
 * The least number to stick so that at least `need` survive with the given confidence,
 * or undefined where `most` are not enough.
 *
 * The chance grows with the number, so the answer is bracketed; Newton's step, with the exact gain of one cutting
 * more, finds it in a few sums, and halving takes over where the step leaves the bracket or tarries.
 */
export function leastToStick(need: number, confidence: number, survival: Survival, most: number): number | undefined {
  const met = confidence - tieTolerance
  if (need > most) return undefined
  let tooFew = need - 1
  let enough = most
  let tried = Math.min(Math.ceil(need / survival.mean), most)
  for (let round = 1; enough > tooFew + 1; round++) {
    const { enough: chance, gain } = chances(need, tried, survival)
    if (chance >= met) enough = tried
    else tooFew = tried
    const newton = Math.round(tried + (met - chance) / gain)
    const near = Math.min(Math.max(newton, Math.ceil(tried / 8)), tried * 8)
    const inside = Math.min(Math.max(near, tooFew + 1), enough - 1)
    tried = round <= mostNewtonSteps && inside > 0 ? inside : Math.floor((tooFew + enough) / 2)
  }
  return enough < most || chanceOfAtLeast(need, most, survival) >= met ? enough : undefined
}

const mostNewtonSteps = 20
