/** Surplus: the number of cuttings that earns most, by trying one number after the other. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { surplus } from '../../../../src/workbook/season/tables/answers'
import { fraction, type Fraction } from '../fraction'
import { chances } from './chance'
import type { OrderRow } from './orders'
import { rowCalled, typed, type FiguresOf } from './typed'

interface Worth {
  readonly lost: number
  readonly value: number
  readonly cost: number
}

/** What n cuttings earn on average. */
function earnedBy(n: number, liners: number, rate: number, spread: number, { lost, value, cost }: Worth): number {
  let earned = 0
  chances(n, rate, spread).forEach((chance, alive) => {
    earned += chance * (lost * Math.min(alive, liners) + value * Math.max(alive - liners, 0))
  })
  return earned - cost * n
}

/** @param price Of a liner, and what it costs after rooting: both from Quote. */
export function surplusOf(data: SeasonData, orders: readonly OrderRow[], price: Fraction, later: Fraction) {
  const {
    typed: order,
    shown,
    spread,
  } = rowCalled(
    orders.map((each) => ({ ...each, line: each.typed.line })),
    'line',
    data.surplus.line,
  )
  const lost = price.minus(later).plus(typed(data.surplus.penalty))
  const worth = {
    lost: lost.toNumber(),
    value: Number(data.surplus.value),
    cost: shown.costPerCutting.toNumber(),
  }
  const liners = Number(order.liners)
  const earned = (n: number) => earnedBy(n, liners, shown.rate.toNumber(), spread, worth)
  const best = (from: number, to: number, step: number) => {
    let found = { n: from, earned: earned(from) }
    for (let n = from + step; n <= to; n += step) {
      const now = earned(n)
      if (now > found.earned) found = { n, earned: now }
    }
    return found.n
  }
  // What is earned has one summit: every fiftieth number finds it, and then each number around that one is tried.
  const near = best(0, 3 * liners, 50)
  const pays = fraction(best(Math.max(0, near - 50), near + 50, 1))
  return {
    lost,
    pays,
    planned: shown.cuttings,
    more: pays.minus(shown.cuttings),
  } satisfies FiguresOf<typeof surplus>
}
