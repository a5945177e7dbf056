import { describe, expect, test } from 'vitest'
import { cheapestOrders, mostLookedAt } from '../../../src/core/method/cheapestOrder'
import { litresToBeHad, mostWorthBuying, type Pack, type Purchase } from '../../../src/core/method/purchase'
import {
  costOf,
  everyOrder,
  litresOf,
  randomFrom,
  randomPurchase,
  smallPurchase,
  tiedPurchase,
} from '../../oracles/purchases'
import { lowestCosts } from './lowestCosts'

function pack(litres: number, price: number, more: Partial<Pack> = {}): Pack {
  return { litres, price, available: Infinity, multiple: 1, supplier: 0, ...more }
}

/** The bags of the cheapest order, and of the runner-up. */
function bagsOf(
  need: number,
  packs: readonly Pack[],
  deliveries: readonly number[] = [0],
): readonly (readonly number[])[] {
  const purchase = { need, packs, deliveries }
  const orders = cheapestOrders(purchase, 2)!
  for (const { bags, cost, litres } of orders)
    expect([cost, litres]).toEqual([costOf(purchase, bags), litresOf(purchase, bags)])
  expect(cheapestOrders(purchase, 1)).toEqual(orders.slice(0, 1))
  return orders.map(({ bags }) => bags)
}

describe('orders that can be weighed by hand', () => {
  test('of one pack as many bags as cover, and one more as the runner-up', () => {
    expect(bagsOf(60, [pack(60, 9)])).toEqual([[1], [2]])
    expect(bagsOf(61, [pack(60, 9)])).toEqual([[2], [3]])
    expect(bagsOf(61, [pack(60, 9, { multiple: 5 })])).toEqual([[5], [10]])
  })

  test('where no more can be had there is no runner-up, or no order', () => {
    expect(bagsOf(61, [pack(60, 9, { available: 2 })])).toEqual([[2]])
    expect(bagsOf(121, [pack(60, 9, { available: 2 })])).toEqual([])
    // 3 of 4 bags, since they are sold by threes.
    expect(bagsOf(181, [pack(60, 9, { available: 4, multiple: 3 })])).toEqual([])
  })

  test('the break is reached where that is cheaper', () => {
    // 9 x 11 = 99 or 10 x 9 = 90.
    expect(bagsOf(9, [pack(1, 11, { priceBreak: { from: 10, price: 9 } })])).toEqual([[10], [9]])
    // 5 x 11 = 55.
    expect(bagsOf(5, [pack(1, 11, { priceBreak: { from: 10, price: 9 } })])).toEqual([[5], [6]])
    // 9 can be had: the break is out of reach.
    expect(bagsOf(9, [pack(1, 11, { priceBreak: { from: 10, price: 9 }, available: 9 })])).toEqual([[9]])
    // By fours the break of 10 is reached with 12: 12 x 7 = 84, and 8 x 11 = 88.
    expect(bagsOf(8, [pack(1, 11, { priceBreak: { from: 10, price: 7 }, multiple: 4 })])).toEqual([[12], [8]])
  })

  test('a delivery is paid once for each supplier that sells something', () => {
    const packs = [pack(50, 10), pack(40, 9), pack(45, 4, { supplier: 1 })]
    // 10 + 9 + 5 = 24, 4 + 4 + 15 = 23.
    expect(bagsOf(90, packs, [5, 15])).toEqual([
      [0, 0, 2],
      [1, 1, 0],
    ])
    expect(bagsOf(90, packs, [5, 18])).toEqual([
      [1, 1, 0],
      [2, 0, 0],
    ])
    // 10 + 4 with both deliveries is 1 + 1 + 14.
    expect(
      bagsOf(
        95,
        packs.map((one) => ({ ...one, available: 1 })),
        [1, 1],
      ),
    ).toEqual([
      [1, 0, 1],
      [1, 1, 1],
    ])
  })

  test('of equal costs the order with less left over comes first, then that with fewer bags, then that with more of the earlier packs', () => {
    expect(bagsOf(10, [pack(12, 10), pack(11, 10)])).toEqual([
      [0, 1],
      [1, 0],
    ])
    expect(bagsOf(12, [pack(6, 5), pack(12, 10)])).toEqual([
      [0, 1],
      [2, 0],
    ])
    expect(bagsOf(12, [pack(12, 10), pack(12, 10)])).toEqual([
      [1, 0],
      [0, 1],
    ])
    expect(bagsOf(24, [pack(12, 10), pack(12, 10)])).toEqual([
      [2, 0],
      [1, 1],
    ])
  })
})

describe('any purchase', () => {
  test('of some hundred litres, the orders cost what every sum of packs shows to be the least', () => {
    const random = randomFrom(11)
    for (let instance = 0; instance < 60; instance++) {
      const purchase = mediumPurchase(random)
      const what = JSON.stringify(purchase)
      const expected = lowestCosts(purchase)
      const orders = cheapestOrders(purchase, 2)!
      expect(
        orders.map(({ cost }) => cost),
        what,
      ).toEqual(expected)
      expect(
        orders.map(({ bags }) => costOf(purchase, bags)),
        what,
      ).toEqual(expected)
      expect(cheapestOrders(purchase, 1), what).toEqual(orders.slice(0, 1))
      for (const { bags, litres } of orders) {
        expect(litresOf(purchase, bags)).toBe(litres)
        expect(litres).toBeGreaterThanOrEqual(purchase.need)
      }
    }
  })

  test('of those with many ties, the two first of all orders are found', () => {
    const random = randomFrom(5)
    for (let instance = 0; instance < 50; instance++) {
      const purchase = tiedPurchase(random)
      const all = everyOrder(purchase)
      expect(cheapestOrders(purchase, 1), JSON.stringify(purchase)).toEqual(all.slice(0, 1))
      expect(cheapestOrders(purchase, 2), JSON.stringify(purchase)).toEqual(all.slice(0, 2))
    }
  })

  test('of small ones, the two first of all orders are found', () => {
    const random = randomFrom(3)
    // Those of which all orders are quickly listed.
    const purchases = Array.from({ length: 300 }, () => smallPurchase(random)).filter(
      ({ need, packs }) => (need + 12) ** packs.length < 8000,
    )
    expect(purchases.length).toBeGreaterThan(150)
    for (const purchase of purchases) {
      const all = everyOrder(purchase)
      expect(cheapestOrders(purchase, 1), JSON.stringify(purchase)).toEqual(all.slice(0, 1))
      expect(cheapestOrders(purchase, 2), JSON.stringify(purchase)).toEqual(all.slice(0, 2))
    }
  })
})

/** Up to five packs of nearly one price per litre, so that many counts of each are weighed. */
function mediumPurchase(random: (limit: number) => number): Purchase {
  const deliveries = Array.from({ length: 1 + random(3) }, () => random(3) * random(60))
  const packs = Array.from({ length: 1 + random(5) }, (): Pack => {
    const litres = 2 + random(11)
    const price = litres * 20 + random(9)
    return pack(litres, price, {
      ...(random(2) === 0 ? {} : { priceBreak: { from: 2 + random(25), price: price - random(litres * 3) } }),
      available: random(3) === 0 ? 1 + random(30) : Infinity,
      multiple: random(3) === 0 ? 1 + random(4) : 1,
      supplier: random(deliveries.length),
    })
  })
  return { need: 20 + random(150), packs, deliveries }
}

describe('the search', () => {
  test('is given up after so many partial orders, and finds the same with just as many as it needs', () => {
    const purchase = {
      need: 9,
      packs: [pack(1, 11, { priceBreak: { from: 10, price: 9 } }), pack(4, 40)],
      deliveries: [3],
    }
    const enough = Array.from({ length: 400 }, (_, most) => most).find(
      (most) => cheapestOrders(purchase, 2, most) !== undefined,
    )!
    expect(enough).toBeGreaterThan(20)
    expect(cheapestOrders(purchase, 2, enough)).toEqual(everyOrder(purchase).slice(0, 2))
    expect(cheapestOrders(purchase, 2, enough - 1)).toBeUndefined()
    expect(cheapestOrders({ need: 61, packs: [pack(60, 9)], deliveries: [0] }, 1, 5)).toBeUndefined()
    expect(mostLookedAt).toBe(500_000)
  })

  test('that would not end is given up', () => {
    // Six packs of one price per litre, of which all mixtures cost nearly the same.
    const packs = [60_123, 75_457, 90_781, 107_303, 45_007, 33_013].map((litres) => pack(litres, litres * 17))
    expect(cheapestOrders({ need: 99_999_001, packs, deliveries: [0] }, 1, 5000)).toBeUndefined()
  })

  test.each([
    // As measured when this was written. To need more would be slower, not wrong.
    [
      1,
      [
        [100, 16],
        [140, 44],
        [180, 63],
        [250, 84],
        [400, 94],
        [2100, 100],
      ],
    ],
    [
      2,
      [
        [100, 13],
        [140, 31],
        [180, 49],
        [250, 70],
        [400, 88],
        [2500, 100],
      ],
    ],
  ] as const)('for %i of the first orders of 100 random purchases few partial orders are enough', (howMany, proofs) => {
    const random = randomFrom(17)
    const purchases = Array.from({ length: 100 }, () => randomPurchase(random))
    for (const [most, atLeast] of proofs) {
      expect(
        purchases.filter((purchase) => cheapestOrders(purchase, howMany, most) !== undefined).length,
        `within ${most}`,
      ).toBeGreaterThanOrEqual(atLeast)
    }
  })
})

test('what can be had of a pack is whole multiples of it', () => {
  expect(litresToBeHad([pack(60, 1, { available: 7, multiple: 3 }), pack(10, 1, { available: 1 })])).toBe(370)
  expect(litresToBeHad([pack(60, 1)])).toBe(Infinity)
})

test('worth buying are as many bags as cover the need or reach the break, and one lot more', () => {
  expect(mostWorthBuying(pack(60, 9), 121)).toBe(4)
  expect(mostWorthBuying(pack(60, 9, { priceBreak: { from: 10, price: 8 } }), 121)).toBe(11)
  expect(mostWorthBuying(pack(60, 9, { priceBreak: { from: 10, price: 8 }, multiple: 4 }), 121)).toBe(16)
  expect(mostWorthBuying(pack(60, 9, { multiple: 4 }), 241)).toBe(12)
  expect(mostWorthBuying(pack(60, 9, { multiple: 4, available: 11 }), 241)).toBe(8)
})
