/** What a grower takes for granted of batches that grow. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { table, value } from '../golden/golden'

const outlook = (...args: readonly unknown[]) => table('ONTRACK', ...args)[0] as readonly number[]
const percent = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 100)
const size = fc.integer({ min: 1, max: 3000 })
const spread = fc.constantFrom(0, 0.03, 0.08)
/** What the folding of chances may be off by. */
const dust = 1e-12

test('more liners promised never have a better chance, and more that grows never a worse one', () => {
  fc.assert(
    fc.property(size, size, percent(40, 90), spread, size, size, (first, second, rate, batchSpread, liners, more) => {
      const chance = outlook(liners, [first, second], [rate], batchSpread)[1]!
      expect(outlook(liners + more, [first, second], [rate], batchSpread)[1]!).toBeLessThanOrEqual(chance + dust)
      expect(outlook(liners, [first, second + more], [rate], batchSpread)[1]!).toBeGreaterThanOrEqual(chance - dust)
    }),
    { numRuns: 200 },
  )
})

test('the order of the batches does not matter, nor a batch of none', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(size, percent(40, 90)), { minLength: 1, maxLength: 4 }),
      spread,
      size,
      (batches, batchSpread, liners) => {
        const of = (rows: readonly (readonly [number, number])[]) =>
          outlook(
            liners,
            rows.map(([count]) => count),
            rows.map(([, rate]) => rate),
            batchSpread,
          )
        const [expected, chance] = of(batches)
        const [other, otherChance] = of([[0, 0.5], ...batches.slice().reverse()])
        expect(other).toBeCloseTo(expected!, 9)
        expect(Math.abs(otherChance! - chance!)).toBeLessThan(dust)
      },
    ),
    { numRuns: 200 },
  )
})

test('with the further cuttings as a batch of their own the confidence is reached, and with one fewer it is not', () => {
  fc.assert(
    fc.property(
      size,
      percent(40, 90),
      spread,
      percent(40, 90),
      percent(10, 99),
      fc.integer({ min: 1, max: 4000 }),
      (growing, rate, batchSpread, newRate, confidence, liners) => {
        const [, chance, further] = outlook(liners, [growing], [rate], batchSpread, [newRate], confidence)
        const chanceWith = (stuck: number) => outlook(liners, [growing, stuck], [rate, newRate], batchSpread)[1]!
        if (further === 0) expect(chance).toBeGreaterThanOrEqual(confidence - dust)
        else {
          expect(chanceWith(further!)).toBeGreaterThanOrEqual(confidence - dust)
          expect(chanceWith(further! - 1)).toBeLessThan(confidence + dust)
        }
      },
    ),
    { numRuns: 200 },
  )
})

test('where nothing grows yet, the further cuttings are those of CUTTINGS, with a confidence and without', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 5000 }),
      percent(40, 90),
      percent(10, 99),
      spread,
      (liners, rate, confidence, batchSpread) => {
        expect(outlook(liners, [0], [1], batchSpread, [rate], confidence)[2]).toBe(
          value('CUTTINGS', liners, [rate], confidence, batchSpread),
        )
        expect(outlook(liners, [0], [1], batchSpread, [rate])[2]).toBe(value('CUTTINGS', liners, [rate]))
      },
    ),
    { numRuns: 200 },
  )
})
