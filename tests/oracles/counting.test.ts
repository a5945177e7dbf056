/** Counting against oracles: a statistics library, sums in decimals of 60 digits, every number tried, and single ones and zeros. */
import cdf from '@stdlib/stats-base-dists-binomial-cdf'
import DecimalJs from 'decimal.js'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chanceOfAtLeast, expectedShortAndSurplus } from '../../src/core/method/binomialTail'
import { step, value } from '../golden/golden'

const Exact = DecimalJs.clone({ precision: 60 })
type Exact = DecimalJs

const percent = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 100)

/** The chances of 0, 1, … survivors, by the ratio of neighbours; decimals of 60 digits do not mind the length. */
function betaBinomial(stuck: number, mean: number, batchSpread: number): readonly Exact[] {
  const rate = new Exact(mean)
  const size = rate.mul(new Exact(1).sub(rate)).div(new Exact(batchSpread).pow(2)).sub(1)
  const [alive, dead] = [rate.mul(size), size.sub(rate.mul(size))]
  let chance = new Exact(1)
  for (let j = 0; j < stuck; j++) chance = chance.mul(dead.add(j)).div(size.add(j))
  const chances = [chance]
  for (let k = 0; k < stuck; k++) {
    chance = chance
      .mul(stuck - k)
      .mul(alive.add(k))
      .div(dead.add(stuck - k - 1).mul(k + 1))
    chances.push(chance)
  }
  return chances
}

function sum(values: readonly Exact[]): Exact {
  return values.reduce((total, one) => total.add(one), new Exact(0))
}

test.each([
  // The long sums, on both sides, with batches alike, uneven, as a whole lost or alive, and one tail far out.
  [3000, 20_000, 0.5, 0.2],
  [15_000, 20_000, 0.5, 0.2],
  [18_000, 20_000, 0.5, 0.05],
  [20_000, 20_000, 0.9, 0.15],
  [17_000, 20_000, 0.85, 0.3],
  [2, 20_000, 0.03, 0.1],
  [5000, 20_000, 0.5, 0.49],
  [19_900, 20_000, 0.5, 0.49],
  [400, 20_000, 0.02, 0.001],
  [12_500, 20_000, 0.6, 0.004],
  [19_000, 20_000, 0.9999, 0.003],
  [12_000, 20_000, 0.9999, 0.003],
])(
  'the chance of %i or more out of %i at %d with batches that differ by %d is that of a sum in 60 digits, to a relative 1e-9',
  (need, stuck, mean, batchSpread) => {
    const exact = sum(betaBinomial(stuck, mean, batchSpread).slice(need)).toNumber()
    expect(Math.abs(chanceOfAtLeast(need, stuck, { mean, batchSpread }) / exact - 1)).toBeLessThan(1e-9)
  },
)

test('the chance of enough survivors is that of the stdlib binomial distribution up to a million cuttings', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 6, noNaN: true }),
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: 0, max: 6, noNaN: true }),
      (power, mean, deviations) => {
        const stuck = Math.round(10 ** power)
        const need = Math.max(1, Math.round(stuck * mean - deviations * Math.sqrt(stuck * mean * (1 - mean))))
        const fewer = cdf(need - 1, stuck, mean)
        expect(Math.abs(1 - chanceOfAtLeast(need, stuck, { mean, batchSpread: 0 }) - fewer)).toBeLessThan(
          1e-9 * fewer + 1e-14,
        )
      },
    ),
    { numRuns: 400, seed: 4 },
  )
})

test('the liners that are short and over on average are those of sums over all numbers of survivors', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      percent(5, 95),
      fc.double({ min: 0.05, max: 0.98, noNaN: true }),
      fc.double({ min: 0, max: 1.2, noNaN: true }),
      (stuck, mean, part, place) => {
        const batchSpread = part * Math.sqrt(mean * (1 - mean))
        const need = Math.max(1, Math.round(place * stuck))
        const chances = betaBinomial(stuck, mean, batchSpread)
        const { short, surplus } = expectedShortAndSurplus(need, stuck, { mean, batchSpread })
        expect(
          Math.abs(short - sum(chances.map((chance, k) => chance.mul(Math.max(0, need - k)))).toNumber()),
        ).toBeLessThan(1e-9)
        expect(
          Math.abs(surplus - sum(chances.map((chance, k) => chance.mul(Math.max(0, k - need)))).toNumber()),
        ).toBeLessThan(1e-9)
      },
    ),
    { numRuns: 60, seed: 5 },
  )
})

interface Gamble {
  readonly liners: number
  readonly rate: number
  readonly cost: number
  readonly lost: number
  readonly surplus: number
  readonly spread: number
}

/** Cents and per cents, of which the surplus alone never pays. */
const gamble: fc.Arbitrary<Gamble> = fc
  .record({
    liners: fc.integer({ min: 1, max: 12 }),
    rate: percent(30, 99),
    cost: percent(1, 60),
    lost: percent(1, 300),
    surplus: percent(0, 60),
    spread: fc.constantFrom(0, 0, 0.02, 0.05, 0.08),
  })
  .filter(({ cost, rate, surplus, spread }) => cost > surplus * rate * 1.02 && spread < Math.sqrt(rate * (1 - rate)))

function profit(stuck: number, { liners, rate, cost, lost, surplus, spread }: Gamble): Exact {
  const chances = betaBinomial(stuck, rate, spread === 0 ? 1e-25 : spread)
  return sum(
    chances.map((chance, k) =>
      chance.mul(new Exact(lost).mul(Math.min(k, liners)).add(new Exact(surplus).mul(Math.max(0, k - liners)))),
    ),
  ).sub(new Exact(cost).mul(stuck))
}

test('OVERSTICK is the least number that leaves the most, by trying every number', () => {
  fc.assert(
    fc.property(gamble, (one) => {
      const given = value('OVERSTICK', one.liners, [one.rate], one.cost, one.lost, one.surplus, one.spread)
      const profits = Array.from({ length: Math.max(60, given + 20) }, (_, stuck) => profit(stuck, one))
      const best = DecimalJs.max(...profits)
      expect(given).toBe(profits.findIndex((left) => left.gt(best.sub(1e-11))))
      expect(
        step('profit', 'OVERSTICK', one.liners, [one.rate], one.cost, one.lost, one.surplus, one.spread),
      ).toBeCloseTo(best.toNumber(), 9)
    }),
    { numRuns: 120, seed: 6 },
  )
})

test('OVERSTICK stops where the stdlib distribution says that one more does not pay', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 200_000 }),
      percent(30, 99),
      percent(1, 20),
      percent(50, 300),
      (liners, rate, cost, lost) => {
        const stuck = value('OVERSTICK', liners, [rate], cost, lost)
        const brings = (n: number) => lost * rate * cdf(liners - 1, n, rate) - cost
        if (stuck > 0) expect(brings(stuck - 1)).toBeGreaterThan(-1e-9)
        expect(brings(stuck)).toBeLessThan(1e-9)
      },
    ),
    { numRuns: 300, seed: 7 },
  )
})

test('the spread of batches is that of an analysis of variance of their single cuttings, as ones and zeros', () => {
  const batch = fc
    .integer({ min: 2, max: 40 })
    .chain((stuck) => fc.tuple(fc.constant(stuck), fc.integer({ min: 0, max: stuck })))
  fc.assert(
    fc.property(fc.array(batch, { minLength: 2, maxLength: 12 }), (batches) => {
      const [stuck, taken] = [batches.map(([size]) => size), batches.map(([, count]) => count)]
      const groups = batches.map(([size, count]) =>
        Array.from({ length: size }, (_, place): number => (place < count ? 1 : 0)),
      )
      const mean = (values: readonly number[]) => values.reduce((total, one) => total + one, 0) / values.length
      const all = groups.flat()
      const rate = mean(all)
      fc.pre(rate > 0 && rate < 1)
      const between =
        groups.reduce((total, group) => total + group.length * (mean(group) - rate) ** 2, 0) / (groups.length - 1)
      const within =
        groups.reduce(
          (total, group) => total + group.reduce((squares, one) => squares + (one - mean(group)) ** 2, 0),
          0,
        ) /
        (all.length - groups.length)
      const size =
        (all.length - groups.reduce((total, group) => total + group.length ** 2, 0) / all.length) / (groups.length - 1)
      const correlation = (between - within) / (between + (size - 1) * within)
      const variance = Math.max(0, Math.min(correlation, 0.9999)) * rate * (1 - rate)
      expect(value('BATCHSPREAD', stuck, taken) ** 2).toBeCloseTo(variance, 11)
    }),
    { numRuns: 400, seed: 8 },
  )
})
