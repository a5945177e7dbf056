/** What must hold of the ledger of reuse, the comparison of ways and the split of a variance, whatever the money. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { cellOf, definition, table, value } from '../golden/golden'

const cents = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((one) => one / 100)
const permille = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 1000)

/** Washing, topping up, loss, end value, interest, rounds a year. */
const later = fc.tuple(
  cents(5),
  permille(0, 300),
  permille(0, 300),
  cents(40).map((amount) => amount - 10),
  permille(0, 200),
  fc.constantFrom(1, 2, 3.5, 12),
)

function numbersOf(row: readonly (number | string)[]): readonly number[] {
  return row.map((cell) => {
    if (typeof cell !== 'number') throw new Error(`a text in a ledger: ${cell}`)
    return cell
  })
}

describe('the ledger of reuse', () => {
  test('its level cost is REUSECOST in every row, and in the first one the first cost where nothing comes back', () => {
    fc.assert(
      fc.property(cents(500), fc.integer({ min: 1, max: 20 }), later, (firstCost, rounds, given) => {
        const rows = table('REUSELEDGER', firstCost, rounds, ...given).map(numbersOf)
        expect(rows.map(([round]) => round)).toEqual(rows.map((_, index) => index + 1))
        for (const [round, , , , , levelCost] of rows)
          expect(levelCost).toBe(value('REUSECOST', firstCost, round, ...given))
        const [wash, topUp, loss, , interest, perYear] = given
        expect(
          cellOf(
            'REUSELEDGER',
            1,
            'level cost if stopped here',
            firstCost,
            rounds,
            wash,
            topUp,
            loss,
            0,
            interest,
            perYear,
          ),
        ).toBe(firstCost)
      }),
      { numRuns: 200 },
    )
  })

  test('its present values add up to the running one, and without interest they are the outlays', () => {
    fc.assert(
      fc.property(
        cents(500),
        fc.integer({ min: 1, max: 60 }),
        later,
        (firstCost, rounds, [wash, topUp, loss, endValue, interest, perYear]) => {
          let sum = 0
          for (const [, , outlay, presentValue, running] of table(
            'REUSELEDGER',
            firstCost,
            rounds,
            wash,
            topUp,
            loss,
            endValue,
            interest,
            perYear,
          ).map(numbersOf)) {
            sum += presentValue!
            expect(running).toBeCloseTo(sum, 8)
            expect(presentValue).toBeLessThanOrEqual(outlay!)
          }
          for (const [, , outlay, presentValue] of table(
            'REUSELEDGER',
            firstCost,
            rounds,
            wash,
            topUp,
            loss,
            endValue,
          ).map(numbersOf))
            expect(presentValue).toBe(outlay)
        },
      ),
      { numRuns: 200 },
    )
  })
})

interface Way {
  name: string
  firstCost: number
  rounds: number
  cuttings: number
  yielded: number
  wash: number
  topUp: number
  loss: number
  other: number
  endValue: number
}

const way = fc.record({
  firstCost: cents(30),
  rounds: fc.oneof(fc.constant(1), fc.integer({ min: 2, max: 40 })),
  cuttings: fc.integer({ min: 1, max: 200 }),
  yielded: permille(300, 1000),
  wash: cents(1),
  topUp: permille(0, 200),
  loss: permille(0, 200),
  other: cents(0.5),
  endValue: cents(3).map((amount) => amount - 1),
})
const ways = fc
  .array(way, { minLength: 1, maxLength: 6 })
  .map((list): Way[] => list.map((one, index) => ({ ...one, name: `way ${index}` })))
const money = fc.tuple(permille(0, 200), fc.constantFrom(1, 4, 12))

function argumentsOf(list: readonly Way[], [interest, perYear]: readonly [number, number]): readonly unknown[] {
  const each = (key: keyof Way) => list.map((one) => one[key])
  return [
    each('name'),
    each('firstCost'),
    each('rounds'),
    each('cuttings'),
    each('yielded'),
    each('wash'),
    each('topUp'),
    each('loss'),
    each('other'),
    each('endValue'),
    interest,
    perYear,
  ]
}

const columns = { level: 1, perCutting: 2, perLiner: 3, cash: 4, beats: 5 } as const

describe('the comparison of ways', () => {
  test('a row is ROOTINGCOST per saleable liner and REUSECOST per round', () => {
    fc.assert(
      fc.property(ways, money, (list, [interest, perYear]) => {
        const rows = new Map(table('COMPARE', ...argumentsOf(list, [interest, perYear])).map((row) => [row[0], row]))
        for (const { name, firstCost, rounds, cuttings, yielded, wash, topUp, loss, other, endValue } of list) {
          const row = rows.get(name)!
          expect(row[columns.perLiner]).toBe(
            value(
              'ROOTINGCOST',
              firstCost,
              rounds,
              cuttings,
              yielded,
              wash,
              topUp,
              loss,
              other,
              endValue,
              interest,
              perYear,
            ),
          )
          expect(row[columns.level]).toBe(
            value('REUSECOST', firstCost, rounds, wash, topUp, loss, endValue, interest, perYear),
          )
          expect(row[columns.perCutting]).toBeCloseTo(Number(row[columns.perLiner]) * yielded, 10)
          expect(row[columns.cash]).toBeCloseTo(firstCost + other * cuttings, 10)
        }
      }),
      { numRuns: 200 },
    )
  })

  test('the cheapest per saleable liner comes first, each way once, in whatever order they are given', () => {
    fc.assert(
      fc.property(ways, money, fc.array(fc.nat(), { minLength: 6, maxLength: 6 }), (list, terms, shuffle) => {
        const rows = table('COMPARE', ...argumentsOf(list, terms))
        const costs = rows.map((row) => Number(row[columns.perLiner]))
        expect(costs).toEqual([...costs].sort((a, b) => a - b))
        expect(rows.map(([name]) => name).sort()).toEqual(list.map(({ name }) => name).sort())
        fc.pre(new Set(costs).size === costs.length)
        const shuffled = list
          .map((one, index) => ({ one, key: shuffle[index]! }))
          .sort((a, b) => a.key - b.key)
          .map(({ one }) => one)
        expect(table('COMPARE', ...argumentsOf(shuffled, terms))).toEqual(rows)
      }),
      { numRuns: 300 },
    )
  })

  test('a reusable beats the cheapest single use from the first of its rounds, tried one by one, at which its liner costs no more', () => {
    const met = { rounds: 0, never: 0 }
    fc.assert(
      fc.property(ways, money, (list, terms) => {
        const rows = table('COMPARE', ...argumentsOf(list, terms))
        const singles = list
          .filter(({ rounds }) => rounds === 1)
          .map(({ name }) => Number(rows.find((row) => row[0] === name)![columns.perLiner]))
        const allowed = Math.min(...singles)
        for (const one of list) {
          const beats = rows.find((row) => row[0] === one.name)![columns.beats]
          if (one.rounds === 1) expect(beats).toBe('single use')
          else if (singles.length === 0) expect(beats).toBe('no single use to beat')
          else {
            const perLiner = (rounds: number) =>
              Number(table('COMPARE', ...argumentsOf([{ ...one, rounds }], terms))[0]![columns.perLiner])
            const first = Array.from({ length: one.rounds }, (_, index) => index + 1).find(
              (rounds) => perLiner(rounds) <= allowed,
            )
            expect(beats).toBe(first ?? `not in ${one.rounds} rounds`)
            met[first === undefined ? 'never' : 'rounds']++
          }
        }
      }),
      { numRuns: 150, seed: 11 },
    )
    expect(Math.min(met.rounds, met.never), 'both cases were met').toBeGreaterThan(20)
  })

  test('with no other costs the reusable beats single use from the round that BREAKEVEN gives with the yields', () => {
    fc.assert(
      fc.property(way, cents(30), permille(300, 1000), money, (reusable, single, singleYield, [interest, perYear]) => {
        const { firstCost, yielded, wash, topUp, loss, endValue } = reusable
        const list = [
          { ...reusable, name: 'reusable', rounds: 200, cuttings: 50, other: 0 },
          {
            ...reusable,
            name: 'single',
            firstCost: single,
            rounds: 1,
            cuttings: 50,
            yielded: singleYield,
            other: 0,
            endValue: 0,
          },
        ]
        const beats = table('COMPARE', ...argumentsOf(list, [interest, perYear])).find(
          ([name]) => name === 'reusable',
        )![columns.beats]
        const breakEven = call(definition('BREAKEVEN'), [
          single,
          firstCost,
          wash,
          topUp,
          loss,
          endValue,
          interest,
          perYear,
          200,
          singleYield,
          yielded,
        ])
        expect(beats).toBe(breakEven.kind === 'value' ? breakEven.value : 'not in 200 rounds')
      }),
      { numRuns: 400 },
    )
  })
})

describe('the split of a variance', () => {
  const quantity = fc.integer({ min: 0, max: 1_000_000 })
  const priced = fc.integer({ min: -50_000, max: 50_000 }).map((one) => one / 100)
  const amountsOf = (...args: readonly number[]) => table('VARIANCE', ...args).map(([, amount]) => Number(amount))
  /** A cell holds no minus zero, and a product here may be one. */
  const plusZero = (amount: number) => amount + 0
  const inCents = (amount: number) => plusZero(Math.round(amount * 100))

  test('price and usage add up to the total to the cent, and the total is what was spent less what the standard allows', () => {
    fc.assert(
      fc.property(
        quantity,
        priced,
        quantity,
        priced,
        (standardQuantity, standardPrice, actualQuantity, actualPrice) => {
          const [price, usage, total] = amountsOf(standardQuantity, standardPrice, actualQuantity, actualPrice)
          // In cents all of it is whole numbers, so these are exact.
          const [standardCents, actualCents] = [inCents(standardPrice), inCents(actualPrice)]
          const spent = actualCents * actualQuantity - standardCents * standardQuantity
          expect(inCents(price!)).toBe(plusZero((actualCents - standardCents) * actualQuantity))
          expect(inCents(usage!)).toBe(plusZero((actualQuantity - standardQuantity) * standardCents))
          expect(inCents(price! + usage!)).toBe(plusZero(spent))
          expect(total).toBe(plusZero(spent / 100))
        },
      ),
      { numRuns: 500 },
    )
  })

  test('the reading follows the sign of the amount beside it', () => {
    fc.assert(
      fc.property(quantity, priced, quantity, priced, (...args) => {
        for (const [, amount, reads] of table('VARIANCE', ...args))
          expect(reads).toBe(Number(amount) > 0 ? 'adverse' : Number(amount) < 0 ? 'favourable' : 'none')
      }),
      { numRuns: 300 },
    )
  })

  test('bought at the standard price there is no price variance, and used as the standard says there is no usage variance', () => {
    fc.assert(
      fc.property(
        quantity,
        priced,
        quantity,
        priced,
        (standardQuantity, standardPrice, actualQuantity, actualPrice) => {
          expect(table('VARIANCE', standardQuantity, standardPrice, actualQuantity, standardPrice)[0]).toEqual([
            'price',
            0,
            'none',
          ])
          expect(table('VARIANCE', standardQuantity, standardPrice, standardQuantity, actualPrice)[1]).toEqual([
            'usage',
            0,
            'none',
          ])
        },
      ),
      { numRuns: 200 },
    )
  })
})
