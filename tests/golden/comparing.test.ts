import { describe, expect, test } from 'vitest'
import { workingOf } from '../../src/derived/working'
import { cellOf, definition, goldenTests, refusal, table, value } from './golden'

/** A yearly interest that makes each of twelve rounds count `rate` more. */
const yearly = (rate: number) => (1 + rate) ** 12 - 1

const price = (...args: readonly number[]) => cellOf('VARIANCE', 'price', 'amount', ...args)
const usage = (...args: readonly number[]) => cellOf('VARIANCE', 'usage', 'amount', ...args)
const total = (...args: readonly number[]) => cellOf('VARIANCE', 'total', 'amount', ...args)

goldenTests([
  {
    expected: 12,
    within: 0,
    is: 'the price variance of 24 at 4.50 where 20 at 4 are the standard',
    computed: () => price(20, 4, 24, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: 16,
    within: 0,
    is: 'the usage variance of the same',
    computed: () => usage(20, 4, 24, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: 28,
    within: 0,
    is: 'the cost variance of the same',
    computed: () => total(20, 4, 24, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: -1100,
    within: 0,
    is: 'the price variance, 1,100 favourable, of 2,200 kg at 4.50 where 2,000 kg at 5 are the standard',
    computed: () => price(2000, 5, 2200, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: -100,
    within: 0,
    is: 'the cost variance, 100 favourable, of the same',
    computed: () => total(2000, 5, 2200, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: 1000,
    within: 0,
    is: 'the usage variance of the same',
    computed: () => usage(2000, 5, 2200, 4.5),
    source: 'lpu-management-accounting',
    seen: 'copy',
  },
  {
    expected: 200,
    within: 0,
    is: 'the level cost in round 9 of the ledger of 1,000, washing 50, 5 % topped up',
    computed: () => cellOf('REUSELEDGER', 9, 'level cost if stopped here', 1000, 12, 50, 0.05),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 113.4361438313,
    within: 5e-11,
    is: 'the last row of the ledger of the loan PMT(5%;12;1000;100;1)',
    computed: () => cellOf('REUSELEDGER', 12, 'level cost if stopped here', 1000, 12, 0, 0, 0, -100, 0.05),
    source: 'openformula',
    seen: 'copy',
  },
  {
    expected: 1854.0247200054619,
    within: 1e-9,
    is: 'the last row of the ledger of pmt(0.075/12, 180, 200000)',
    computed: () =>
      cellOf('REUSELEDGER', 180, 'level cost if stopped here', 200000, 180, 0, 0, 0, 0, yearly(0.075 / 12), 12) *
      (1 + 0.075 / 12),
    source: 'numpy-financial',
    seen: 'copy',
  },
  {
    expected: 875,
    within: 0,
    is: 'the level cost beside a single use of a way that costs 4,000, lasts 4 rounds and is sold for 500 (SLN)',
    computed: () =>
      cellOf(
        'COMPARE',
        'Bed',
        'level cost per round',
        ['Bed', 'Block'],
        [4000, 10],
        [4, 1],
        [1, 1],
        [1, 1],
        null,
        null,
        null,
        null,
        [500, null],
      ),
    source: 'openformula',
    seen: 'copy',
  },
])

describe('VARIANCE', () => {
  const reads = (...args: readonly number[]) => table('VARIANCE', ...args).map(([, , reading]) => reading)

  test('spending more than the standard reads as adverse and spending less as favourable', () => {
    expect(reads(100, 2, 110, 1.5)).toEqual(['favourable', 'adverse', 'favourable'])
    expect(reads(100, 2, 90, 3)).toEqual(['adverse', 'favourable', 'adverse'])
  })

  test('where price and usage cancel, the total is 0 and reads as none', () => {
    // 0.1 x 3 and 0.3 x 1 differ in binary.
    expect(table('VARIANCE', 1, 0.3, 3, 0.1)).toEqual([
      ['price', -0.6, 'favourable'],
      ['usage', 0.6, 'adverse'],
      ['total', 0, 'none'],
    ])
    expect(reads(5, 2, 5, 2)).toEqual(['none', 'none', 'none'])
  })

  test('what one is paid to take has a negative price, and taking more of it is favourable', () => {
    expect(table('VARIANCE', 10, -2, 12, -2)).toEqual([
      ['price', 0, 'none'],
      ['usage', -4, 'favourable'],
      ['total', -4, 'favourable'],
    ])
  })
})

describe('REUSELEDGER', () => {
  test('outlay is paid for the units then in use and undiscounted, and the end value is in the level cost alone', () => {
    // At 25 % a round and a quarter lost, the next round counts 0.75 / 1.25 = 0.6 today. Upkeep is 1 + 0.1 x 10 = 2.
    const rows = table('REUSELEDGER', 10, 3, 1, 0.1, 0.25, 5, 0.25)
    expect(rows.map((row) => row.slice(0, 5))).toEqual([
      [1, 1, 10, 10, 10],
      [2, 0.75, 1.5, 1.2, 11.2],
      [3, 0.5625, 1.125, 0.72, 11.92],
    ])
    expect(rows[0]![5]).toBe(10 - 5 * 0.6)
    expect(rows[1]![5]).toBeCloseTo((11.2 - 5 * 0.36) / 1.6, 12)
    expect(rows[2]![5]).toBeCloseTo((11.92 - 5 * 0.216) / 1.96, 12)
  })

  test('refuses more rounds than a table lists, and says how many it lists', () => {
    expect(refusal('REUSELEDGER', 10, 1001).sentence).toMatch(/^rounds must be at most 1000; it is 1001\./)
    expect(table('REUSELEDGER', 10, 1000)).toHaveLength(1000)
  })
})

describe('BREAKEVEN', () => {
  const sentenceFor = (...args: readonly number[]) => refusal('BREAKEVEN', ...args).sentence

  test('where reuse never pays, it names what makes reuse dear and advises to lower only what was given', () => {
    expect(sentenceFor(0.45, 2.4, 0.12, 0, 0.2)).toMatch(
      /however often, washing and loss keep it at 0\.576 .* Lower washCost or lossShare, or stay with single use\.$/,
    )
    expect(sentenceFor(0.45, 2.4, 0.5)).toMatch(/washing keeps it at 0\.5 a round or more.* Lower washCost, or stay/)
    expect(sentenceFor(0.1, 2.4, 0.1, 0.1, 0.1)).toMatch(
      /washing, topping up and loss keep it .* Lower washCost, topUpShare or lossShare, or stay/,
    )
  })

  test('where interest alone makes reuse dear, it advises to lower the first cost', () => {
    // At 25 % a round the interest on 10 is 10 - 10 / 1.25 = 2 at the start of each round.
    expect(sentenceFor(1, 10, 0, 0, 0, 0, 0.25)).toMatch(
      /interest keeps it at 2 a round or more.* Lower firstCost, or stay/,
    )
  })

  test('where washing costs more than a new one, the least that reuse costs is the first round alone', () => {
    expect(sentenceFor(0.5, 1, 5)).toContain('washing keeps it at 1 a round or more, and single use costs 0.5')
  })

  test('where single use costs exactly what reuse only comes near to, it says that reuse stays above', () => {
    expect(sentenceFor(0.12, 2.4, 0.12)).toContain('washing keeps it above 0.12 a round, and single use costs 0.12')
    expect(sentenceFor(0, 2.4)).toContain('the first cost keeps it above 0 a round, and single use costs 0')
  })
})

describe('COMPARE', () => {
  const one = (...args: readonly unknown[]) => table('COMPARE', ...args)

  test('cash before the first sale is the whole first round: the unit and the other costs of all its cuttings', () => {
    expect(
      cellOf(
        'COMPARE',
        'Tray',
        'cash before the first sale',
        ['Tray'],
        [15],
        [6],
        [50],
        [0.75],
        [1.5],
        [0.1],
        [0.05],
        [0.06],
        [3],
      ),
    ).toBe(18)
  })

  test('the working has a line for every column of the table, so that each can be recomputed', () => {
    const ways: readonly (readonly unknown[])[] = [
      ['Plug', 'Tray'],
      [8, 15],
      [1, 6],
      [100, 50],
      [0.8, 0.75],
      [0, 1.5],
      [0, 0],
      [0, 0],
      [0.04, 0.0285],
    ]
    const working = workingOf(
      definition('COMPARE'),
      ways.map((range) => range.map((cell) => [cell])),
    )
    if (!('steps' in working)) throw new Error(JSON.stringify(working))
    const columns = ['levelCost', 'perCutting', 'perLiner', 'cashBefore', 'beatsFrom'].map(
      (wanted) => working.steps.find(({ name }) => name === wanted)?.value,
    )
    expect(columns).toEqual([
      [8, 3.75],
      [0.12, 0.1035],
      [0.15, 0.138],
      [12, 16.425],
      ['single use', 5],
    ])
  })

  test('without a way of 1 round there is no single use to beat, and the table says so', () => {
    expect(one(['Tray', 'Bed'], [15, 90], [6, 3], [50, 300], [0.75, 0.75]).map((row) => row[5])).toEqual([
      'no single use to beat',
      'no single use to beat',
    ])
  })

  test('a reusable is measured against the cheapest single use only', () => {
    // 10.50 over 7 rounds is 1.50 a round: an exact tie with the cheaper single use in round 7, reached in round 5 with the dearer.
    const ways = (singles: readonly number[]) =>
      one(
        ['Tray', ...singles.map((_, index) => `Plug ${index}`)],
        [10.5, ...singles],
        [9, ...singles.map(() => 1)],
        [1, ...singles.map(() => 1)],
        [1, ...singles.map(() => 1)],
      )
    const beats = (singles: readonly number[]) => ways(singles).find(([name]) => name === 'Tray')?.[5]
    expect(beats([1.5, 2.1])).toBe(7)
    expect(beats([2.1])).toBe(5)
    expect(beats([1.5])).toBe(value('BREAKEVEN', 1.5, 10.5))
  })

  test('reuse that is dearer than single use in each of its own rounds says so with their number', () => {
    expect(one(['Tray', 'Plug'], [10.5, 1.5], [6, 1], [1, 1], [1, 1])).toEqual([
      ['Plug', 1.5, 1.5, 1.5, 1.5, 'single use'],
      ['Tray', 1.75, 1.75, 1.75, 10.5, 'not in 6 rounds'],
    ])
  })

  test('equal costs keep the given order, also where their quotients differ in the last digit that is computed', () => {
    // 1 / 7 / 0.3, 1 / 3 / 0.7 and 1 / 2.1 are one cost.
    const names = (order: readonly number[]) => {
      const pick = <T>(values: readonly T[]) => order.map((at) => values[at])
      return one(pick(['a', 'b', 'c']), pick([1, 1, 1]), pick([1, 1, 1]), pick([7, 3, 2.1]), pick([0.3, 0.7, 1]))
        .map(([name]) => name)
        .join('')
    }
    expect(
      [
        [0, 1, 2],
        [2, 1, 0],
        [1, 0, 2],
        [2, 0, 1],
      ].map(names),
    ).toEqual(['abc', 'cba', 'bac', 'cab'])
  })
})
