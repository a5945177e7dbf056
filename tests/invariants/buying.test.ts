/** What must hold of buying and stock plans over random input. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cheapestOrders } from '../../src/core/method/cheapestOrder'
import { Decimal } from '../../src/core/quantity/decimal'
import { splitByWeights } from '../../src/core/quantity/splitting'
import { cellOf, table, value } from '../golden/golden'
import { argumentsOf, bagsIn, litresOf, randomFrom, randomPurchase } from '../oracles/purchases'

const purchase = fc.integer({ min: 1, max: 2 ** 31 }).map((seed) => randomPurchase(randomFrom(seed)))
const costOfPlan = (one: Parameters<typeof cheapestOrders>[0]) => cheapestOrders(one, 1)![0]?.cost ?? Infinity

test('a larger need never costs less', () => {
  fc.assert(
    fc.property(purchase, fc.integer({ min: 1, max: 500_000 }), (given, more) => {
      expect(costOfPlan({ ...given, need: given.need + more })).toBeGreaterThanOrEqual(costOfPlan(given))
    }),
    { numRuns: 300, seed: 11 },
  )
})

test('one more pack to choose from never costs more', () => {
  fc.assert(
    fc.property(purchase, (given) => {
      const fewer = { ...given, packs: given.packs.slice(0, -1) }
      if (fewer.packs.length > 0) expect(costOfPlan(given)).toBeLessThanOrEqual(costOfPlan(fewer))
    }),
    { numRuns: 300, seed: 12 },
  )
})

test('one pack is bought in as many bags as BAGS says, whatever the unit, and whole packs cover whole needs', () => {
  const units = ['L', 'mL', 'ft3', 'yd3', 'US gal', 'imp gal', 'US bushel', 'US dry qt']
  fc.assert(
    fc.property(
      fc.constantFrom(...units),
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 1, max: 4 }),
      (unit, needed, each, multiple) => {
        const [need, pack] = [`${needed} ${unit}`, `${unit === 'mL' ? each + 1 : each / 4} ${unit}`]
        expect(cellOf('BUYPLAN', 'total', 'bags', need, ['A'], [pack], [1], null, null, null, [multiple])).toBe(
          value('BAGS', need, pack, 1, 0, multiple),
        )
      },
    ),
    { numRuns: 400, seed: 17 },
  )
})

test('the columns of a plan add up to its total row, to the cent and the millilitre', () => {
  let plans = 0
  fc.assert(
    fc.property(purchase, (given) => {
      if (costOfPlan(given) === Infinity) return
      plans++
      const rows = table('BUYPLAN', ...argumentsOf(given))
      for (const [column, decimals] of [
        [1, 0],
        [2, 3],
        [3, 2],
        [4, 3],
      ] as const) {
        const sum = rows
          .slice(0, -1)
          .reduce((total, row) => total + Math.round(Number(row[column]) * 10 ** decimals), 0)
        expect(sum, `column ${column}`).toBe(Math.round(Number(rows.at(-1)![column]) * 10 ** decimals))
      }
      expect(rows.at(-1)![4]).toBeCloseTo((litresOf(given, bagsIn(rows, given)) - given.need) / 1000, 9)
    }),
    { numRuns: 300, seed: 13 },
  )
  expect(plans).toBeGreaterThan(200)
})

test('the parts of an amount add up to it, and none is a cent or more off its share', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1e9 }),
      fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 8 }),
      (cents, weights) => {
        fc.pre(weights.some((weight) => weight > 0))
        const parts = splitByWeights(
          new Decimal(cents).div(100),
          weights.map((weight) => new Decimal(weight)),
        ).map((part) => Math.round(part.toNumber() * 100))
        expect(parts.reduce((total, part) => total + part, 0)).toBe(cents)
        const sum = weights.reduce((total, weight) => total + weight, 0)
        parts.forEach((part, place) => expect(Math.abs(part - (cents * weights[place]!) / sum)).toBeLessThan(1))
      },
    ),
    { numRuns: 1000, seed: 14 },
  )
})

const season = fc.integer({ min: 1, max: 7 }).chain((periods) =>
  fc.record({
    needs: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: periods, maxLength: periods }),
    orderCosts: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: periods, maxLength: periods }),
    prices: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: periods, maxLength: periods }),
    holding: fc.integer({ min: 0, max: 4 }),
    onHand: fc.integer({ min: 0, max: 12 }),
  }),
)
type Season = typeof season extends fc.Arbitrary<infer S> ? S : never

/** Period by period, every amount that may still be needed is tried: no theorem on which orders can be best is used. */
function leastByTrying({ needs, orderCosts, prices, holding, onHand }: Season): number {
  const total = needs.reduce((sum, need) => sum + need, 0)
  let costs = new Map([[onHand, 0]])
  needs.forEach((need, period) => {
    const next = new Map<number, number>()
    for (const [stock, cost] of costs) {
      for (let order = 0; order <= total; order++) {
        const left = stock + order - need
        if (left < 0) continue
        const sum = cost + (order > 0 ? orderCosts[period]! : 0) + order * prices[period]! + holding * left
        if (sum < (next.get(left) ?? Infinity)) next.set(left, sum)
      }
    }
    costs = next
  })
  return Math.min(...costs.values())
}

test('no timing of orders costs less than the plan, whatever amounts are tried', () => {
  fc.assert(
    fc.property(season, (given) => {
      const args = [given.needs, given.orderCosts, given.holding, given.prices, given.onHand]
      expect(cellOf('STOCKPLAN', 'total', 'cost', ...args)).toBe(leastByTrying(given))
      const rows = table('STOCKPLAN', ...args)
      let stock = given.onHand
      given.needs.forEach((need, period) => {
        stock += Number(rows[period]![1]) - need
        expect(stock).toBeGreaterThanOrEqual(0)
        expect(rows[period]![2]).toBe(stock)
      })
      for (const column of [1, 2, 3])
        expect(rows.slice(0, -1).reduce((sum, row) => sum + Number(row[column]), 0)).toBe(rows.at(-1)![column])
    }),
    { numRuns: 1500, seed: 15 },
  )
})

test('more need in a period never costs less', () => {
  fc.assert(
    fc.property(season, fc.nat(6), (given, place) => {
      const more = given.needs.map((need, period) => (period === place ? need + 1 : need))
      // Stock that is used up is no longer held, so this holds only where holding is free or nothing is at hand.
      const cost = (needs: readonly number[]) =>
        cellOf('STOCKPLAN', 'total', 'cost', needs, given.orderCosts, given.holding, given.prices, 0)
      expect(cost(more)).toBeGreaterThanOrEqual(cost(given.needs))
    }),
    { numRuns: 500, seed: 16 },
  )
})
