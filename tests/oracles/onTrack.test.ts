/** ONTRACK against sums of batches that are counted cutting by cutting in fractions, and against a statistics library. */
import cdf from '@stdlib/stats-base-dists-binomial-cdf'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { table } from '../golden/golden'

/** The chances of 0, 1, 2 … survivors in one common fraction: so many parts of the whole. */
interface Fractions {
  readonly parts: readonly bigint[]
  readonly whole: bigint
}

const none: Fractions = { parts: [1n], whole: 1n }

/** With one cutting more, which survives with so many parts of the whole, whatever the others did. */
function withOneMore({ parts, whole }: Fractions, alive: (survivors: number) => bigint, of: bigint): Fractions {
  const next = Array<bigint>(parts.length + 1).fill(0n)
  parts.forEach((part, survivors) => {
    next[survivors + 1]! += part * alive(survivors)
    next[survivors]! += part * (of - alive(survivors))
  })
  return { parts: next, whole: whole * of }
}

function together(a: Fractions, b: Fractions): Fractions {
  const parts = Array<bigint>(a.parts.length + b.parts.length - 1).fill(0n)
  a.parts.forEach((one, i) => b.parts.forEach((other, j) => (parts[i + j]! += one * other)))
  return { parts, whole: a.whole * b.whole }
}

function chanceOf(need: number, { parts, whole }: Fractions): number {
  const enough = parts.slice(Math.max(0, need)).reduce((sum, part) => sum + part, 0n)
  return Number((enough * 10n ** 18n) / whole) / 1e18
}

function batch(size: number, percent: number): Fractions {
  let chances = none
  for (let cutting = 0; cutting < size; cutting++) chances = withOneMore(chances, () => BigInt(percent), 100n)
  return chances
}

/** An urn with so many balls for living and dead cuttings, to which each draw adds one of its kind. */
function urn(size: number, alive: number, dead: number): Fractions {
  let chances = none
  for (let drawn = 0; drawn < size; drawn++)
    chances = withOneMore(chances, (survivors) => BigInt(alive + survivors), BigInt(alive + dead + drawn))
  return chances
}

const outlook = (...args: readonly unknown[]) => table('ONTRACK', ...args)[0] as readonly number[]

const batches = fc.array(fc.tuple(fc.integer({ min: 0, max: 25 }), fc.integer({ min: 0, max: 100 })), {
  minLength: 1,
  maxLength: 4,
})

test('the chance is that of all cuttings counted one by one, and the further cuttings are the least that reach the confidence', () => {
  fc.assert(
    fc.property(
      batches,
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 20, max: 100 }),
      fc.integer({ min: 1, max: 999 }),
      (all, liners, newPercent, permille) => {
        const growing = all.reduce((sum, [size, percent]) => together(sum, batch(size, percent)), none)
        const confidence = permille / 1000
        const [expected, chance, further] = outlook(
          liners,
          all.map(([size]) => size),
          all.map(([, percent]) => percent / 100),
          0,
          [newPercent / 100],
          confidence,
        )
        expect(expected).toBeCloseTo(all.reduce((sum, [size, percent]) => sum + size * percent, 0) / 100, 10)
        expect(Math.abs(chance! - chanceOf(liners, growing))).toBeLessThan(1e-13)
        expect(chanceOf(liners, together(growing, batch(further!, newPercent)))).toBeGreaterThanOrEqual(
          confidence - 1e-11,
        )
        if (further! > 0)
          expect(chanceOf(liners, together(growing, batch(further! - 1, newPercent)))).toBeLessThan(confidence)
      },
    ),
    { numRuns: 200, seed: 3 },
  )
})

test('with batches that differ, the chance is that of urns whose balls multiply as they are drawn', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 0, max: 80 }),
      (sizes, alive, dead, liners) => {
        const all = alive + dead
        const spread = Math.sqrt((alive * dead) / (all * all * (all + 1)))
        const growing = sizes.reduce((sum, size) => together(sum, urn(size, alive, dead)), none)
        const [, chance] = outlook(liners, sizes, [alive / all], spread)
        expect(Math.abs(chance! - chanceOf(liners, growing))).toBeLessThan(1e-11)
      },
    ),
    { numRuns: 200, seed: 4 },
  )
})

test('large batches of one rate are one batch by the stdlib distribution, however they are parted', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 60_000 }), { minLength: 1, maxLength: 8 }),
      fc.integer({ min: 2, max: 98 }),
      fc.double({ min: -5, max: 5, noNaN: true }),
      (sizes, percent, deviations) => {
        const all = sizes.reduce((sum, size) => sum + size, 0)
        const rate = percent / 100
        const need = Math.max(1, Math.round(all * rate + deviations * Math.sqrt(all * rate * (1 - rate))))
        const [, chance] = outlook(need, sizes, [rate])
        expect(Math.abs(chance! - (1 - cdf(need - 1, all, rate)))).toBeLessThan(1e-10)
      },
    ),
    { numRuns: 100, seed: 5 },
  )
})
