/** ONTRACK against published sample sizes and small sums that are counted by hand, and what it refuses. */
import { describe, expect, test } from 'vitest'
import { goldenTests, refusal, table, value, type GoldenRow } from './golden'

const outlook = (...args: readonly unknown[]) => table('ONTRACK', ...args)[0]!
const expected = (...args: readonly unknown[]) => Number(outlook(...args)[0])
const chance = (...args: readonly unknown[]) => Number(outlook(...args)[1])
const further = (...args: readonly unknown[]) => outlook(...args)[2]!

/** The table's k means "more than k", so k + 1 liners are asked for. Nothing grows yet, so all are still to stick. */
const published = (
  [
    [50, 0.9, [56, 58, 60, 61, 63]],
    [500, 0.9, [556, 562, 567, 570, 576]],
    [5, 0.6, [10, 11, 13, 15, 18]],
  ] as const
).flatMap(([moreThan, rate, sizes]) =>
  [0.5, 0.75, 0.9, 0.95, 0.99].map((confidence, place): GoldenRow => ({
    expected: sizes[place]!,
    within: 0,
    is: `further cuttings for more than ${moreThan} at ${rate} with ${confidence}, where none grow`,
    computed: () => Number(further(moreThan + 1, [0], [1], 0, [rate], confidence)),
    source: 'boost-negative-binomial',
    seen: 'copy',
  })),
)

goldenTests([
  ...published,
  // Of 1 at 1/2 and 2 at 1/4 two or more live with 1/2 (1 - 9/16) + 1/2 (1/16) = 1/4.
  {
    expected: 0.25,
    within: 1e-15,
    is: 'the chance of 2 liners from one cutting at 1/2 and two at 1/4',
    computed: () => chance(2, [1, 2], [0.5, 0.25]),
    source: 'definition',
    seen: 'arithmetic',
  },
  // A batch that takes or fails as a beta(1, 1) rate, of deviation 1/12 ^ 0.5, gives 0, 1 or 2 of 2 with a third each.
  {
    expected: 1 / 3,
    within: 1e-14,
    is: 'the chance of 2 liners from a batch of 2 whose rates lie anywhere alike',
    computed: () => chance(2, [2], [0.5], Math.sqrt(1 / 12)),
    source: 'definition',
    seen: 'arithmetic',
  },
  // Of two such batches: 3 or 4 of 4 with (2 + 1) / 9.
  {
    expected: 1 / 3,
    within: 1e-14,
    is: 'the chance of 3 liners from two such batches',
    computed: () => chance(3, [2, 2], [0.5], Math.sqrt(1 / 12)),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 9150,
    within: 1e-9,
    is: 'liners that 6,000 at 90 % and 5,000 at 75 % are on average',
    computed: () => expected(10_000, [6000, 5000], [0.9, 0.75]),
    source: 'definition',
    seen: 'arithmetic',
  },
  // 850 are missing, and of 1,000 cuttings at 85 % so many become liners.
  {
    expected: 1000,
    within: 0,
    is: 'further cuttings that make up for it on average at 85 %, in two stages',
    computed: () => Number(further(10_000, [6000, 5000], [0.9, 0.75], 0, [1, 0.85])),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1,
    within: 0,
    is: 'the chance where what is ready is enough, whatever the rest does',
    computed: () => chance(500, [500, 300], [1, 0.5], 0.1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'the chance where even all that grows is not enough',
    computed: () => chance(801, [500, 300], [1, 0.5], 0.1),
    source: 'definition',
    seen: 'arithmetic',
  },
  // One cutting at 0.5 meets a confidence of 0.5 (an exact tie).
  {
    expected: 1,
    within: 0,
    is: 'further cuttings for one liner at 0.5 with 0.5',
    computed: () => Number(further(1, [4], [0], 0, [0.5], 0.5)),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 51,
    within: 0,
    is: 'further cuttings for 50.2 liners where none is lost',
    computed: () => Number(further(50.2, [0], [1], 0, [1], 0.99)),
    source: 'definition',
    seen: 'arithmetic',
  },
])

describe('further cuttings', () => {
  test('are 0 where what grows is enough, with and without rates for them', () => {
    expect(further(40, [60], [0.9])).toBe(0)
    expect(further(40, [60], [0.9], 0, null, 0.9)).toBe(0)
    expect(further(40, [60], [0.9], 0, [0.8], 0.9)).toBe(0)
  })

  test('are not known without rates for them, and the rest of the row is', () => {
    expect(outlook(60, [60], [0.5])).toEqual([30, expect.any(Number), 'not known'])
    expect(outlook(60, [60], [0.5], 0, null, 0.9)).toEqual([30, expect.any(Number), 'not known'])
  })

  test('that not even a million of reach the confidence are said to be more than that', () => {
    expect(further(100, [50], [0.5], 0.49, [0.5], 0.999)).toBe('more than 1000000')
  })

  test('have stages of their own, as many as there are, beside any number of batches', () => {
    expect(further(10, [2, 3, 4], [1], 0, [0.5, 0.5])).toBe(4)
    expect(further(10, [2, null, 3, 4], [1, null, 1, 1], 0, [0.5, 0.5, null])).toBe(4)
  })
})

describe('what is refused', () => {
  test('batches that differ by more than a rate leaves room for, with the rates to blame', () => {
    expect(refusal('ONTRACK', 10, [20, 30], [0.5, 0.99], 0.2).sentence).toBe(
      'batchSpread must be below 0.0995 with the ratesLeft given; it is 0.2. Type a smaller one, or leave it out.',
    )
    expect(refusal('ONTRACK', 10, [20], [0.5], 0.2, [0.99]).sentence).toContain('with the newRates given')
    expect(value('CUTTINGS', 10, [0.5], 0.9, 0.2)).toBeGreaterThan(20)
  })

  test('more cuttings than a cell can count without waiting', () => {
    expect(refusal('ONTRACK', 10, [600_000, 600_000], [0.5]).sentence).toContain(
      'growing must be at most 1000000; it is 1200000.',
    )
  })

  test('a share typed for a count', () => {
    expect(refusal('ONTRACK', 10, [0.8], [0.5]).sentence).toContain('growing, row 1, must be a whole number; it is 0.8')
  })
})
