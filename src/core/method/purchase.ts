/**
 * What is to be bought and what is offered for it. Every amount is a whole number (of millilitres and cents, or of
 * finer units), so costs are compared exactly.
 */
export interface Pack {
  readonly litres: number
  readonly price: number
  /** From that many bags on, this is the price of every one of them. */
  readonly priceBreak?: { readonly from: number; readonly price: number }
  /** Bags that can be had; Infinity where nothing limits them. */
  readonly available: number
  /** Bags come in whole multiples of this. */
  readonly multiple: number
  /** The place of its supplier among the deliveries. */
  readonly supplier: number
}

export interface Purchase {
  /** Above 0. */
  readonly need: number
  readonly packs: readonly Pack[]
  /** What one order costs at each supplier, whatever its size. */
  readonly deliveries: readonly number[]
}

export interface Order {
  /** For each pack of the purchase. */
  readonly bags: readonly number[]
  readonly cost: number
  readonly litres: number
}

/** The bags that cost one price each, within one side of the break: from, to and all multiples between. */
export interface Tier {
  readonly from: number
  readonly to: number
  readonly price: number
}

/** The litres of everything that can be had. */
export function litresToBeHad(packs: readonly Pack[]): number {
  return packs.reduce(
    (sum, { available, multiple, litres }) => sum + Math.floor(available / multiple) * multiple * litres,
    0,
  )
}

/** The bags of a pack that can be worth buying: no more than cover the need alone, or reach the break. */
export function mostWorthBuying({ litres, multiple, priceBreak, available }: Pack, need: number): number {
  const covering = Math.ceil(need / (litres * multiple)) * multiple
  const reaching = priceBreak === undefined ? 0 : Math.ceil(priceBreak.from / multiple) * multiple
  // One multiple more than that is never the cheapest order, and may be the runner-up.
  return Math.min(Math.max(covering, reaching) + multiple, Math.floor(available / multiple) * multiple)
}

export function tiersOf(pack: Pack, need: number): readonly Tier[] {
  const { price, priceBreak, multiple } = pack
  const most = mostWorthBuying(pack, need)
  if (priceBreak === undefined) return [{ from: 0, to: most, price }]
  const reached = Math.ceil(priceBreak.from / multiple) * multiple
  const below: Tier = { from: 0, to: Math.min(most, reached - multiple), price }
  return reached > most ? [below] : [below, { from: reached, to: most, price: priceBreak.price }]
}

export function tierOf(tiers: readonly Tier[], count: number): number {
  return tiers.findIndex(({ to }) => count <= to)
}

export function costOf(tiers: readonly Tier[], count: number): number {
  return count * (tiers[tierOf(tiers, count)]?.price ?? 0)
}
