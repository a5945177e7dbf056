/** Buying and stock against published values, and the splitting of money. */
import { describe, expect, test } from 'vitest'
import { Decimal } from '../../src/core/quantity/decimal'
import { splitByWeights } from '../../src/core/quantity/splitting'
import { workingOf } from '../../src/derived/working'
import { cellOf, definition, goldenTests, refusal, table, value, type GoldenRow } from './golden'

const year1958 = {
  needs: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
  setUp: [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114],
}

/** The all-units tiers of the exercise, each as a row that says from which number on it holds. */
const tiers = [53, 51.5, 49.5, 48, 47]
const tierFrom = [1, 50, 100, 200, 500]

/** A year's 800 in orders of one size: goods, 60 an order, and 30 % of the goods' value on half an order. */
function yearlyCost(size: number): number {
  const highest = tierFrom.filter((from) => from <= size).length - 1
  const goods = cellOf(
    'BUYPLAN',
    'total',
    'cost',
    size,
    ['unit'],
    [1],
    [tiers[Math.max(0, highest - 1)]!],
    [tierFrom[highest]!],
    [tiers[highest]!],
  )
  return (goods * 800) / size + (60 * 800) / size + (0.3 * (goods / size) * size) / 2
}

goldenTests([
  {
    expected: 40_080,
    within: 1e-9,
    is: 'a year of 800 in orders of 200 at the break price of 48',
    computed: () => yearlyCost(200),
    source: 'all-units-discount',
    seen: 'copy',
  },
  {
    expected: 200,
    within: 0,
    is: 'the cheapest size of order among the breaks',
    computed: () => [50, 100, 200, 500].reduce((best, size) => (yearlyCost(size) < yearlyCost(best) ? size : best)),
    source: 'all-units-discount',
    seen: 'copy',
  },
  {
    expected: 864,
    within: 0,
    is: 'the least cost of the twelve months',
    computed: () => cellOf('STOCKPLAN', 'total', 'cost', year1958.needs, year1958.setUp, 1),
    source: 'wagner-whitin-1958',
    seen: 'copy',
  },
  {
    expected: 110,
    within: 0,
    is: 'the least cost of four periods',
    computed: () => cellOf('STOCKPLAN', 'total', 'cost', [10, 20, 30, 40], 30, 1),
    source: 'inventory-analytics',
    seen: 'copy',
  },
  {
    expected: 16,
    within: 0,
    is: 'bales of 3 ft3 that open to twice as much, for 3.5 yd3',
    computed: () => value('BAGS', '3.5 yd3', '3 ft3', 2),
    source: 'keith-peat-bales',
    seen: 'copy',
  },
  {
    expected: 131.78,
    within: 0.005,
    is: 'the 33 ft3 of 22 bags of 1.5 ft3 at 5.99, by the price of a litre',
    computed: () => value('PACKPRICE', 5.99, '1.5 ft3') * value('UNITS', 33, 'ft3', 'L'),
    source: 'woods-end-compost',
    seen: 'copy',
  },
  // Pressed litres are no loose ones: opened to twice as much, a litre costs half; delivery and waste by arithmetic.
  {
    expected: 0.2,
    within: 0,
    is: 'a litre of a pressed bale of 60 L at 21.00 with 1.80 to bring it, opened to twice as much, 5 % wasted',
    computed: () => value('PACKPRICE', 21, 60, 2, 1.8, 0.05),
    source: 'definition',
    seen: 'arithmetic',
  },
  ...(
    [
      ['0.05', [70, 30], [0.04, 0.01]],
      ['8', [1, 1, 1], [2.67, 2.67, 2.66]],
    ] as const
  ).flatMap(([amount, weights, parts]) =>
    parts.map((expected, place): GoldenRow => ({
      expected,
      within: 0,
      is: `part ${place + 1} of ${amount} split by ${weights.join(', ')}`,
      computed: () => Number(split(amount, ...weights)[place]),
      source: 'moneyphp-allocation',
      seen: 'copy',
    })),
  ),
])

function split(amount: string, ...weights: number[]): readonly string[] {
  return splitByWeights(
    new Decimal(amount),
    weights.map((weight) => new Decimal(weight)),
  ).map(String)
}

describe('splitting money', () => {
  test('the cents that are left go to the largest remainders', () =>
    expect(split('1', 1, 5, 1)).toEqual(['0.14', '0.72', '0.14']))
  test('a weight of 0 gets nothing', () => expect(split('0.01', 0, 1)).toEqual(['0', '0.01']))
  test('an amount finer than a cent is split in its own last decimal', () =>
    expect(split('0.005', 1, 1)).toEqual(['0.003', '0.002']))
})

describe('BUYPLAN', () => {
  const names = ['A', 'B']

  test('a need of 0 buys nothing', () =>
    expect(table('BUYPLAN', 0, names, [60, 70], [9, 10])).toEqual([['total', 0, 0, 0, 0]]))
  test('a blank in available is no limit, and a break, supplier or delivery may be blank', () => {
    expect(
      table('BUYPLAN', 600, names, [60, 70], [9, 20], ['', 5], ['', 19], ['', 3], ['', 1], ['', 'X'], ['', 4]),
    ).toEqual([
      ['A', 10, 600, 90, 0],
      ['total', 10, 600, 90, 0],
    ])
  })
  test('a 0 in available is refused, since some hosts hand a blank over as 0', () => {
    expect(refusal('BUYPLAN', 600, names, [60, 70], [9, 20], null, null, [0, 3]).sentence).toMatch(
      /^available, row 1, is 0, or a blank cell/,
    )
  })
  test('a break quantity without a price, and the reverse, are refused with the row of the sheet', () => {
    expect(refusal('BUYPLAN', 600, ['A', '', 'B'], [60, '', 70], [9, '', 20], ['', '', 5], [8, '', 7]).sentence).toBe(
      'breakPrices, row 1, has a value, and breakQuantities beside it is blank or 0. Type both, or clear both.',
    )
    expect(refusal('BUYPLAN', 600, ['A', '', 'B'], [60, '', 70], [9, '', 20], ['', '', 5]).sentence).toBe(
      'breakQuantities, row 3, has a value, and breakPrices beside it is blank or 0. Type both, or clear both.',
    )
  })
  test('a 0 in both columns of a break, as some hosts hand blanks over, is no break', () => {
    expect(table('BUYPLAN', 600, ['A', 'B'], [60, 70], [9, 11], [5, 0], [8, 0])).toEqual(
      table('BUYPLAN', 600, ['A', 'B'], [60, 70], [9, 11], [5, ''], [8, '']),
    )
  })

  test('a price of 0, as some hosts hand a blank over, is refused with its row: no bag is free', () => {
    expect(refusal('BUYPLAN', 600, ['A', 'B'], [60, 70], [9, 0]).sentence).toMatch(
      /^packPrices, row 2, is 0, or a blank cell; it must be above 0\. /,
    )
  })

  test('a break price of 0, as some hosts hand a blank over, and one above the price are refused: nothing is bought for free or by a slip', () => {
    expect(refusal('BUYPLAN', 600, names, [60, 70], [9, 20], [5, 5], [8, 0]).sentence).toBe(
      'breakQuantities, row 2, has a value, and breakPrices beside it is blank or 0. Type both, or clear both.',
    )
    expect(refusal('BUYPLAN', 600, ['A', '', 'B'], [60, '', 70], [9, '', 20], ['', '', 5], ['', '', 21]).sentence).toBe(
      'breakPrices, row 3, is 21 and packPrices beside it is 20; it may not be above it. Check both cells.',
    )
    expect(cellOf('BUYPLAN', 'total', 'cost', 600, names, [60, 70], [9, 20], [5, 5], [9, 20])).toBe(90)
  })
  test('two deliveries of one supplier are refused, however its name is typed', () => {
    const { sentence } = refusal(
      'BUYPLAN',
      600,
      names,
      [60, 70],
      [9, 20],
      null,
      null,
      null,
      null,
      ['North', ' north '],
      [25, 30],
    )
    expect(sentence).toBe(
      'deliveryPerOrder, row 2, is 30, and another row of the same supplier has 25. An order has one delivery: type the same in both rows, or clear one of them.',
    )
  })
  test('a row that names no delivery takes that of its supplier', () => {
    expect(
      cellOf(
        'BUYPLAN',
        'total',
        'cost',
        60,
        names,
        [60, 70],
        [9, 20],
        null,
        null,
        null,
        null,
        ['North', 'north'],
        ['', 25],
      ),
    ).toBe(34)
  })
  test('a supplier is left out where its delivery outweighs its better price', () => {
    expect(table('BUYPLAN', 600, names, [60, 60], [10, 9], null, null, null, null, ['X', 'Y'], [5, 15.01])).toEqual([
      ['A', 10, 600, 105, 0],
      ['total', 10, 600, 105, 0],
    ])
    expect(table('BUYPLAN', 600, names, [60, 60], [10, 9], null, null, null, null, ['X', 'Y'], [5, 14.99])).toEqual([
      ['B', 10, 600, 104.99, 0],
      ['total', 10, 600, 104.99, 0],
    ])
  })
  test('binary dust in a sum of needs buys no bag, and a millilitre does', () => {
    const sum = Array<number>(36)
      .fill(23.7)
      .reduce((total, one) => total + one)
    expect(cellOf('BUYPLAN', 'total', 'bags', sum, ['A'], [853.2], [10])).toBe(1)
    expect(cellOf('BUYPLAN', 'total', 'bags', 853.201, ['A'], [853.2], [10])).toBe(2)
  })
  test('units that are no whole millilitres buy no load too many: 2 yd3 are two loads of 1 yd3', () => {
    expect(table('BUYPLAN', '2 yd3', ['Load'], ['1 yd3'], [40])).toEqual([
      ['Load', 2, 1529.109715968, 80, 0],
      ['total', 2, 1529.109715968, 80, 0],
    ])
    expect(table('BUYPLAN', '24 ft3', ['Bag'], ['3 ft3'], [40])[0]).toEqual(['Bag', 8, 679.604318208, 320, 0])
    expect(cellOf('BUYPLAN', 'total', 'bags', '1 US bushel', ['A'], ['1 US bushel'], [10])).toBe(1)
    expect(table('BUYPLAN', 0, ['Load'], ['1 yd3'], [40])).toEqual([['total', 0, 0, 0, 0]])
  })
  test('a pack that was divided in another cell covers as in BAGS, and leaves no dust over', () => {
    expect(table('BUYPLAN', 100, ['A'], [100 / 3], [40])).toEqual([
      ['A', 3, 99.9999999999999, 120, 0],
      ['total', 3, 99.9999999999999, 120, 0],
    ])
    expect(cellOf('BUYPLAN', 'total', 'bags', 100.00001, ['A'], [100 / 3], [40])).toBe(4)
  })
  test('a price with four decimals is added exactly', () =>
    expect(cellOf('BUYPLAN', 'total', 'cost', 3000, ['A'], [1], [0.0123])).toBe(36.9))
  test('a price whose sums are no longer exact is refused', () => {
    expect(refusal('BUYPLAN', 100_000, ['A'], [10], [3.33333333333333]).sentence).toMatch(
      /^packPrices has so many digits, or is so large, that the sums are no longer exact\. Round/,
    )
    expect(refusal('BUYPLAN', '1e14 L', ['A'], [10], [3]).sentence).toMatch(/^neededL has so many digits/)
  })
  test('a need beyond all that is available has no answer', () => {
    expect(refusal('BUYPLAN', 1000, names, [60, 70], [9, 20], null, null, [4, 5], [3, 2])).toEqual({
      kind: 'error',
      code: '#N/A',
      sentence:
        'All that is available gives 460 L, and 1000 L are needed. Raise available, add a pack, or lower the need.',
    })
  })
  test('the working says how far the next break is, what delivery costs, and the best different plan', () => {
    const steps = (...given: unknown[]) => {
      const working = workingOf(
        definition('BUYPLAN'),
        given.map((one) => (Array.isArray(one) ? one.map((cell: unknown) => [cell]) : one)),
      )
      if (!('steps' in working)) throw new Error(JSON.stringify(working))
      return working.steps.map(({ name, formula, value }) => [name, formula, value])
    }
    expect(steps(198, ['A'], [1], [49.5], [200], [48], null, null, ['North'], [12.5])).toEqual([
      ['A', '200 * 48', 9600],
      ['A: break', 'from 200 bags at 48', '2 more bags reach the break and save 201.00'],
      ['delivery from North', '12.5 for A', 12.5],
      ['runnerUp', '201 A', 9660.5],
      ['litres', 'sum of the rows', 200],
      ['leftover', 'litres - neededL', 2],
      ['cost', 'goods + deliveries, every order weighed', 9612.5],
    ])
    expect(steps(190, ['A'], [1], [49.5], [200], [48])).toContainEqual([
      'A: break',
      'from 200 bags at 48',
      '10 more bags reach the break and cost 195.00 more',
    ])
    expect(steps(190, ['A'], [1], [49.5], [200], [48], [195])).toContainEqual([
      'A: break',
      'from 200 bags at 48',
      'the break cannot be reached with what is available',
    ])
    expect(steps(250, ['A'], [1], [49.5], [200], [48], [250])).toContainEqual([
      'A: break',
      'from 200 bags at 48',
      'the need reaches the break',
    ])
    expect(steps(250, ['A'], [1], [49.5], [200], [48], [250])).toContainEqual(['runnerUp', 'there is no other', 'none'])
  })
})

describe('STOCKPLAN', () => {
  test('the orders of the twelve months cover every need, and cost 864 added up month by month', () => {
    const orders = table('STOCKPLAN', year1958.needs, year1958.setUp, 1)
      .slice(0, -1)
      .map((row) => Number(row[1]))
    let [stock, cost] = [0, 0]
    orders.forEach((order, month) => {
      stock += order - year1958.needs[month]!
      expect(stock).toBeGreaterThanOrEqual(0)
      cost += stock + (order > 0 ? year1958.setUp[month]! : 0)
    })
    expect(cost).toBe(864)
  })
  test('stock at hand is used up first, and holding it costs', () => {
    expect(table('STOCKPLAN', [10, 10, 10], 5, 0.5, 2, 15)).toEqual([
      [1, 0, 5, 2.5],
      [2, 15, 10, 40],
      [3, 0, 0, 0],
      ['total', 15, 15, 42.5],
    ])
    expect(table('STOCKPLAN', [10, 10], 5, 0.5, 2, 100)).toEqual([
      [1, 0, 90, 45],
      [2, 0, 80, 40],
      ['total', 0, 170, 85],
    ])
  })
  test('a tie goes to fewer orders, then to the later order', () => {
    expect(table('STOCKPLAN', [10, 10], 5, 0.5)).toEqual([
      [1, 20, 10, 10],
      [2, 0, 0, 0],
      ['total', 20, 10, 10],
    ])
    expect(table('STOCKPLAN', [0, 10], 5, 0)).toEqual([
      [1, 0, 0, 0],
      [2, 10, 0, 5],
      ['total', 10, 0, 5],
    ])
    expect(
      table('STOCKPLAN', [10, 10, 10], 10, 1)
        .slice(0, 3)
        .map((row) => row[1]),
    ).toEqual([20, 0, 10])
  })
  test('fractional needs are ordered exactly', () =>
    expect(cellOf('STOCKPLAN', 'total', 'order', [0.1, 0.2, 0.3], 1, 0.01)).toBe(0.6))
  test('a price that is blank for one period alone is refused: its goods are not free', () => {
    expect(refusal('STOCKPLAN', [10, 20, 30], 30, 1, [2, '', 3]).sentence).toMatch(
      /^unitPrices, row 2, is blank, while other ranges have a value there\./,
    )
    expect(table('STOCKPLAN', [10, 20, '', 30], 30, 1, ['', '', '', ''])).toEqual(
      table('STOCKPLAN', [10, 20, 30], 30, 1),
    )
    expect(table('STOCKPLAN', [10, '', 20], 30, 1, [2, '', 3])).toEqual(table('STOCKPLAN', [10, 20], 30, 1, [2, 3]))
  })
  test('more periods than a plan may have are refused', () => {
    expect(refusal('STOCKPLAN', Array<number>(1001).fill(1), 1, 1).sentence).toBe(
      'needsPerPeriod has 1001 rows; it takes at most 1000. Point it at a shorter range.',
    )
  })
})
