/** The workings of the functions that are no steps, line by line. The numbers follow from the rule beside each line. */
import { describe, expect, test } from 'vitest'
import { quantileOf } from '../../src/core/method/triangular'
import { randomNumbers } from '../../src/core/method/randomNumbers'
import { workingOf } from '../../src/derived/working'
import { definition, refusal, table, value } from '../golden/golden'

type Shown = number | string | readonly (number | string)[]

function working(id: string, ...given: readonly unknown[]) {
  const steps = workingOf(
    definition(id),
    given.map((one) => (Array.isArray(one) ? one.map((cell: unknown) => [cell]) : one)),
  )
  if (!('steps' in steps)) throw new Error(JSON.stringify(steps))
  return steps.steps
}

/** Names and values; numbers to twelve digits, since chances are computed in doubles. */
function lines(id: string, ...given: readonly unknown[]): Readonly<Record<string, Shown>> {
  const shown = (one: number | string) => (typeof one === 'number' ? Number(one.toPrecision(12)) : one)
  return Object.fromEntries(
    working(id, ...given).map(({ name, value: found }) => [
      name,
      Array.isArray(found) ? (found as readonly (number | string)[]).map(shown) : shown(found as number | string),
    ]),
  )
}

describe('CUTTINGS and OVERSTICK', () => {
  test('where nothing is lost, or nothing needed, the need is stuck and surely enough', () => {
    expect(lines('CUTTINGS', 9.5, [1], 0.9)).toEqual({ rate: 1, onAverage: 10, cuttings: 10, chance: 1 })
    expect(lines('CUTTINGS', 0, [0.8], 0.9)).toEqual({ rate: 0.8, onAverage: 0, cuttings: 0, chance: 1 })
    expect(lines('CUTTINGS', 1, [0.5])).toEqual({ rate: 0.5, onAverage: 2 })
    expect(lines('CUTTINGS', 1, [0.5], 0.7)).toEqual({ rate: 0.5, onAverage: 2, cuttings: 2, chance: 0.75 })
  })

  test('the working shows what is left with the number, with one fewer and with one more', () => {
    expect(lines('OVERSTICK', 1, [0.5], 0.25, 1)).toEqual({
      rate: 0.5,
      under: 0.25,
      over: 0.25,
      ratio: 0.5,
      cuttings: 1,
      chance: 0.5,
      short: 0.5,
      surplus: 0,
      profit: 0.25,
      profitOneFewer: 0,
      profitOneMore: 0.25,
    })
    expect(lines('OVERSTICK', 10, [1], 0.1, 1)).toEqual({
      rate: 1,
      under: 0.9,
      over: 0.1,
      ratio: 0.9,
      cuttings: 10,
      chance: 1,
      short: 0,
      surplus: 0,
      profit: 9,
      profitOneFewer: 8.1,
      profitOneMore: 8.9,
    })
    expect(lines('OVERSTICK', 10, [1], 0.1, 1, 0.04)).toMatchObject({ cuttings: 10, profitOneMore: 8.94 })
  })

  test('where no cutting pays there is none, and none fewer', () => {
    expect(lines('OVERSTICK', 10, [0.5], 0.6, 1)).toEqual({
      rate: 0.5,
      under: -0.1,
      over: 0.6,
      ratio: 0,
      cuttings: 0,
      chance: 0,
      short: 10,
      surplus: 0,
      profit: 0,
      profitOneMore: -0.1,
    })
    expect(lines('OVERSTICK', 10, [1], 1, 1)).toMatchObject({
      cuttings: 0,
      chance: 0,
      short: 10,
      surplus: 0,
      profit: 0,
      profitOneMore: 0,
    })
    expect(lines('OVERSTICK', 0, [0.8], 0.1, 1, 0.05)).toMatchObject({
      cuttings: 0,
      chance: 1,
      short: 0,
      surplus: 0,
      profit: 0,
      profitOneMore: -0.06,
    })
    expect(lines('OVERSTICK', 0, [1], 0.1, 1, 0.05)).toMatchObject({
      cuttings: 0,
      chance: 1,
      short: 0,
      surplus: 0,
      profitOneMore: -0.05,
    })
  })

  test('a spread as large as the rate allows is refused, and more liners than a search can take', () => {
    expect(refusal('CUTTINGS', 10, [0.5], 0.9, 0.5).sentence).toContain('batchSpread')
    expect(value('CUTTINGS', 10, [0.5], 0.9, 0.3)).toBeGreaterThan(20)
    expect(refusal('CUTTINGS', 10_000_001, [0.5], 0.9).sentence).toContain('liners must be at most 10000000')
    expect(value('CUTTINGS', 10_000_000, [0.5], 0.5)).toBeGreaterThan(19_999_000)
  })
})

describe('ODDS and SWINGS', () => {
  const cost = ['PERLINER', ['costPerCutting', 'stageRates'], [0.1, 0.5], [0.2, 0.8], [0.4, 1]] as const

  test('the first draw can be followed by hand', () => {
    const random = randomNumbers(7)
    const first = [
      quantileOf({ low: 0.1, likely: 0.2, high: 0.4 }, random()),
      quantileOf({ low: 0.5, likely: 0.8, high: 1 }, random()),
    ]
    const found = working('ODDS', ...cost, 100, 7)
    expect(found.map(({ name }) => name)).toEqual([
      'arguments',
      'firstDraw',
      'allLikely',
      'withoutAnswer',
      'mean',
      'percentiles',
    ])
    expect(found[0]!.value).toEqual(['costPerCutting', 'stageRates'])
    expect(found[1]!.value).toEqual(first)
    expect(found[5]!.text).toContain(
      'results below which 0, 1, 5, 10, 25, 50, 75, 90, 95, 99, 100 % of these draws lie',
    )
    const rows = table('ODDS', ...cost, 100, 7)
    expect([found[2]!.value, found[3]!.value, found[4]!.value, found[5]!.value]).toEqual([
      0.25,
      0,
      rows[11]![1],
      rows.slice(0, 11).map((row) => row[1]),
    ])
  })

  test('an argument that would be the same as another one keeps the value that it is given', () => {
    const cell = [
      'CELLVOLUME',
      ['topLengthMm', 'topWidthMm', 'depthMm', 'bottomLengthMm'],
      [40, 40, 50, 20],
      [40, 40, 50, 20],
      [40, 40, 50, 20],
      100,
      1,
    ] as const
    for (const [, result] of table('ODDS', ...cell).slice(0, -1))
      expect(result).toBeCloseTo(value('CELLVOLUME', 40, 40, 50, 20), 9)
    const straight = [
      'CELLVOLUME',
      ['topLengthMm', 'topWidthMm', 'depthMm'],
      [30, 40, 50],
      [40, 40, 50],
      [50, 40, 50],
      100,
      1,
    ] as const
    expect(table('ODDS', ...straight)[10]![1]).toBeGreaterThan(value('CELLVOLUME', 40, 40, 50))
  })

  test('whole arguments stay whole, and every draw counts', () => {
    const rows = table('ODDS', 'REUSECOST', ['firstCost', 'rounds'], [12, 1], [12, 2], [12, 3], 200, 1)
    expect(rows[0]![1]).toBe(4)
    expect(rows[10]![1]).toBe(12)
    expect(rows.at(-1)).toEqual(['draws without answer', 0])
  })

  test('the swings are told with both ends, widest first', () => {
    const found = lines('SWINGS', 'MEDIUMCOST', ['cuttingVolumeMl', 'costPerLitre'], [50, 0.1], [65, 0.15], [80, 0.2])
    expect(found).toEqual({
      allLikely: 0.00975,
      arguments: ['costPerLitre', 'cuttingVolumeMl'],
      atLow: [0.0065, 0.0075],
      atHigh: [0.013, 0.012],
      swing: [0.0065, 0.0045],
    })
  })

  test('STICK. is taken off the start of a name alone', () => {
    expect(
      refusal('SWINGS', 'XSTICK.PERLINER', ['costPerCutting', 'stageRates'], [1, 1], [1, 1], [1, 1]).sentence,
    ).toContain('"XSTICK.PERLINER"')
  })
})

describe('reuse, prices and timing', () => {
  test('the round before the break-even is shown where there is one', () => {
    expect(lines('BREAKEVEN', 5, 3)).toEqual({ allowed: 5, level: 3, rounds: 1 })
    expect(lines('BREAKEVEN', 0.45, 2.4, 0.12)).toEqual({
      allowed: 0.45,
      levelBefore: 0.5,
      level: 0.445714285714,
      rounds: 7,
    })
  })

  test('ways without a single use say so', () => {
    expect(lines('COMPARE', ['Tray', 'Bed'], [10, 20], [2, 2], [10, 10], [0.5, 0.8])).toMatchObject({
      levelCost: [5, 10],
      perCutting: [0.5, 1],
      perLiner: [1, 1.25],
      singleUse: 'no way with 1 round is given',
      order: ['Tray', 'Bed'],
    })
    expect(lines('COMPARE', ['Tray', 'Plug'], [10, 2], [2, 1], [10, 10], [0.5, 0.8])).toMatchObject({
      singleUse: 0.25,
      order: ['Plug', 'Tray'],
    })
  })

  test('a quote shows the floor price, the price and the total of each quantity', () => {
    const found = Object.values(lines('QUOTE', 0.6, [500, 1000], [0.425, 0.4], 0, 0.05))
    for (const column of [
      [0.6, 0.6],
      [1.05, 1],
      [525, 1000],
    ])
      expect(found).toContainEqual(column)
  })

  test('the orders of a plan are counted, and what they cost', () => {
    expect(lines('STOCKPLAN', [10, 20, 30, 40], 30, 1)).toEqual({
      short: 100,
      orders: 3,
      ordering: 90,
      goods: 0,
      holding: 20,
      cost: 110,
    })
    expect(lines('STOCKPLAN', [10, 10], 5, 0.5, 2, 15)).toMatchObject({ short: 5, orders: 1, ordering: 5, goods: 10 })
  })

  test('nothing to buy has no runner-up, and each delivery is told with its supplier where it has one', () => {
    expect(Object.keys(lines('BUYPLAN', 0, ['A'], [60], [9], null, null, null, null, ['North'], [5]))).toEqual([
      'litres',
      'leftover',
      'cost',
    ])
    expect(lines('BUYPLAN', 100, ['A', 'B'], [60, 70], [9, 30], null, null, null, null, null, [5, 5])).toEqual({
      A: 18,
      delivery: 5,
      runnerUp: 32,
      litres: 120,
      leftover: 20,
      cost: 23,
    })
    expect(
      lines('BUYPLAN', 100, ['A', 'B'], [60, 100], [9, 30], null, null, [1, 1], null, ['North', 'South'], [5, '']),
    ).toEqual({ B: 30, runnerUp: 44, litres: 100, leftover: 0, cost: 30 })
    expect(
      working('BUYPLAN', 160, ['A', 'B'], [60, 100], [9, 30], null, null, [1, 1], null, ['North', 'South'], [5, 2]).map(
        ({ name, formula }) => [name, formula],
      ),
    ).toEqual([
      ['A', '1 * 9'],
      ['B', '1 * 30'],
      ['delivery from North', '5 for A'],
      ['delivery from South', '2 for B'],
      ['runnerUp', 'there is no other'],
      ['litres', 'sum of the rows'],
      ['leftover', 'litres - neededL'],
      ['cost', 'goods + deliveries, every order weighed'],
    ])
  })

  test('how far a break is, is told with the other rows as they are, in whole multiples, and to the last digit', () => {
    const broken = (...given: readonly unknown[]) =>
      working('BUYPLAN', ...given).find(({ name }) => name === 'A: break')?.value
    // B gives 25 L. The 40 L that are left are 4 bags of A for 40, or 5 for 37.50.
    expect(broken(65, ['A', 'B'], [10, 25], [10, 5], [5, ''], [7.5, ''], ['', 1])).toBe(
      '1 more bag reaches the break and saves 2.50',
    )
    // By twos, 4 bags cover and 6 reach the break: 40 less 6 x 6, and less 6 x 6.0625.
    expect(broken(35, ['A'], [10], [10], [5], [6], null, [2])).toBe('2 more bags reach the break and save 4.00')
    expect(broken(35, ['A'], [10], [10], [5], [6.0625], null, [2])).toBe('2 more bags reach the break and save 3.625')
    expect(broken(15, ['A'], [10], [10], [5], [9], null, [2])).toBe('4 more bags reach the break and cost 34.00 more')
    expect(broken(15, ['A'], [10], [10], [3], [9])).toBe('1 more bag reaches the break and costs 7.00 more')
    // 5 of A can be had, and 6 would be bought by twos.
    expect(broken(15, ['A'], [10], [10], [5], [9], [5], [2])).toBe('the break cannot be reached with what is available')
    expect(broken(15, ['A'], [10], [10], [5], [9], [6], [2])).toBe('4 more bags reach the break and cost 34.00 more')
    // B gives 25 L of the 80: 55 are 6 bags of A, so the break of 6 is reached anyhow. Of 75 they are 5.
    expect(broken(80, ['A', 'B'], [10, 25], [10, 5], [6, ''], [8, ''], ['', 1])).toBe('the need reaches the break')
    expect(broken(75, ['A', 'B'], [10, 25], [10, 5], [6, ''], [8, ''], ['', 1])).toBe(
      '1 more bag reaches the break and saves 2.00',
    )
  })

  test('the runner-up names what it buys alone', () => {
    const runnerUp = (...given: readonly unknown[]) =>
      working('BUYPLAN', ...given).find(({ name }) => name === 'runnerUp')
    // 2 of A for 18, then 3 of A for 27, then one of each for 39.
    expect(runnerUp(100, ['A', 'B'], [60, 70], [9, 30])).toMatchObject({ formula: '3 A', value: 27 })
    expect(runnerUp(100, ['A', 'B'], [60, 70], [9, 17])).toMatchObject({ formula: '1 A + 1 B', value: 26 })
  })
})

describe('STANDING and PEAK', () => {
  // 2026-02-02, -09 and -16 are Mondays: 46055, 46062 and 46069. The third start stands nowhere, the fourth is none.
  const starts = [
    [46_055, 46_062, 46_062, 46_069],
    [2, 1, 0, 3],
    [40, 25, 900, 0],
  ] as const

  test('what stands nowhere counts among all starts, and not as one that stands', () => {
    expect(lines('PEAK', ...starts)).toEqual({ sum: 965, largest: 40, monday: 46_062, peak: 65 })
    expect(lines('STANDING', ...starts)).toMatchObject({ starts: 2, weeks: 2, monday: 46_062, most: 65 })
  })

  test('the largest start is found wherever it is, and no week is named where nothing stands', () => {
    expect(lines('PEAK', [46_055, 46_062], [1, 1], [7, 9])).toMatchObject({ largest: 9, monday: 46_062 })
    expect(lines('PEAK', [46_055, 46_062], [1, 1], [9, 7])).toMatchObject({ largest: 9, monday: 46_055 })
    expect(lines('PEAK', [46_055], [0], [9])).toEqual({ sum: 9, largest: 0, peak: 0 })
  })

  test('2000 weeks are shown, and not one more', () => {
    // The second start stands in the week that many weeks after the first.
    const apart = (weeks: number) =>
      [
        [46_055, 46_055 + 7 * (weeks - 1)],
        [1, 1],
        [1, 1],
      ] as const
    expect(lines('STANDING', ...apart(2000))).toMatchObject({ weeks: 2000 })
    expect(refusal('STANDING', ...apart(2001)).sentence).toMatch(/2001.*2000/)
  })
})

describe('ONTRACK', () => {
  const formulas = (...given: readonly unknown[]) =>
    Object.fromEntries(working('ONTRACK', ...given).map(({ name, formula }) => [name, formula]))

  test('without rates of its own what is stuck again is not known, and no rate is shown', () => {
    expect(lines('ONTRACK', 2, [2], [0.5])).toEqual({ expected: 1, chance: 0.25, further: 'not known' })
    expect(lines('ONTRACK', 1, [2], [0.5])).toEqual({ expected: 1, chance: 0.75, further: 0 })
  })

  test('the rate of further cuttings is the product of their stages, and the rule for their number is shown', () => {
    expect(lines('ONTRACK', 2, [2], [0.5], 0, [0.5, 0.8])).toEqual({
      expected: 1,
      chance: 0.25,
      newRate: 0.4,
      // 1 liner lacks on average, and 1 / 0.4 is 2.5.
      further: 3,
    })
    expect(formulas(2, [2], [0.5], 0, [0.5])['further']).toMatch(/^ROUNDUP/)
    // At least one of 2 lives with 3/4, of 3 with 7/8.
    expect(lines('ONTRACK', 1, [2], [0.5], 0, [0.5], 0.8)).toMatchObject({ chance: 0.75, newRate: 0.5, further: 1 })
    expect(formulas(1, [2], [0.5], 0, [0.5], 0.8)['further']).toMatch(/^least n/)
  })

  test('a stage that is left blank is none', () => {
    expect(lines('ONTRACK', 2, [2], [0.5], 0, [0.5, '', 0.8])).toMatchObject({ newRate: 0.4 })
  })
})
