/**
 * The least that an order can cost once some things are decided: the Lagrangian bound. With a price for every litre
 * that is missing, each supplier and each pack is judged alone; the price per litre that gives the highest bound is
 * used. At that price the bound mixes two orders, one with too few litres and one with enough.
 */
import { costOf, type Pack, type Purchase, type Tier } from './purchase'

/** The cost jumps where a supplier is used at all and where a price break is reached: what is decided of that. */
export interface Decided {
  /** For each pack, the sides of its break that are open. */
  readonly tiers: readonly (readonly Tier[])[]
  /** For each supplier whether its delivery is paid; undefined where that is still open. */
  readonly paid: readonly (boolean | undefined)[]
}

/** An order that the bound mixes: the cheapest way for a given price per litre. */
interface Side {
  readonly cost: number
  readonly litres: number
  readonly bags: readonly number[]
}

export interface Bound {
  readonly value: number
  readonly perLitre: number
  readonly low: Side
  readonly high: Side
}

/**
 * Follows the bound to its highest point: the price per litre at which too few and enough litres cost the same.
 *
 * @param packsOf For each supplier, the places of its packs.
 */
export function boundOf(
  purchase: Purchase,
  packsOf: readonly (readonly number[])[],
  decided: Decided,
): Bound | undefined {
  const { need } = purchase
  let low = sideAt(purchase, packsOf, decided, 0)
  if (low.litres >= need) return { value: low.cost, perLitre: 0, low, high: low }
  let high = fullSide(purchase, decided)
  if (high.litres < need) return undefined
  for (;;) {
    const perLitre = (high.cost - low.cost) / (high.litres - low.litres)
    const between = sideAt(purchase, packsOf, decided, perLitre)
    if (between.litres <= low.litres || between.litres >= high.litres) {
      return { value: between.cost + perLitre * (need - between.litres), perLitre, low, high }
    }
    if (between.litres < need) low = between
    else high = between
  }
}

/** All that may be worth buying. */
export function fullSide({ packs, deliveries }: Purchase, { tiers, paid }: Decided): Side {
  const bags = packs.map(({ supplier }, pack) => (paid[supplier] === false ? 0 : tiers[pack]!.at(-1)!.to))
  const cost = bags.reduce((sum, count, pack) => sum + costOf(tiers[pack]!, count), 0)
  const fees = deliveries.reduce((sum, delivery, supplier) => sum + (paid[supplier] === false ? 0 : delivery), 0)
  return { cost: cost + fees, litres: bags.reduce((sum, count, pack) => sum + count * packs[pack]!.litres, 0), bags }
}

/** A supplier whose delivery is open is used where its packs save more than that costs. */
function sideAt(
  { packs, deliveries }: Purchase,
  packsOf: readonly (readonly number[])[],
  { tiers, paid }: Decided,
  perLitre: number,
): Side {
  const bags = packs.map(() => 0)
  let [cost, litres] = [0, 0]
  deliveries.forEach((delivery, supplier) => {
    if (paid[supplier] === false) return
    let gain = delivery
    for (const pack of packsOf[supplier]!) {
      const { count, value } = cheapestCount(tiers[pack]!, packs[pack]!, perLitre)
      bags[pack] = count
      gain += value
    }
    if (paid[supplier] === undefined && gain >= 0) {
      for (const pack of packsOf[supplier]!) bags[pack] = 0
      return
    }
    cost += delivery
    for (const pack of packsOf[supplier]!) {
      cost += costOf(tiers[pack]!, bags[pack]!)
      litres += bags[pack]! * packs[pack]!.litres
    }
  })
  return { cost, litres, bags }
}

/** For each supplier, the places of its packs. */
export function packsBySupplier({ packs, deliveries }: Purchase): readonly (readonly number[])[] {
  return deliveries.map((_, supplier) => packs.flatMap((pack, index) => (pack.supplier === supplier ? [index] : [])))
}

/** Within a tier the value is straight, so an end is the least. */
export function cheapestCount(
  tiers: readonly Tier[],
  { litres }: Pack,
  perLitre: number,
): { readonly count: number; readonly value: number } {
  let [count, value] = [0, Infinity]
  for (const { from, to, price } of tiers) {
    const perBag = price - perLitre * litres
    const end = perBag < 0 ? to : from
    if (perBag * end < value) [count, value] = [end, perBag * end]
  }
  return { count, value }
}
