/** What a grower takes for granted of oversticking and of batches that differ. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { definition, value } from '../golden/golden'

const percent = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 100)

/** Cuttings, and how many of them became liners, of at least two batches. */
const batches = fc.array(
  fc.integer({ min: 2, max: 2000 }).chain((stuck) => fc.tuple(fc.constant(stuck), fc.integer({ min: 0, max: stuck }))),
  { minLength: 2, maxLength: 15 },
)

function spreadOf(rows: readonly (readonly [stuck: number, taken: number])[]): number {
  return value(
    'BATCHSPREAD',
    rows.map(([stuck]) => stuck),
    rows.map(([, taken]) => taken),
  )
}

describe('OVERSTICK', () => {
  const spread = fc.constantFrom(0, 0.03, 0.08)

  test('more liners, or more lost with each that is missing, never take fewer cuttings', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20_000 }),
        fc.integer({ min: 1, max: 500 }),
        percent(30, 95),
        percent(1, 50),
        percent(1, 300),
        spread,
        (liners, more, rate, cost, lost, batchSpread) => {
          const stuck = value('OVERSTICK', liners, [rate], cost, lost, 0, batchSpread)
          expect(value('OVERSTICK', liners + more, [rate], cost, lost, 0, batchSpread)).toBeGreaterThanOrEqual(stuck)
          expect(value('OVERSTICK', liners, [rate], cost, lost + more / 100, 0, batchSpread)).toBeGreaterThanOrEqual(
            stuck,
          )
        },
      ),
      { numRuns: 300 },
    )
  })

  test('dearer cuttings never take more of them, and a surplus that is worth more never fewer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        percent(30, 95),
        percent(10, 50),
        percent(1, 50),
        percent(50, 300),
        spread,
        (liners, rate, cost, dearer, lost, batchSpread) => {
          const stuck = value('OVERSTICK', liners, [rate], cost, lost, 0.01, batchSpread)
          expect(value('OVERSTICK', liners, [rate], cost + dearer, lost, 0.01, batchSpread)).toBeLessThanOrEqual(stuck)
          expect(value('OVERSTICK', liners, [rate], cost, lost, 0.08, batchSpread)).toBeGreaterThanOrEqual(stuck)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('all money in another currency takes the same cuttings', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        percent(30, 95),
        percent(1, 50),
        percent(1, 300),
        spread,
        (liners, rate, cost, lost, batchSpread) => {
          expect(value('OVERSTICK', liners, [rate], 8 * cost, 8 * lost, 0, batchSpread)).toBe(
            value('OVERSTICK', liners, [rate], cost, lost, 0, batchSpread),
          )
        },
      ),
      { numRuns: 200 },
    )
  })

  test('where batches do not differ it is CUTTINGS with the chance up to which one more pays', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50_000 }),
        fc.constantFrom(0.2, 0.4, 0.5, 0.8),
        fc.integer({ min: 1, max: 99 }),
        (liners, rate, hundredths) => {
          // A loss of 1 and a cost of (1 - confidence) x rate, both in few decimals.
          const cost = Number(((1 - hundredths / 100) * rate).toFixed(6))
          expect(value('OVERSTICK', liners, [rate], cost, 1)).toBe(value('CUTTINGS', liners, [rate], hundredths / 100))
        },
      ),
      { numRuns: 200 },
    )
  })
})

describe('BATCHSPREAD', () => {
  test('does not mind the order of the batches, blank rows, nor whether the living or the lost are counted', () => {
    fc.assert(
      fc.property(batches, (rows) => {
        const spread = spreadOf(rows)
        expect(spreadOf([...rows].reverse())).toBeCloseTo(spread, 12)
        expect(spreadOf(rows.map(([stuck, taken]) => [stuck, stuck - taken]))).toBeCloseTo(spread, 12)
        const withBlank = [rows.map(([stuck]) => [stuck]), rows.map(([, taken]) => [taken])].map((line) => [
          ...line.slice(0, 1),
          [''],
          ...line.slice(1),
        ])
        expect(call(definition('BATCHSPREAD'), withBlank)).toMatchObject({ value: spread })
      }),
      { numRuns: 300 },
    )
  })

  test('is taken by CUTTINGS and OVERSTICK at the rate of those batches, whatever the batches were', () => {
    const whole = fc.array(
      fc.integer({ min: 2, max: 2000 }).chain((stuck) => fc.tuple(fc.constant(stuck), fc.constantFrom(0, stuck))),
      { minLength: 2, maxLength: 6 },
    )
    fc.assert(
      fc.property(fc.oneof(batches, whole), (rows) => {
        const [stuck, taken] = [0, 1].map((column) => rows.reduce((sum, row) => sum + row[column]!, 0)) as [
          number,
          number,
        ]
        fc.pre(taken > 0)
        const spread = spreadOf(rows)
        for (const outcome of [
          call(definition('CUTTINGS'), [100, taken / stuck, 0.9, spread]),
          call(definition('OVERSTICK'), [100, taken / stuck, 0.1, 1, 0, spread]),
        ]) {
          // It may be that no number of cuttings is enough, but the spread is never refused.
          if (outcome.kind === 'error') expect(outcome.code, outcome.sentence).toBe('#N/A')
        }
      }),
      { numRuns: 300 },
    )
  })

  test('batches that differ more give no smaller spread', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 500 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 1, max: 100 }),
        (half, apart, more) => {
          const [near, far] = [Math.min(apart, half), Math.min(apart + more, half)]
          const at = (distance: number) =>
            spreadOf([
              [2 * half, half - distance],
              [2 * half, half + distance],
            ])
          expect(at(far)).toBeGreaterThanOrEqual(at(near))
        },
      ),
      { numRuns: 300 },
    )
  })
})
