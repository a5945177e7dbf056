/**
 * The cheapest order of whole bags that covers a need, with its proof.
 *
 * Two things make the cost of an order jump: using a supplier at all, and reaching a price break. The search branches
 * on them, always where the least cost that is still possible is lowest, which is the bound of orderBound.ts. Where
 * the bound no longer mixes two sides of a jump, what is left has straight prices, and orderList.ts lists the partial
 * orders pack by pack. A partial order is dropped only
 * - where what it costs above the bound already exceeds the limit, so no completion of it stays within the limit;
 * - where another one has the same litres and comes first in the order of `compare`, so the same completion of that
 *   one also comes first; or
 * - where another one has no fewer litres and costs less, so the same completion of that one costs less.
 * The limit starts close to the bound and is raised until an order is found. All orders within the limit were then
 * weighed, so the one found is the first of all, ties included. To find the two first orders, each of the three
 * rules asks for two such others.
 */
import { boundOf, fullSide, packsBySupplier, type Bound, type Decided } from './orderBound'
import { listOrders, type Search } from './orderList'
import { tierOf, tiersOf, type Order, type Purchase } from './purchase'

/** Partial orders that are looked at before the search gives up, and branches at their worth: a count, so that no clock decides. */
export const mostLookedAt = 500_000

/** The first limit lies so little above the bound: where packs cost nearly the same, that is enough, and few orders are listed. */
const firstReach = 1

/** A branch costs about as much time as this many partial orders. */
const worthOfBranch = 20

interface Branch extends Bound, Decided {
  /** What binary rounding may have added to the bound: far less than this, and to allow too much only costs time. */
  readonly rounding: number
  /** No order of this branch costs less. */
  readonly least: number
  /** How far above `least` the partial orders are listed next. */
  readonly reach: number
}

/**
 * @param howMany 1 for the cheapest order, 2 for the runner-up too.
 * @returns The first orders by cost, then litres, then bags, then more bags of the earlier packs; fewer than asked for
 * where there are no more; undefined where the search was given up.
 */
export function cheapestOrders(purchase: Purchase, howMany: 1 | 2, most = mostLookedAt): readonly Order[] | undefined {
  const { need, packs, deliveries } = purchase
  const search: Search = { purchase, howMany, found: [], lookedAt: 0, most }
  const queue: Branch[] = []
  const packsOf = packsBySupplier(purchase)
  const nothingDecided: Decided = {
    tiers: packs.map((pack) => tiersOf(pack, need)),
    paid: deliveries.map((delivery) => (delivery > 0 ? undefined : true)),
  }
  const dearestOfAll = costOfAllAtMost(purchase, nothingDecided)
  const litresOfAll = fullSide(purchase, nothingDecided).litres

  function open(decided: Decided): void {
    search.lookedAt += worthOfBranch
    const bound = boundOf(purchase, packsOf, decided)
    if (bound === undefined) return
    const rounding = 1e-12 * (dearestOfAll + bound.perLitre * litresOfAll)
    queueUp(queue, { ...bound, ...decided, rounding, least: Math.ceil(bound.value - rounding), reach: firstReach })
  }

  /** What an order may cost to be of interest. */
  const dearest = () => search.found[howMany - 1]?.cost ?? Infinity

  open(nothingDecided)
  for (let branch = queue.pop(); branch !== undefined && branch.least <= dearest(); branch = queue.pop()) {
    const sides = sidesOfJump(branch)
    if (sides !== undefined) sides.forEach(open)
    else {
      const limit = Math.min(dearest(), branch.least + branch.reach)
      if (!listOrders(search, branch, limit, limit - branch.value + branch.rounding)) return undefined
      if (limit < dearestOfAll) queueUp(queue, { ...branch, least: limit + 1, reach: branch.reach * 4 })
    }
    if (search.lookedAt > most) return undefined
  }
  return search.found
}

/** The two ways on, where the bound of a branch still mixes both sides of a jump. */
function sidesOfJump({ tiers, paid, low, high }: Branch): readonly Decided[] | undefined {
  const undecided = paid.indexOf(undefined)
  if (undecided !== -1) return [true, false].map((isPaid) => ({ tiers, paid: replaced(paid, undecided, isPaid) }))
  const jumping = tiers.findIndex(
    (choice, pack) => tierOf(choice, low.bags[pack]!) !== tierOf(choice, high.bags[pack]!),
  )
  return tiers[jumping]?.map((tier) => ({ tiers: replaced(tiers, jumping, [tier]), paid }))
}

/** The branch with the lowest bound stands last, and comes next. */
function queueUp(queue: Branch[], branch: Branch): void {
  let place = queue.length
  while (place > 0 && queue[place - 1]!.least < branch.least) place--
  queue.splice(place, 0, branch)
}

function costOfAllAtMost({ deliveries }: Purchase, { tiers }: Decided): number {
  return (
    deliveries.reduce((sum, delivery) => sum + delivery, 0) +
    tiers.reduce((sum, ofPack) => sum + Math.max(...ofPack.map(({ to, price }) => to * price)), 0)
  )
}

function replaced<T>(list: readonly T[], place: number, by: T): readonly T[] {
  return list.map((one, index) => (index === place ? by : one))
}
