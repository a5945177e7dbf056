/** Periods and Timing: when a medium is needed, and the cheapest deliveries, by trying every choice of periods. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { timing } from '../../../../src/workbook/season/tables/answers'
import type { periods } from '../../../../src/workbook/season/tables/periods'
import { fraction, sum, type Fraction } from '../fraction'
import { keptOf, looseOf } from './media'
import type { MethodCosts } from './methods'
import type { Sticking } from './orders'
import { rowCalled, typed, type FiguresOf, type ResultsOf } from './typed'

export function timingOf(data: SeasonData, methods: readonly MethodCosts[], all: readonly Sticking[]) {
  const method = rowCalled(methods, 'name', data.timing.method)
  const medium = rowCalled(data.media, 'name', method.medium)
  const pack = looseOf(medium).times(keptOf(medium))
  const stuck = all.filter((sticking) => sticking.method.name === method.name)
  let containersSoFar = fraction(0)
  let packsBefore = fraction(0)
  const rows = data.periods.map(({ from, until }) => {
    const inside = stuck.filter(({ day }) => !day.isBelow(typed(from)) && day.isBelow(typed(until)))
    const containers = sum(inside.map(({ pieces }) => pieces))
    containersSoFar = containersSoFar.plus(containers)
    const packsSoFar = containersSoFar.times(method.shown.loose).over(pack).up()
    const packs = packsSoFar.minus(packsBefore)
    packsBefore = packsSoFar
    return { containers, packsSoFar, packs } satisfies ResultsOf<typeof periods>
  })
  return {
    rows,
    figures: {
      medium: String(medium.name),
      perContainer: method.shown.loose,
      pack,
      onHand: typed(medium.onHand, 0).over(looseOf(medium)).down(),
      missed: sum(stuck.map(({ pieces }) => pieces)).minus(containersSoFar),
    } satisfies FiguresOf<typeof timing>,
    plan: cheapestPlan(
      rows.map(({ packs }, index) => ({ need: packs, price: typed(data.periods[index]!.price) })),
      typed(data.timing.delivery),
      typed(data.timing.holding),
      typed(medium.onHand, 0).over(looseOf(medium)).down(),
    ),
  }
}

interface Period {
  readonly need: Fraction
  readonly price: Fraction
}

/** Each need that the stock leaves is bought where price and storage until then cost least, of the periods chosen. */
export function cheapestPlan(needs: readonly Period[], delivery: Fraction, holding: Fraction, onHand: Fraction) {
  let stock = onHand
  let stored = fraction(0)
  const open = needs.map(({ need, price }) => {
    const fromStock = stock.isBelow(need) ? stock : need
    stock = stock.minus(fromStock)
    stored = stored.plus(stock.times(holding))
    return { need: need.minus(fromStock), price }
  })
  const costOf = (chosen: readonly number[]) =>
    open.reduce<Fraction | undefined>((total, { need }, period) => {
      if (need.equals(0) || total === undefined) return total
      const prices = chosen
        .filter((from) => from <= period)
        .map((from) => open[from]!.price.plus(holding.times(period - from)))
      if (prices.length === 0) return undefined
      return total.plus(need.times(prices.reduce((low, price) => (price.isBelow(low) ? price : low))))
    }, delivery.times(chosen.length).plus(stored))
  return Array.from({ length: 2 ** open.length }, (_, bits) =>
    costOf(open.map((_row, period) => period).filter((period) => bits & (1 << period))),
  )
    .filter((cost) => cost !== undefined)
    .reduce((low, cost) => (cost.isBelow(low) ? cost : low))
}
