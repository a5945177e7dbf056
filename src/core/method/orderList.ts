/**
 * Lists the orders of one branch of the search that cost no more than a limit, pack by pack. What is left there has
 * straight prices. A partial order is dropped only for the three reasons in the header of cheapestOrder.ts.
 */
import { cheapestCount, type Bound, type Decided } from './orderBound'
import type { Order, Pack, Purchase, Tier } from './purchase'

/** What the search has found so far, and how long it has looked. */
export interface Search {
  readonly purchase: Purchase
  /** So many of the first orders are asked for. */
  readonly howMany: 1 | 2
  /** The first orders so far. */
  readonly found: Order[]
  /** Partial orders, and branches at their worth. */
  lookedAt: number
  /** Having looked at more than that, it gives up. */
  readonly most: number
}

interface Partial {
  readonly litres: number
  readonly cost: number
  readonly total: number
  /** What it costs above the bound. */
  readonly excess: number
  /** For each pack of the purchase; 0 for those that are yet to come. */
  readonly bags: readonly number[]
}

/** The counts of one tier that are tried. */
interface Window extends Tier {
  /** What a bag more adds to the bound's cost: its price less what its litres are worth. */
  readonly perBag: number
}

interface Choice {
  readonly pack: number
  readonly windows: readonly Window[]
  readonly least: number
  readonly counts: number
}

/** @param slack What an order may cost above the bound. @returns False where the search must be given up. */
export function listOrders(search: Search, branch: Bound & Decided, limit: number, slack: number): boolean {
  const { purchase, howMany, most } = search
  const { packs, deliveries } = purchase
  const { tiers, paid, perLitre } = branch
  const choices = packs.flatMap((pack, index) =>
    paid[pack.supplier] === false ? [] : [choiceOf(index, pack, tiers[index]!, perLitre, slack)],
  )
  choices.sort((a, b) => a.counts - b.counts)
  const last = choices.pop()!
  const fees = deliveries.reduce((sum, delivery, supplier) => sum + (paid[supplier] === true ? delivery : 0), 0)
  let partials: Partial[] = [{ litres: 0, cost: fees, total: 0, excess: 0, bags: packs.map(() => 0) }]
  for (const choice of choices) {
    const longer = choice.windows.flatMap((window) => extended(search, partials, choice, window, slack))
    if (search.lookedAt > most) return false
    partials = withoutBeaten(
      longer.filter(({ cost }) => cost <= limit),
      howMany,
    )
  }
  for (const partial of partials) finish(search, partial, last.pack, branch)
  return true
}

/** The counts of a pack that do not exceed the slack on their own. */
function choiceOf(index: number, pack: Pack, tiers: readonly Tier[], perLitre: number, slack: number): Choice {
  const { litres, multiple } = pack
  const least = cheapestCount(tiers, pack, perLitre).value
  const windows = tiers.flatMap(({ from, to, price }): Window[] => {
    const perBag = price - perLitre * litres
    const end = perBag < 0 ? to : from
    const left = slack - (perBag * end - least)
    if (left < 0) return []
    // One multiple more than fits, since the division may round; what exceeds the slack is dropped later.
    const away = perBag === 0 ? to - from : (Math.floor(left / (Math.abs(perBag) * multiple)) + 1) * multiple
    return perBag < 0
      ? [{ from: Math.max(from, to - away), to, price, perBag }]
      : [{ from, to: Math.min(to, from + away), price, perBag }]
  })
  const counts = windows.reduce((sum, { from, to }) => sum + (to - from) / multiple + 1, 0)
  return { pack: index, windows, least, counts }
}

/**
 * Adds every count of the window to every partial order: first the count that lies closest to the bound, then steps
 * away from it of 1, 2, 4 and so on multiples, each taken or not. So a wide window takes few steps, and the partial
 * orders that are beaten fall away between them.
 */
function extended(
  search: Search,
  partials: readonly Partial[],
  { pack, least }: Choice,
  { from, to, price, perBag }: Window,
  slack: number,
): Partial[] {
  const { litres, multiple } = search.purchase.packs[pack]!
  const away = perBag < 0 ? -multiple : multiple
  const withMore = (list: readonly Partial[], count: number, excess: number): Partial[] => {
    search.lookedAt += list.length
    return list
      .filter((one) => one.excess + excess <= slack)
      .map((one) => ({
        litres: one.litres + litres * count,
        cost: one.cost + price * count,
        total: one.total + count,
        excess: one.excess + excess,
        bags: withBags(one.bags, pack, count),
      }))
  }
  const closest = perBag < 0 ? to : from
  let longer = withMore(partials, closest, perBag * closest - least)
  let left = (to - from) / multiple
  for (let step = 1; left > 0 && longer.length > 0 && search.lookedAt <= search.most; step *= 2) {
    const count = Math.min(step, left) * away
    longer = withoutBeaten([...longer, ...withMore(longer, count, perBag * count)], search.howMany)
    left -= Math.min(step, left)
  }
  return longer
}

function withoutBeaten(partials: Partial[], howMany: 1 | 2): Partial[] {
  partials.sort((a, b) => b.litres - a.litres || a.cost - b.cost || a.total - b.total || compareBags(a.bags, b.bags))
  const kept: Partial[] = []
  // The lowest costs so far, of orders with no fewer litres.
  const lowest = Array<number>(howMany).fill(Infinity)
  let [before, withSameLitres]: [Partial | undefined, number] = [undefined, 0]
  for (const partial of partials) {
    const sameLitres = partial.litres === before?.litres
    // Different steps may add up to the same order.
    if (sameLitres && compareBags(partial.bags, before!.bags) === 0) continue
    withSameLitres = sameLitres ? withSameLitres + 1 : 1
    before = partial
    if (withSameLitres > howMany || partial.cost > lowest[howMany - 1]!) continue
    kept.push(partial)
    lowest.push(partial.cost)
    lowest.sort((a, b) => a - b).pop()
  }
  return kept
}

/** Completes a partial order by the last pack: the fewest bags of each tier that cover, or the next after them. */
function finish(search: Search, partial: Partial, pack: number, { tiers, paid }: Decided): void {
  const { purchase, howMany } = search
  const { litres, multiple } = purchase.packs[pack]!
  const covering = Math.ceil(Math.max(purchase.need - partial.litres, 0) / (litres * multiple)) * multiple
  for (const { from, to, price } of tiers[pack]!) {
    const fewest = Math.max(from, covering)
    for (let count = fewest; count < fewest + howMany * multiple && count <= to; count += multiple) {
      const order = {
        bags: withBags(partial.bags, pack, count),
        cost: partial.cost + price * count,
        litres: partial.litres + litres * count,
      }
      // A delivery that is paid for nothing: the same order stands at its true cost in another branch.
      if (!paysForNothing(order, purchase, paid)) keep(order, search)
    }
  }
}

function paysForNothing({ bags }: Order, { packs, deliveries }: Purchase, paid: Decided['paid']): boolean {
  return deliveries.some(
    (delivery, supplier) =>
      delivery > 0 &&
      paid[supplier] === true &&
      packs.every((pack, at) => pack.supplier !== supplier || bags[at] === 0),
  )
}

function keep(order: Order, { found, howMany }: Search): void {
  const place = found.findIndex((other) => compare(order, other) <= 0)
  if (place !== -1 && compare(order, found[place]!) === 0) return
  found.splice(place === -1 ? found.length : place, 0, order)
  found.splice(howMany)
}

function withBags(bags: readonly number[], pack: number, count: number): readonly number[] {
  const more = bags.slice()
  more[pack]! += count
  return more
}

/** Which of two orders comes first: the cheaper, the one with less left over, with fewer bags, with more of the earlier packs. */
function compare(a: Order, b: Order): number {
  return a.cost - b.cost || a.litres - b.litres || total(a.bags) - total(b.bags) || compareBags(a.bags, b.bags)
}

function compareBags(a: readonly number[], b: readonly number[]): number {
  for (let pack = 0; pack < a.length; pack++) if (a[pack] !== b[pack]) return b[pack]! - a[pack]!
  return 0
}

function total(bags: readonly number[]): number {
  return bags.reduce((sum, count) => sum + count, 0)
}
