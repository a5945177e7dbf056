/** What must hold of SWINGS and ODDS, whatever the numbers. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { defineByMethod, defineBySteps } from '../../src/core/definition/definition'
import { number, quantity } from '../../src/core/definition/parameter'
import { randomNumbers } from '../../src/core/method/randomNumbers'
import { quantileOf } from '../../src/core/method/triangular'
import { one } from '../../src/core/quantity/decimal'
import { call } from '../../src/derived/call'
import { oddsOver } from '../../src/functions/review/odds'
import { table, value } from '../golden/golden'

const names = ['cuttingVolumeMl', 'costPerLitre', 'settle', 'rounds', 'washCostPerCutting', 'lossShare']
/** Three values of one argument, ascending. */
const three = (most: number, steps: number, least = 0) =>
  fc
    .tuple(
      fc.integer({ min: least, max: most }),
      fc.integer({ min: least, max: most }),
      fc.integer({ min: least, max: most }),
    )
    .map((values) => [...values].sort((a, b) => a - b).map((one) => one / steps))
const uncertain = fc.tuple(
  three(2000, 10),
  three(500, 100),
  three(400, 1000),
  three(30, 1, 1),
  three(100, 1000),
  three(300, 1000),
)
const ends = (rows: readonly (readonly number[])[]) => [0, 1, 2].map((end) => rows.map((row) => row[end]!))
/** MEDIUMCOST by position: spill stands between settle and rounds, and topUpShare before lossShare. */
const direct = ([volume, cost, settle, rounds, wash, loss]: readonly number[]) =>
  value('MEDIUMCOST', volume, cost, settle, 0, rounds, wash, 0, loss)

/** A draw is computed in doubles, in which a cost of nothing may be off by this. */
const dust = 1e-12

function withOne(values: readonly number[], place: number, value: unknown): readonly number[] {
  return values.map((one, index) => (index === place ? Number(value) : one))
}

describe('SWINGS', () => {
  test('its results are those of the function itself, and the swings fall', () => {
    fc.assert(
      fc.property(uncertain, (rows) => {
        const [lows, likelies, highs] = ends(rows)
        const swings = table('SWINGS', 'MEDIUMCOST', names, lows, likelies, highs)
        expect(swings).toHaveLength(names.length)
        let widest = Infinity
        for (const [label, low, high, atLow, likely, atHigh, swing] of swings) {
          const index = names.indexOf(String(label))
          expect(low).toBe(lows![index])
          expect(high).toBe(highs![index])
          expect(atLow).toBe(direct(withOne(likelies!, index, low)))
          expect(atHigh).toBe(direct(withOne(likelies!, index, high)))
          expect(likely).toBe(direct(likelies!))
          expect(Math.abs(Number(swing) - Math.abs(Number(atHigh) - Number(atLow)))).toBeLessThanOrEqual(
            1e-13 * Math.max(Number(atHigh), Number(atLow)),
          )
          expect(swing).toBeLessThanOrEqual(widest)
          widest = Number(swing)
        }
      }),
      { numRuns: 150, seed: 21 },
    )
  })

  test('an argument without doubt has no swing', () => {
    fc.assert(
      fc.property(uncertain, (rows) => {
        const [, likelies] = ends(rows)
        for (const row of table('SWINGS', 'MEDIUMCOST', names, likelies, likelies, likelies)) expect(row.at(-1)).toBe(0)
      }),
      { numRuns: 50, seed: 22 },
    )
  })
})

describe('ODDS', () => {
  test('without any doubt every draw is what the function gives', () => {
    fc.assert(
      fc.property(uncertain, fc.integer({ min: 0, max: 2 ** 32 - 1 }), (rows, seed) => {
        const [, likelies] = ends(rows)
        const expected = direct(likelies!)
        const results = table('ODDS', 'MEDIUMCOST', names, likelies, likelies, likelies, 100, seed).map((row) =>
          Number(row[1]),
        )
        expect(results.at(-1)).toBe(0)
        for (const result of results.slice(0, -1))
          expect(Math.abs(result - expected)).toBeLessThanOrEqual(1e-9 * expected + dust)
      }),
      { numRuns: 100, seed: 23 },
    )
  })

  test('the percentiles rise, the mean lies between the least and the largest, and all within what the ends allow', () => {
    fc.assert(
      fc.property(uncertain, fc.integer({ min: 0, max: 2 ** 32 - 1 }), (rows, seed) => {
        const [lows, likelies, highs] = ends(rows)
        const odds = table('ODDS', 'MEDIUMCOST', names, lows, likelies, highs, 300, seed).map((row) => Number(row[1]))
        const percentiles = odds.slice(0, 11)
        expect(percentiles).toEqual([...percentiles].sort((a, b) => a - b))
        const [least, largest] = [percentiles[0]!, percentiles[10]!]
        expect(odds[11]).toBeGreaterThanOrEqual(least * (1 - 1e-9) - dust)
        expect(odds[11]).toBeLessThanOrEqual(largest * (1 + 1e-9) + dust)
        // The cost grows with volume, price, settling and washing; with rounds and loss it moves in one direction or the other.
        const corners = (of: readonly number[]) =>
          [lows!, highs!].flatMap((rounds) =>
            [lows!, highs!].map((loss) => direct(withOne(withOne(of, 3, rounds[3]), 5, loss[5]))),
          )
        expect(least).toBeGreaterThanOrEqual(Math.min(...corners(lows!)) * (1 - 1e-9) - dust)
        expect(largest).toBeLessThanOrEqual(Math.max(...corners(highs!)) * (1 + 1e-9) + dust)
      }),
      { numRuns: 150, seed: 24 },
    )
  })

  test('the same seed gives the same table, and another seed another', () => {
    const odds = (seed: number) =>
      table('ODDS', 'PERLINER', ['costPerCutting', 'stageRates'], [0.1, 0.7], [0.2, 0.8], [0.3, 0.9], 500, seed)
    expect(odds(5)).toEqual(odds(5))
    expect(odds(5)).not.toEqual(odds(6))
  })

  test('taking the doubt away from one argument leaves the draws of the others', () => {
    const given = (low: number, high: number) => ['SUMMED', ['idle', 'amount'], [low, 1], [low, 3], [high, 7], 500, 9]
    expect(oddsOfOwn(given(2, 2))).toEqual(oddsOfOwn(given(2, 5)))
  })

  test('each share is read off the sorted draws as PERCENTILE.INC reads it, between two of them in proportion', () => {
    const random = randomNumbers(9)
    const drawn = Array.from({ length: 107 }, () => {
      random()
      return quantileOf({ low: 1, likely: 3, high: 7 }, random())
    }).sort((a, b) => a - b)
    for (const [share, result] of oddsOfOwn(['SUMMED', ['idle', 'amount'], [2, 1], [2, 3], [2, 7], 107, 9]).slice(
      0,
      11,
    )) {
      const position = Number(share) * 106
      const [below, above] = [drawn[Math.floor(position)]!, drawn[Math.ceil(position)]!]
      expect(result).toBeCloseTo(below + (position % 1) * (above - below), 8)
    }
  })

  test('an argument that takes whole numbers is drawn in whole numbers, the ends too', () => {
    const odds = oddsOfOwn(['COUNTED', ['count'], [1], [2], [5], 1000, 2])
      .slice(0, 11)
      .map(([, result]) => result)
    expect(odds[0]).toBe(1)
    expect(odds[10]).toBe(5)
    for (const result of odds) expect(Number.isInteger(result)).toBe(true)
  })

  test('an argument that is left out follows the one whose value it takes, draw by draw', () => {
    // Straight walls: the bottom is the top. Litres are then length x width x depth, and cost is in proportion to the first.
    const cells = table(
      'ODDS',
      'CELLVOLUME',
      ['topLengthMm', 'topWidthMm', 'depthMm'],
      [20, 50, 20],
      [30, 50, 20],
      [60, 50, 20],
      300,
      4,
    )
    const costs = table(
      'ODDS',
      'PERLINER',
      ['costPerCutting', 'stageRates', 'stageRates'],
      [20, 1, 1],
      [30, 1, 1],
      [60, 1, 1],
      300,
      4,
    )
    expect(cells.slice(0, 13).map(([, result]) => Number(result).toPrecision(8))).toEqual(
      costs.slice(0, 13).map(([, result]) => Number(result).toPrecision(8)),
    )
  })

  test('a function that answers no draw at all is #N/A, and a draw that divides by zero counts as one without an answer', () => {
    const outcome = call(oddsOver([picky]), ['PICKY', [['amount']], [[0]], [[1]], [[2]], 100, 1])
    expect(outcome).toEqual({
      kind: 'error',
      code: '#N/A',
      sentence: 'PICKY has no answer with any of the 100 draws. Check lows and highs.',
    })
    expect(oddsOfOwn(['DIVIDED', ['count'], [-1], [1], [1], 1000, 1]).at(-1)![1]).toBeGreaterThan(100)
  })
})

const summed = defineBySteps({
  id: 'SUMMED',
  subject: 'review',
  parameters: {
    idle: number('pieces', { text: 'what counts for nothing' }),
    amount: quantity('L', { text: 'what counts' }),
  },
  result: { name: 'sum', unit: 'L' },
  steps: [['sum', 'amount + 0 * idle', 'L', 'the amount']],
})

const counted = defineBySteps({
  id: 'COUNTED',
  subject: 'review',
  parameters: { count: number('pieces', { text: 'a count', whole: true, atLeast: 0 }) },
  result: { name: 'same', unit: 'pieces' },
  steps: [['same', 'count * 1', 'pieces', 'the count']],
})

const divided = defineBySteps({
  id: 'DIVIDED',
  subject: 'review',
  parameters: { count: number('pieces', { text: 'a count, which may be 0 in a draw', whole: true }) },
  result: { name: 'each', unit: 'pieces' },
  steps: [['each', 'IF(count = 0, 1 / count, 1)', 'pieces', 'one by the count']],
})

/** It answers at 0, 1 and 2 and nowhere between. */
const picky = defineByMethod({
  id: 'PICKY',
  subject: 'review',
  parameters: { amount: number('pieces', { text: 'an amount' }) },
  result: { name: 'one', unit: 'pieces' },
  method: ({ amount }) =>
    amount.isInteger()
      ? { value: one, working: () => [] }
      : { problem: { kind: 'noAnswer', code: 'needsTooMany', most: '1' } },
})

/** The rows that ODDS gives of functions made for these tests, whose draws can be told. */
function oddsOfOwn(given: readonly unknown[]): readonly (readonly (number | string)[])[] {
  const outcome = call(
    oddsOver([summed, counted, divided]),
    given.map((one) => (Array.isArray(one) ? one.map((cell: unknown) => [cell]) : one)),
  )
  if (outcome.kind !== 'value' || typeof outcome.value === 'number') throw new Error(JSON.stringify(outcome))
  return outcome.value.slice(1)
}

test('a draw of large or small amounts is that of ordinary ones in a larger or smaller unit', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(
      three(1000, 10),
      share,
      fc.constantFrom(1e300, 1e160, 1e-160, 1e-300),
      ([low, likely, high], at, unit) => {
        const ordinary = quantileOf({ low: low!, likely: likely!, high: high! }, at)
        expect(quantileOf({ low: low! * unit, likely: likely! * unit, high: high! * unit }, at) / unit).toBeCloseTo(
          ordinary,
          9,
        )
      },
    ),
  )
})
