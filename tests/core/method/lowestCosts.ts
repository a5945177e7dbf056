import type { Purchase } from '../../../src/core/method/purchase'

/**
 * What the cheapest order costs, and the cheapest other one: by dynamic programming over the litres, litre by litre
 * and pack by pack, without any bound. For purchases of some hundred litres.
 */
export function lowestCosts({ need, packs, deliveries }: Purchase): readonly number[] {
  let reached = new Lowest(need)
  reached.take(0, 0)
  deliveries.forEach((delivery, supplier) => {
    let used = new Lowest(need)
    for (const { litres, price, priceBreak, available, multiple } of packs.filter(
      (pack) => pack.supplier === supplier,
    )) {
      const longer = used.copy()
      // Beyond the need and the break, more than one lot more is never among the first two.
      const most = Math.min(available, Math.max(Math.ceil(need / litres), priceBreak?.from ?? 0) + 2 * multiple)
      for (let bags = multiple; bags <= most; bags += multiple) {
        const cost = bags * (priceBreak !== undefined && bags >= priceBreak.from ? priceBreak.price : price)
        longer.takeAll(used, bags * litres, cost)
        longer.takeAll(reached, bags * litres, cost)
      }
      used = longer
    }
    const after = reached.copy()
    after.takeAll(used, 0, delivery)
    reached = after
  })
  return [reached.first[need]!, reached.second[need]!].filter(Number.isFinite)
}

/** For each number of litres, at most the need, the two lowest costs of different orders that give it. */
class Lowest {
  first: number[]
  second: number[]

  constructor(need: number) {
    this.first = Array<number>(need + 1).fill(Infinity)
    this.second = [...this.first]
  }

  copy(): Lowest {
    const copy = new Lowest(0)
    copy.first = [...this.first]
    copy.second = [...this.second]
    return copy
  }

  take(litres: number, cost: number): void {
    if (cost < this.first[litres]!) [this.second[litres], this.first[litres]] = [this.first[litres]!, cost]
    else if (cost < this.second[litres]!) this.second[litres] = cost
  }

  takeAll(others: Lowest, litresMore: number, costMore: number): void {
    const need = others.first.length - 1
    for (let litres = 0; litres <= need; litres++) {
      const after = Math.min(need, litres + litresMore)
      this.take(after, others.first[litres]! + costMore)
      this.take(after, others.second[litres]! + costMore)
    }
  }
}
