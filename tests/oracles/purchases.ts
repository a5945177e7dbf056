/** Random purchases, the same on every run, and the cost of an order by the words of the contract. */
import type { Order, Pack, Purchase } from '../../src/core/method/purchase'

/** Whole numbers below the limit, from a seed (mulberry32, public domain). */
export function randomFrom(seed: number): (limit: number) => number {
  let state = seed
  return (limit) => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit
  }
}

/** Up to six packs with breaks, limits and multiples from up to three suppliers, for 10 to 100,000 L. */
export function randomPurchase(random: (limit: number) => number): Purchase {
  const deliveries = Array.from({ length: 1 + random(3) }, () => (random(3) === 0 ? 0 : 1000 + random(9000)))
  const packs = Array.from({ length: 1 + random(6) }, (): Pack => {
    const litres = 10_000 + random(290) * 1000 + (random(2) === 0 ? random(1000) : 0)
    const price = Math.round((litres / 1000) * (14 + random(6)) * (1 + random(100) / 1000))
    return {
      litres,
      price,
      ...(random(3) === 0
        ? {}
        : { priceBreak: { from: 2 + random(200), price: Math.round(price * (0.8 + random(200) / 1000)) } }),
      available: random(3) === 0 ? 1 + random(500) : Infinity,
      multiple: random(3) === 0 ? 1 + random(20) : 1,
      supplier: random(deliveries.length),
    }
  })
  return { need: Math.round(10_000 * 10 ** (random(4001) / 1000)), packs, deliveries }
}

/** Small enough to try every order. */
export function smallPurchase(random: (limit: number) => number): Purchase {
  const deliveries = Array.from({ length: 1 + random(3) }, () => (random(2) === 0 ? 0 : random(25)))
  const packs = Array.from({ length: 1 + random(3) }, (): Pack => {
    const price = random(30)
    const breakPrice = random(4) === 0 ? random(30) : Math.max(0, price - random(6))
    return {
      litres: 1 + random(6),
      price,
      ...(random(2) === 0 ? {} : { priceBreak: { from: 1 + random(7), price: breakPrice } }),
      available: random(3) === 0 ? 1 + random(5) : Infinity,
      multiple: random(3) === 0 ? 1 + random(3) : 1,
      supplier: random(deliveries.length),
    }
  })
  return { need: 1 + random(20), packs, deliveries }
}

/** Four or five packs of which many orders cost, hold and count the same, so that partial orders are beaten by ties. */
export function tiedPurchase(random: (limit: number) => number): Purchase {
  const packs = Array.from({ length: 4 + random(2) }, (): Pack => {
    const litres = 1 + random(4)
    return {
      litres,
      price: 10 * litres + (random(4) === 0 ? 1 : 0),
      available: 2 + random(3),
      multiple: 1,
      supplier: 0,
    }
  })
  return { need: 5 + random(15), packs, deliveries: [0] }
}

export function costOf({ packs, deliveries }: Purchase, bags: readonly number[]): number {
  const goods = bags.reduce((sum, count, row) => {
    const { price, priceBreak } = packs[row]!
    return sum + count * (priceBreak !== undefined && count >= priceBreak.from ? priceBreak.price : price)
  }, 0)
  return deliveries.reduce(
    (sum, delivery, supplier) =>
      packs.some((pack, row) => pack.supplier === supplier && bags[row]! > 0) ? sum + delivery : sum,
    goods,
  )
}

export function litresOf({ packs }: Purchase, bags: readonly number[]): number {
  return bags.reduce((sum, count, row) => sum + count * packs[row]!.litres, 0)
}

/** Every order that covers, first the cheapest, then by the rule for ties. */
export function everyOrder(purchase: Purchase): readonly Order[] {
  const { need, packs } = purchase
  const orders: Order[] = []
  const extend = (bags: readonly number[]): void => {
    const pack = packs[bags.length]
    if (pack !== undefined) {
      for (let count = 0; count <= Math.min(pack.available, need + 12); count += pack.multiple) extend([...bags, count])
    } else if (litresOf(purchase, bags) >= need)
      orders.push({ bags, cost: costOf(purchase, bags), litres: litresOf(purchase, bags) })
  }
  extend([])
  const bagsIn = ({ bags }: Order) => bags.reduce((sum, count) => sum + count, 0)
  const byRows = (a: Order, b: Order) =>
    a.bags.map((count, row) => b.bags[row]! - count).find((difference) => difference !== 0) ?? 0
  return orders.sort((a, b) => a.cost - b.cost || a.litres - b.litres || bagsIn(a) - bagsIn(b) || byRows(a, b))
}

/** The arguments of BUYPLAN: litres and money, and a name for every row that tells it apart. */
export function argumentsOf({ need, packs, deliveries }: Purchase): readonly unknown[] {
  return [
    need / 1000,
    packs.map((_, row) => `pack ${row}`),
    packs.map(({ litres }) => litres / 1000),
    packs.map(({ price }) => price / 100),
    packs.map(({ priceBreak }) => priceBreak?.from ?? ''),
    packs.map(({ priceBreak }) => (priceBreak === undefined ? '' : priceBreak.price / 100)),
    packs.map(({ available }) => (available === Infinity ? '' : available)),
    packs.map(({ multiple }) => multiple),
    packs.map(({ supplier }) => `supplier ${supplier}`),
    packs.map(({ supplier }) => deliveries[supplier]! / 100),
  ]
}

/** The bags of each pack in a table of BUYPLAN. */
export function bagsIn(rows: readonly (readonly (number | string)[])[], { packs }: Purchase): readonly number[] {
  return packs.map((_, row) => Number(rows.find(([name]) => name === `pack ${row}`)?.[1] ?? 0))
}
