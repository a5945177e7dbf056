/** BATCHSPREAD, OVERSTICK and MOTHERPLANTS against published data and ratios. */
import { describe, expect, test } from 'vitest'
import { goldenTests, refusal, step, value, type GoldenRow } from './golden'

/** Litters of the control and of the treated rats: pups alive at four days, and those that lived to be weaned. */
const control = [
  [13, 12, 9, 9, 8, 8, 13, 12, 10, 10, 9, 13, 5, 7, 10, 10],
  [13, 12, 9, 9, 8, 8, 12, 11, 9, 9, 8, 11, 4, 5, 7, 7],
]
const treated = [
  [12, 11, 10, 9, 11, 10, 10, 9, 9, 5, 9, 7, 10, 6, 10, 7],
  [12, 11, 10, 9, 10, 9, 9, 8, 8, 4, 7, 4, 5, 3, 3, 0],
]

// The expected values were worked out apart, by an analysis of variance of the single pups as ones and zeros.
const rows: readonly GoldenRow[] = [
  {
    expected: 0.029091385439862,
    within: 1e-12,
    is: 'the correlation within the litters of the control rats',
    computed: () => step('correlation', 'BATCHSPREAD', ...control),
    source: 'williams-1975',
    seen: 'arithmetic',
  },
  {
    expected: 0.372134813814397,
    within: 1e-12,
    is: 'the correlation within the litters of the treated rats',
    computed: () => step('correlation', 'BATCHSPREAD', ...treated),
    source: 'williams-1975',
    seen: 'arithmetic',
  },
  {
    expected: 9.841350210970464,
    within: 1e-12,
    is: 'the mean litter of the control rats, less where the sizes differ',
    computed: () => step('batchSize', 'BATCHSPREAD', ...control),
    source: 'williams-1975',
    seen: 'arithmetic',
  },
  {
    expected: 0.051455200972039,
    within: 1e-12,
    is: 'the spread of survival among the control litters',
    computed: () => value('BATCHSPREAD', ...control),
    source: 'williams-1975',
    seen: 'arithmetic',
  },
  {
    expected: 0.255769131913642,
    within: 1e-12,
    is: 'the spread of survival among the treated litters',
    computed: () => value('BATCHSPREAD', ...treated),
    source: 'williams-1975',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'the spread of batches that are all alike',
    computed: () => value('BATCHSPREAD', [50, 50, 50], [40, 40, 40]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'the spread of batches of which every cutting was taken',
    computed: () => value('BATCHSPREAD', [50, 70], [50, 70]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'the spread of batches of which none was taken',
    computed: () => value('BATCHSPREAD', [50, 70], [0, 0]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 8 / 12,
    within: 1e-15,
    is: 'the chance up to which one more of cost 12, price 20 and worth 8 as surplus pays, 20 - 12 of 20 - 8',
    computed: () => step('ratio', 'OVERSTICK', 200, [1], 12, 20, 8),
    source: 'definition',
    seen: 'arithmetic',
  },
  // The least number that gives the first 51 with a chance of 95 % is 61: with 5 % of the loss as cost per survivor the ratio is 0.95.
  {
    expected: 61,
    within: 0,
    is: 'cuttings for 51 liners at 90 % where a cutting costs a twentieth of what it saves',
    computed: () => value('OVERSTICK', 51, [0.9], 0.045, 1),
    source: 'boost-negative-binomial',
    seen: 'arithmetic',
  },
  {
    expected: 576,
    within: 0,
    is: 'cuttings for 501 liners at 90 % where a cutting costs a hundredth of what it saves',
    computed: () => value('OVERSTICK', 501, [0.9], 0.009, 1),
    source: 'boost-negative-binomial',
    seen: 'arithmetic',
  },
  {
    expected: 10,
    within: 0,
    is: 'cuttings for 6 liners at 60 % where a cutting costs half of what it saves',
    computed: () => value('OVERSTICK', 6, [0.6], 0.3, 1),
    source: 'boost-negative-binomial',
    seen: 'arithmetic',
  },
  {
    expected: 1,
    within: 0,
    is: 'cuttings for one liner at 0.5 where the second would bring just its cost (an exact tie)',
    computed: () => value('OVERSTICK', 1, [0.5], 0.25, 1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'cuttings where one brings just its cost (an exact tie)',
    computed: () => value('OVERSTICK', 10, [0.5], 0.5, 1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 11,
    within: 0,
    is: 'cuttings for 10.2 liners where none is lost',
    computed: () => value('OVERSTICK', 10.2, [1], 0.1, 1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'cuttings for no liner',
    computed: () => value('OVERSTICK', 0, [0.8], 0.1, 1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 15,
    within: 0,
    is: 'geranium stock plants on the square metre that gives 30 cuttings a week at 2 a plant',
    computed: () => value('MOTHERPLANTS', 30, 2, 1),
    source: 'faust-dole-lopez',
    seen: 'copy',
  },
  {
    expected: 15,
    within: 0,
    is: 'the same for 45 a week at 3 a plant',
    computed: () => value('MOTHERPLANTS', 45, 3, 1),
    source: 'faust-dole-lopez',
    seen: 'copy',
  },
  // 1,000 / (3 x 4 x 0.8) = 104.17, and / 0.9 = 115.74: the reserve divides, and adding a tenth would give 114.58.
  {
    expected: 116,
    within: 0,
    is: 'stock plants for 1,000 cuttings at 3 in each of 4 flushes, four fifths fit, a tenth in reserve',
    computed: () => value('MOTHERPLANTS', 1000, 3, 4, 0.8, 0.1),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0,
    within: 0,
    is: 'stock plants for no cutting',
    computed: () => value('MOTHERPLANTS', 0, 3, 4),
    source: 'definition',
    seen: 'arithmetic',
  },
]

goldenTests(rows)

describe('what is refused', () => {
  test('a batch of which more was taken than stuck, named by its place in the range although a blank row stands above it', () => {
    expect(refusal('BATCHSPREAD', [10, null, 20], [5, null, 21]).sentence).toBe(
      'taken, row 3, is 21 and stuck beside it is 20; it may not be above it. Check both cells.',
    )
  })

  test('a single batch, which differs from nothing', () => {
    expect(refusal('BATCHSPREAD', [100], [80]).sentence).toContain('stuck has 1 row; it takes 2 or more')
  })

  test('batches of one cutting each, which do not show how alike the cuttings of a batch are', () => {
    expect(refusal('BATCHSPREAD', [1, 1, 1], [1, 0, 1]).sentence).toMatch(
      /^stuck is 1 in every batch, .*2 cuttings or more\.$/,
    )
  })

  test('a share typed for a count of liners', () => {
    expect(refusal('BATCHSPREAD', [100, 100], [0.8, 0.9]).sentence).toContain(
      'taken, row 1, must be a whole number; it is 0.8',
    )
  })

  test('a spread where a rate of 1 leaves none, in CUTTINGS and in OVERSTICK', () => {
    const sentence =
      'batchSpread is 0.05, and stageRates of 1 lose nothing in any batch, which leaves no spread. Leave batchSpread out, or type the rates that the batches had.'
    expect(refusal('CUTTINGS', 10, [1], 0.9, 0.05).sentence).toBe(sentence)
    expect(refusal('OVERSTICK', 10, [1], 0.1, 2, 0, 0.05).sentence).toBe(sentence)
  })

  test('a surplus that pays for itself, an exact tie too, is no answer', () => {
    expect(refusal('OVERSTICK', 10, [0.9], 0.1, 2, 0.2)).toMatchObject({
      code: '#N/A',
      sentence: expect.stringContaining('brings back 0.18 on average and costs 0.1,') as unknown,
    })
    expect(refusal('OVERSTICK', 10, [0.1], 0.03, 2, 0.3).code).toBe('#N/A')
    expect(refusal('OVERSTICK', 10, [0.9], 0, 2).code).toBe('#N/A')
  })

  test('a search that would go on beyond a million million cuttings is no answer', () => {
    expect(refusal('OVERSTICK', 10_000_000, [0.5], 1e-13, 2, 0, 0.4999)).toMatchObject({
      code: '#N/A',
      sentence: expect.stringContaining('Even beyond 1,000,000,000,000 cuttings one more would pay.') as unknown,
    })
  })
})
