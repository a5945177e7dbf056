/** CUTTINGS against a statistics library, and the beta-binomial against an urn that is counted term by term. */
import cdf from '@stdlib/stats-base-dists-binomial-cdf'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chanceOfAtLeast } from '../../src/core/method/binomialTail'
import { value } from '../golden/golden'

test('the chance of enough survivors is that of the stdlib binomial distribution', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20_000 }),
      fc.double({ min: 0.02, max: 0.99, noNaN: true }),
      fc.double({ min: -6, max: 6, noNaN: true }),
      (stuck, mean, deviations) => {
        const need = Math.max(
          1,
          Math.min(stuck, Math.round(stuck * mean + deviations * Math.sqrt(stuck * mean * (1 - mean)))),
        )
        expect(
          Math.abs(chanceOfAtLeast(need, stuck, { mean, batchSpread: 0 }) - (1 - cdf(need - 1, stuck, mean))),
        ).toBeLessThan(1e-10)
      },
    ),
    { numRuns: 500, seed: 1 },
  )
})

test('the number to stick is the least one that meets the confidence, by the stdlib distribution', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20_000 }),
      fc.integer({ min: 5, max: 99 }),
      fc.integer({ min: 1, max: 999 }),
      (liners, percent, permille) => {
        const [rate, confidence] = [percent / 100, permille / 1000]
        const stuck = value('CUTTINGS', liners, [rate], confidence)
        expect(1 - cdf(liners - 1, stuck, rate)).toBeGreaterThanOrEqual(confidence - 1e-9)
        if (stuck > liners) expect(1 - cdf(liners - 1, stuck - 1, rate)).toBeLessThan(confidence + 1e-9)
      },
    ),
    { numRuns: 500, seed: 2 },
  )
})

test('a need of a million agrees with the stdlib distribution', () => {
  const stuck = value('CUTTINGS', 1_000_000, [0.85], 0.95)
  expect(1 - cdf(999_999, stuck, 0.85)).toBeGreaterThanOrEqual(0.95 - 1e-8)
  expect(1 - cdf(999_999, stuck - 1, 0.85)).toBeLessThan(0.95 + 1e-8)
})

test('with batches that differ, the chance is that of an urn whose balls multiply as they are drawn', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 120 }),
      fc.integer({ min: 5, max: 95 }),
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (stuck, percent, part, place) => {
        const mean = percent / 100
        const batchSpread = part * Math.sqrt(mean * (1 - mean))
        const need = Math.max(1, Math.round(place * stuck))
        expect(
          Math.abs(chanceOfAtLeast(need, stuck, { mean, batchSpread }) - urn(need, stuck, mean, batchSpread)),
        ).toBeLessThan(1e-11)
      },
    ),
    { numRuns: 300, seed: 3 },
  )
})

/** Polya's urn gives the beta-binomial distribution (from memory): each draw adds a ball of its colour. */
function urn(need: number, stuck: number, mean: number, batchSpread: number): number {
  const size = (mean * (1 - mean)) / batchSpread ** 2 - 1
  const alive = mean * size
  let chances = [1]
  for (let drawn = 0; drawn < stuck; drawn++) {
    const next = Array<number>(drawn + 2).fill(0)
    chances.forEach((chance, survived) => {
      const survives = (alive + survived) / (size + drawn)
      next[survived + 1]! += chance * survives
      next[survived]! += chance * (1 - survives)
    })
    chances = next
  }
  return chances.slice(need).reduce((sum, chance) => sum + chance, 0)
}
