/** Bench, labour, stages and prices against published figures. */
import { describe, expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { workingOf } from '../../src/derived/working'
import { cellOf, definition, goldenTests, refusal, step, table, value } from './golden'

goldenTests(
  [
    // The source divides by the square feet in use; ours takes the rate of those paid for, and the share in use.
    {
      expected: 0.64,
      within: 0.005,
      is: 'a square foot in use for a week, of a million over 40,000 square feet, 75 % in use',
      computed: () => value('BENCHCOST', 1, 1, 1_000_000 / (40_000 * 52), 0.75),
      source: 'greenhouse-grower-five-keys',
      seen: 'memory',
    },
    {
      expected: 0.018,
      within: 0,
      is: 'the bench of a cutting for 6 weeks at 0.90 a m2, 400 cuttings on it, 75 % in use',
      computed: () => value('BENCHCOST', 6, 400, 0.9, 0.75),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 0.0135,
      within: 0,
      is: 'the same with a rate that is already for the bench in use',
      computed: () => value('BENCHCOST', 6, 400, 0.9),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 0.0325,
      within: 0,
      is: 'a cutting stuck at 600 an hour, a wage of 15 and 30 % on top',
      computed: () => value('LABOURCOST', 600, 15, 0.3),
      source: 'definition',
      seen: 'arithmetic',
    },
    // Multiplying by the losses leaves 4,806.50.
    {
      expected: 4790,
      within: 0.5,
      is: 'what is left of 11,400 for 9,500 geraniums at 0.661, the 5 % unsold as a stage of their own',
      computed: () => 11_400 - 9500 * value('LINERCOST', [0.661], [0.95]),
      source: 'rutgers-geranium',
      seen: 'copy',
    },
    // The 14 firms averaged so much each. The 0.023 printed beside it is right too: the mean of their own ratios.
    {
      expected: 0.02005,
      within: 5e-6,
      is: 'the tray process for a cutting, of 2,109 hours, 26,392 of wages and 1,316,111 cuttings on average',
      computed: () => value('LABOURCOST', 1_316_111 / 2109, 26_392 / 2109),
      source: 'hortscience-53-1133',
      seen: 'arithmetic',
    },
    // 0.20 / (0.8 x 0.95) + 0.30 / 0.95
    {
      expected: 0.578947368421053,
      within: 1e-15,
      is: 'a liner of 0.20 for sticking with 80 % striking and 0.30 for potting on with 95 % living',
      computed: () => value('LINERCOST', [0.2, 0.3], [0.8, 0.95]),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 6.5,
      within: 0,
      is: 'the price of a liner of 5.00 at the margin that a markup of 30 % is, 1.50 of 6.50',
      computed: () => value('LINERPRICE', 5, 1.5 / 6.5, 0.01),
      source: 'moyer-2024',
      seen: 'copy',
    },
    {
      expected: 0.23,
      within: 0.005,
      is: 'the margin that is kept where 5.00 sells at 6.50',
      computed: () => table('QUOTE', 5, [1], [1.5 / 6.5], 0, 0.01)[0]![3] as number,
      source: 'moyer-2024',
      seen: 'copy',
    },
    {
      expected: 0.3,
      within: 1e-14,
      is: 'the markup that this margin is',
      computed: () => step('markup', 'LINERPRICE', 5, 1.5 / 6.5),
      source: 'moyer-2024',
      seen: 'copy',
    },
    {
      expected: 3.08,
      within: 0,
      is: 'the price of a liner of 2.00 at a margin of 35 %, rounded up to the cent',
      computed: () => value('LINERPRICE', 2, 0.35, 0.01),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 15,
      within: 0,
      is: 'the price of a liner of 10.00 at the margin that a markup of 50 % is, a third',
      computed: () => value('LINERPRICE', 10, 1 / 3, 0.01),
      source: 'farris-2010',
      seen: 'copy',
    },
    {
      expected: 0.5,
      within: 1e-14,
      is: 'the markup that a margin of a third is',
      computed: () => step('markup', 'LINERPRICE', 10, 1 / 3),
      source: 'farris-2010',
      seen: 'copy',
    },
    {
      expected: 0.6,
      within: 0,
      is: 'the price of 0.418 at a margin of 30 % in steps of 0.05',
      computed: () => value('LINERPRICE', 0.418, 0.3, 0.05),
      source: 'definition',
      seen: 'arithmetic',
    },
    // 0.1 + 0.2 as a cell adds them is three steps of 0.1, and no fourth through the dust.
    {
      expected: 0.3,
      within: 0,
      is: 'the price of 0.1 + 0.2 at no margin in steps of 0.1',
      computed: () => value('LINERPRICE', 0.1 + 0.2, 0, 0.1),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 0.05,
      within: 0,
      is: 'the least price in steps of 0.05, one step',
      computed: () => value('LINERPRICE', 1e-12, 0, 0.05),
      source: 'definition',
      seen: 'arithmetic',
    },
    // Level cost 10 a round of 1,000 cuttings (as in REUSECOST: 1,000, 9 rounds, 50, 5 % is 200), and 0.072 a cutting.
    {
      expected: 0.09 / 0.85,
      within: 1e-15,
      is: 'a liner in trays of 90 used 9 times, washing 4.50, 5 % topped up, 85 % saleable',
      computed: () => value('ROOTINGCOST', 90, 9, 1000, 0.85, 4.5, 0.05, 0, 0.072),
      source: 'definition',
      seen: 'arithmetic',
    },
    // A payment at the start of each year, so the end-of-year one of the annuity formula is a year's interest more; 1,000 plants of which half are sold.
    {
      expected: ((50_000 - 5000 / 1.1 ** 5) * 0.1) / (1 - 1 / 1.1 ** 5) / 500,
      within: 1e-12,
      is: 'a liner of a bed of 50,000 with a salvage of 5,000 over 5 years at 10 %, 500 sold a year',
      computed: () => value('ROOTINGCOST', 50000, 5, 1000, 0.5, 0, 0, 0, 0, 5000, 0.1) * 1.1,
      source: 'definition',
      seen: 'arithmetic',
    },
  ],
  [
    {
      printed: 1.44,
      expected: 1.43,
      within: 0,
      is: 'the price of 1.00 at a margin of 30 %, to the cent',
      computed: () => value('LINERPRICE', 1, 0.3, 0.01),
      source: 'moyer-2024',
      seen: 'copy',
    },
    {
      printed: 0.55,
      expected: 0.5556,
      within: 5e-5,
      is: 'an overhead of 0.50 a square foot and week with 10 % unsold, as the only stage',
      computed: () => value('LINERCOST', [0.5], [0.9]),
      source: 'growertalks-shrinkage',
      seen: 'copy',
    },
  ],
)

describe('a quote', () => {
  const given = [0.6, [250, 500, 1000], [0.5, 0.425, 0.4], 0, 0.05] as const

  test('names the orders below each break that cost more than the break, by arithmetic', () => {
    // 250 at 1.20, 500 at 1.05 for 525, 1,000 at 1.00 for 1,000: 438 x 1.20 = 525.60, 953 x 1.05 = 1,000.65.
    expect(table('QUOTE', ...given)).toEqual([
      [250, 1.2, 300, 0.5, 1, 0.6, '438 to 499 cost more than 500'],
      [500, 1.05, 525, expect.closeTo(0.45 / 1.05, 14), 0.75, 0.6, '953 to 999 cost more than 1000'],
      [1000, 1, 1000, 0.4, expect.closeTo(2 / 3, 14), 0.6, 'none'],
    ])
  })

  test('says in its working what the first order of the zone costs beside the break', () => {
    const working = workingOf(
      definition('QUOTE'),
      given.map((one) => (Array.isArray(one) ? [one] : one)),
    )
    const zone = 'steps' in working ? working.steps.find(({ name }) => name === 'overlap')?.value : undefined
    expect(zone).toEqual([
      'an order of 438 costs 525.60, 500 cost 525.00',
      'an order of 953 costs 1000.65, 1000 cost 1000.00',
      'none',
    ])
  })

  test('keeps the rows in the order given, whatever their size', () => {
    const turned = [0.6, [1000, 250, 500], [0.4, 0.5, 0.425], 0, 0.05]
    const [large, small, middle] = table('QUOTE', ...turned)
    expect([small, middle, large]).toEqual(table('QUOTE', ...given))
  })

  test('an order that costs just as much as the break is not yet in the zone', () => {
    // 800 x 1.25 is the 1,000 that a thousand cost.
    expect(table('QUOTE', 1, [500, 1000], [0.2, 0], 0, 0)[0]!.at(-1)).toBe('801 to 999 cost more than 1000')
  })

  test('a zone of a single order, and one that begins at the quantity itself, are said as such', () => {
    // 1 / 0.9 is 1.12 in whole cents: 9 cost 10.08 and 10 cost 10.00, while 8 cost 8.96.
    expect(table('QUOTE', 1, [1, 10, 100], [0.1, 0, 0], 0, 0.01).map((row) => row.at(-1))).toEqual([
      '9 costs more than 10',
      'none',
      'none',
    ])
    expect(table('QUOTE', 1, [90, 100], [0.5, 0]).map((row) => row.at(-1))).toEqual([
      '90 to 99 cost more than 100',
      'none',
    ])
  })

  test('of several breaks the cheapest in total counts, though it is not the next one', () => {
    // 10 at 10, 20 at 9 for 180, 30 at 5 for 150: from 16 on an order costs more than 30, from 19 on than 20.
    expect(table('QUOTE', 4.5, [10, 20, 30], [0.55, 0.5, 0.1]).map((row) => row.at(-1))).toEqual([
      '16 to 19 cost more than 30',
      '20 to 29 cost more than 30',
      'none',
    ])
  })

  test('a larger quantity that is dearer each is warned of, with the largest cheaper one', () => {
    // 100 at 1.25, 200 at 1.1111 for 222.22, 500 at 2.
    expect(table('QUOTE', 1, [100, 200, 500], [0.2, 0.1, 0.5]).map((row) => row.at(-1))).toEqual([
      '178 to 199 cost more than 200',
      'none',
      'dearer each than 200',
    ])
  })

  test('spreads the setup over the quantity and shows it in the floor price', () => {
    expect(cellOf('QUOTE', 50, 'floor price', 0.4, [50, 250], [0.5, 0.5], 25)).toBe(0.9)
    expect(cellOf('QUOTE', 250, 'floor price', 0.4, [50, 250], [0.5, 0.5], 25)).toBe(0.5)
  })

  test('a quantity given twice is refused by name', () => {
    expect(refusal('QUOTE', 1, [100, 250, 100], [0.1, 0.1, 0.1])).toMatchObject({
      code: '#VALUE!',
      sentence: 'quantities has 100 twice. Type each only once, or clear one of the two rows.',
    })
  })

  test('a blank row is skipped, and a desktop that hands blank cells over as 0 gets no rounding', () => {
    expect(call(definition('QUOTE'), [1, [[100], [''], [200]], [[0.5], [''], [0.5]], 0, 0])).toEqual(
      call(definition('QUOTE'), [1, [[100], [200]], [[0.5], [0.5]]]),
    )
  })
})

test('a cost of 0, or a blank cell, is refused before a liner is given away', () => {
  expect(refusal('LINERPRICE', 0, 0.3).sentence).toContain('costPerLiner is 0, or a blank cell')
  expect(refusal('QUOTE', 0, [100], [0.3]).sentence).toContain('costPerLiner is 0, or a blank cell')
})

test('the stages of a liner are shown one by one in the working, and add up to it', () => {
  const working = workingOf(definition('LINERCOST'), [
    [[0.2], [0.3]],
    [[0.8], [0.95]],
  ])
  const borne = 'steps' in working ? working.steps.find(({ name }) => name === 'borne')?.value : undefined
  expect(borne).toEqual([expect.closeTo(0.2 / 0.76, 14), expect.closeTo(0.3 / 0.95, 14)])
})
