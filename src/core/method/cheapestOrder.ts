/**
 * The cheapest order of whole bags that covers a need, with its proof. Every amount is a whole number (of
 * millilitres and cents, or of finer units), so costs are compared exactly.
 *
 * Two things make the cost of an order jump: using a supplier at all, and reaching a price break. The search branches
 * on them, always where the least cost that is still possible is lowest. That least cost is the Lagrangian bound: with
 * a price for every litre that is missing, each supplier and each pack can be judged alone, and the price per litre
 * that gives the highest bound is used. Where the bound no longer mixes two sides of a jump, what is left has straight
 * prices, and the partial orders are listed pack by pack. A partial order is dropped only
 * - where what it costs above the bound already exceeds the limit, so no completion of it stays within the limit;
 * - where another one has the same litres and comes first in the order of `compare`, so the same completion of that
 *   one also comes first; or
 * - where another one has no fewer litres and costs less, so the same completion of that one costs less.
 * The limit starts close to the bound and is raised until an order is found. All orders within the limit were then
 * weighed, so the one found is the first of all, ties included. To find the two first orders, each of the three
 * rules asks for two such others.
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

/** Partial orders that are looked at before the search gives up, and branches at their worth: a count, so that no clock decides. */
export const mostLookedAt = 500_000

/** The first limit lies so little above the bound: where packs cost nearly the same, that is enough, and few orders are listed. */
const firstReach = 1

/** A branch costs about as much time as this many partial orders. */
const worthOfBranch = 20

/** The bags that cost one price each, within one side of the break: from, to and all multiples between. */
interface Tier {
  readonly from: number
  readonly to: number
  readonly price: number
}

/** An order that the bound mixes: the cheapest way for a given price per litre. */
interface Side {
  readonly cost: number
  readonly litres: number
  readonly bags: readonly number[]
}

interface Bound {
  readonly value: number
  readonly perLitre: number
  readonly low: Side
  readonly high: Side
}

interface Branch extends Bound {
  readonly tiers: readonly (readonly Tier[])[]
  /** For each supplier whether its delivery is paid; undefined where that is still open. */
  readonly paid: readonly (boolean | undefined)[]
  /** No order of this branch costs less. */
  readonly least: number
  /** How far above `least` the partial orders are listed next. */
  readonly reach: number
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

/**
 * @param howMany 1 for the cheapest order, 2 for the runner-up too.
 * @returns The first orders by cost, then litres, then bags, then more bags of the earlier packs; fewer than asked for
 * where there are no more; undefined where the search was given up.
 */
export function cheapestOrders(purchase: Purchase, howMany: 1 | 2, most = mostLookedAt): readonly Order[] | undefined {
  const { need, packs, deliveries } = purchase
  const packsOf = deliveries.map((_, supplier) =>
    packs.flatMap((pack, index) => (pack.supplier === supplier ? [index] : [])),
  )
  const allTiers = packs.map((pack) => tiersOf(pack, need))
  const undecidedSuppliers = deliveries.map((delivery) => (delivery > 0 ? undefined : true))
  const all = fullSide(allTiers, undecidedSuppliers)
  const dearestOfAll =
    deliveries.reduce((sum, delivery) => sum + delivery, 0) +
    allTiers.reduce((sum, tiers) => sum + Math.max(...tiers.map(({ to, price }) => to * price)), 0)
  const found: Order[] = []
  const queue: Branch[] = []
  let lookedAt = 0

  /** What an order may cost to be of interest. */
  const dearest = () => found[howMany - 1]?.cost ?? Infinity

  function sideAt(tiers: Branch['tiers'], paid: Branch['paid'], perLitre: number): Side {
    const bags = packs.map(() => 0)
    let [cost, litres] = [0, 0]
    deliveries.forEach((delivery, supplier) => {
      if (paid[supplier] === false) return
      let gain = delivery
      for (const pack of packsOf[supplier]!) {
        const { count, value } = cheapestCount(tiers[pack]!, packs[pack]!.litres, perLitre)
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

  function fullSide(tiers: Branch['tiers'], paid: Branch['paid']): Side {
    const bags = packs.map(({ supplier }, pack) => (paid[supplier] === false ? 0 : tiers[pack]!.at(-1)!.to))
    const cost = bags.reduce((sum, count, pack) => sum + costOf(tiers[pack]!, count), 0)
    const fees = deliveries.reduce((sum, delivery, supplier) => sum + (paid[supplier] === false ? 0 : delivery), 0)
    return { cost: cost + fees, litres: bags.reduce((sum, count, pack) => sum + count * packs[pack]!.litres, 0), bags }
  }

  /** Follows the bound to its highest point: the price per litre at which too few and enough litres cost the same. */
  function boundOf(tiers: Branch['tiers'], paid: Branch['paid']): Bound | undefined {
    let low = sideAt(tiers, paid, 0)
    if (low.litres >= need) return { value: low.cost, perLitre: 0, low, high: low }
    let high = fullSide(tiers, paid)
    if (high.litres < need) return undefined
    for (;;) {
      const perLitre = (high.cost - low.cost) / (high.litres - low.litres)
      const between = sideAt(tiers, paid, perLitre)
      if (between.litres <= low.litres || between.litres >= high.litres) {
        return { value: between.cost + perLitre * (need - between.litres), perLitre, low, high }
      }
      if (between.litres < need) low = between
      else high = between
    }
  }

  function push(branch: Branch): void {
    let place = queue.length
    while (place > 0 && queue[place - 1]!.least < branch.least) place--
    queue.splice(place, 0, branch)
  }

  function open(tiers: Branch['tiers'], paid: Branch['paid']): void {
    lookedAt += worthOfBranch
    const bound = boundOf(tiers, paid)
    if (bound === undefined) return
    const least = Math.ceil(bound.value - roundingOf(bound))
    push({ ...bound, tiers, paid, least, reach: firstReach })
  }

  /** What binary rounding may have added to a bound: far less than this, and to allow too much only costs time. */
  function roundingOf({ perLitre }: Bound): number {
    return 1e-12 * (dearestOfAll + perLitre * all.litres)
  }

  /** Lists the orders of a branch that cost no more than the limit. False where the search must be given up. */
  function listOrders(branch: Branch, limit: number): boolean {
    const { tiers, paid, value, perLitre } = branch
    const slack = limit - value + roundingOf(branch)
    const choices = packs.flatMap((pack, index) =>
      paid[pack.supplier] === false ? [] : [choiceOf(index, pack, tiers[index]!, perLitre, slack)],
    )
    choices.sort((a, b) => a.counts - b.counts)
    const last = choices.pop()!
    const fees = deliveries.reduce((sum, delivery, supplier) => sum + (paid[supplier] === true ? delivery : 0), 0)
    let partials: Partial[] = [{ litres: 0, cost: fees, total: 0, excess: 0, bags: packs.map(() => 0) }]
    for (const choice of choices) {
      const longer = choice.windows.flatMap((window) => extended(partials, choice, window, branch, slack))
      if (lookedAt > most) return false
      partials = withoutBeaten(
        longer.filter(({ cost }) => cost <= limit),
        howMany,
      )
    }
    for (const partial of partials) finish(partial, last.pack, tiers[last.pack]!, paid)
    return true
  }

  /**
   * Adds every count of the window to every partial order: first the count that lies closest to the bound, then steps
   * away from it of 1, 2, 4 and so on multiples, each taken or not. So a wide window takes few steps, and the partial
   * orders that are beaten fall away between them.
   */
  function extended(
    partials: readonly Partial[],
    { pack, least }: Choice,
    { from, to, price }: Tier,
    { perLitre }: Branch,
    slack: number,
  ): Partial[] {
    const { litres, multiple } = packs[pack]!
    const perBag = price - perLitre * litres
    const away = perBag < 0 ? -multiple : multiple
    const withMore = (list: readonly Partial[], count: number, excess: number): Partial[] => {
      lookedAt += list.length
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
    for (let step = 1; left > 0 && longer.length > 0 && lookedAt <= most; step *= 2) {
      const count = Math.min(step, left) * away
      longer = withoutBeaten([...longer, ...withMore(longer, count, perBag * count)], howMany)
      left -= Math.min(step, left)
    }
    return longer
  }

  /** Completes a partial order by the last pack: the fewest bags of each tier that cover, or the next after them. */
  function finish(partial: Partial, pack: number, tiers: readonly Tier[], paid: Branch['paid']): void {
    const { litres, multiple } = packs[pack]!
    const covering = Math.ceil(Math.max(need - partial.litres, 0) / (litres * multiple)) * multiple
    for (const { from, to, price } of tiers) {
      const fewest = Math.max(from, covering)
      for (let count = fewest; count < fewest + howMany * multiple && count <= to; count += multiple) {
        keep(
          {
            bags: withBags(partial.bags, pack, count),
            cost: partial.cost + price * count,
            litres: partial.litres + litres * count,
          },
          paid,
        )
      }
    }
  }

  function keep(order: Order, paid: Branch['paid']): void {
    // A delivery that is paid for nothing: the same order stands at its true cost in another branch.
    if (
      deliveries.some(
        (delivery, supplier) =>
          delivery > 0 && paid[supplier] === true && packsOf[supplier]!.every((pack) => order.bags[pack] === 0),
      )
    )
      return
    const place = found.findIndex((other) => compare(order, other) <= 0)
    if (place !== -1 && compare(order, found[place]!) === 0) return
    found.splice(place === -1 ? found.length : place, 0, order)
    found.splice(howMany)
  }

  open(allTiers, undecidedSuppliers)
  for (let branch = queue.pop(); branch !== undefined && branch.least <= dearest(); branch = queue.pop()) {
    const { tiers, paid, low, high, least, reach } = branch
    const undecided = paid.indexOf(undefined)
    const jumping = tiers.findIndex(
      (choice, pack) => tierOf(choice, low.bags[pack]!) !== tierOf(choice, high.bags[pack]!),
    )
    if (undecided !== -1) {
      open(tiers, replaced(paid, undecided, true))
      open(tiers, replaced(paid, undecided, false))
    } else if (jumping !== -1) {
      for (const tier of tiers[jumping]!) open(replaced(tiers, jumping, [tier]), paid)
    } else {
      const limit = Math.min(dearest(), least + reach)
      if (!listOrders(branch, limit)) return undefined
      if (limit < dearestOfAll) push({ ...branch, least: limit + 1, reach: reach * 4 })
    }
    if (lookedAt > most) return undefined
  }
  return found
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

function tiersOf(pack: Pack, need: number): readonly Tier[] {
  const { price, priceBreak, multiple } = pack
  const most = mostWorthBuying(pack, need)
  if (priceBreak === undefined) return [{ from: 0, to: most, price }]
  const reached = Math.ceil(priceBreak.from / multiple) * multiple
  const below: Tier = { from: 0, to: Math.min(most, reached - multiple), price }
  return reached > most ? [below] : [below, { from: reached, to: most, price: priceBreak.price }]
}

function tierOf(tiers: readonly Tier[], count: number): number {
  return tiers.findIndex(({ to }) => count <= to)
}

function costOf(tiers: readonly Tier[], count: number): number {
  return count * (tiers[tierOf(tiers, count)]?.price ?? 0)
}

/** Within a tier the value is straight, so an end is the least. */
function cheapestCount(
  tiers: readonly Tier[],
  litres: number,
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

interface Choice {
  readonly pack: number
  readonly windows: readonly Tier[]
  readonly least: number
  readonly counts: number
}

/** The counts of a pack that do not exceed the slack on their own. */
function choiceOf(
  pack: number,
  { litres, multiple }: Pack,
  tiers: readonly Tier[],
  perLitre: number,
  slack: number,
): Choice {
  const least = cheapestCount(tiers, litres, perLitre).value
  const windows = tiers.flatMap(({ from, to, price }): Tier[] => {
    const perBag = price - perLitre * litres
    const end = perBag < 0 ? to : from
    const left = slack - (perBag * end - least)
    if (left < 0) return []
    // One multiple more than fits, since the division may round; what exceeds the slack is dropped later.
    const away = perBag === 0 ? to - from : (Math.floor(left / (Math.abs(perBag) * multiple)) + 1) * multiple
    return [
      perBag < 0 ? { from: Math.max(from, to - away), to, price } : { from, to: Math.min(to, from + away), price },
    ]
  })
  return { pack, windows, least, counts: windows.reduce((sum, { from, to }) => sum + (to - from) / multiple + 1, 0) }
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

function withBags(bags: readonly number[], pack: number, count: number): readonly number[] {
  const more = bags.slice()
  more[pack]! += count
  return more
}

function replaced<T>(list: readonly T[], place: number, by: T): readonly T[] {
  return list.map((one, index) => (index === place ? by : one))
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
