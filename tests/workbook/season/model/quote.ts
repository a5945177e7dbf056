/** Quote: what a saleable liner costs over all its stages, and what to ask for it. Each stage is paid for all that enter it. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { quoting } from '../../../../src/workbook/season/tables/answers'
import { fraction, product, sum, type Fraction } from '../fraction'
import { blendOf } from './blends'
import type { MethodCosts } from './methods'
import type { Setup } from './setup'
import { rowCalled, typed, type FiguresOf } from './typed'

const without = (share: Fraction): Fraction => fraction(1).minus(share)

/** The prices at each quantity of Breaks. */
export function quotedAt(data: SeasonData, floor: Fraction) {
  const { quote, breaks } = data
  return breaks.map(({ quantity, margin }) => {
    const cost = floor.plus(typed(quote.fixed).over(typed(quantity)))
    const each = cost.over(without(typed(margin))).upTo(typed(quote.step))
    return { quantity: typed(quantity), each, total: each.times(typed(quantity)), margin: without(cost.over(each)) }
  })
}

export function quoteOf(data: SeasonData, methods: readonly MethodCosts[], setup: Setup) {
  const { quote } = data
  const method = rowCalled(methods, 'name', quote.method)
  const loose = typed(quote.potMl)
    .over(1000)
    .over(without(typed(quote.settle)).times(without(typed(quote.spill))))
  const blend = blendOf(rowCalled(data.blends, 'name', quote.blend), data, setup)
  const labour = (perHour: Fraction) => setup.hourCost.over(perHour)
  const room = setup.benchRate.over(typed(data.setup.benchUse)).over(typed(quote.growingPerM2))
  const [strike, pottingOn, passes] = [method.typed.strike, method.typed.pottingOn, method.typed.grading].map((rate) =>
    typed(rate),
  ) as [Fraction, Fraction, Fraction]
  const growingRate = typed(quote.growingRate)
  const gradingRate = passes.over(growingRate)
  const rooting = method.shown.cost
  const potting = sum([typed(quote.pot), loose.times(blend.litre), labour(typed(quote.pottedPerHour))])
  const growing = sum([
    typed(quote.growingMaterial),
    labour(typed(quote.tendedPerHour)),
    typed(quote.growingWeeks).times(room),
  ])
  const grading = typed(quote.label).plus(labour(typed(quote.gradedPerHour)))
  const later = sum([
    potting.over(product([pottingOn, growingRate, gradingRate])),
    growing.over(growingRate.times(gradingRate)),
    grading.over(gradingRate),
  ])
  const floor = rooting.over(product([strike, pottingOn, growingRate, gradingRate])).plus(later)
  const price = floor.over(without(typed(quote.margin))).upTo(typed(quote.step))
  const liners = typed(quote.liners)
  const orderFloor = floor.plus(typed(quote.fixed).over(liners))
  const leastPrice = orderFloor.over(without(typed(quote.leastMargin))).upTo(typed(quote.step))
  return {
    rooting,
    potting,
    growing,
    grading,
    gradingRate,
    floor,
    later,
    price,
    markup: price.over(floor).minus(1),
    orderFloor,
    leastPrice,
    ...discountOf(data, floor, orderFloor, leastPrice),
  } satisfies FiguresOf<typeof quoting>
}

/** What is left of the list price, which is that of the largest quantity that the order reaches. */
function discountOf(data: SeasonData, floor: Fraction, orderFloor: Fraction, leastPrice: Fraction) {
  const { quote } = data
  const liners = typed(quote.liners)
  const row = quotedAt(data, floor)
    .filter(({ quantity }) => !liners.isBelow(quantity))
    .sort((one, other) => Number(other.quantity.minus(one.quantity).above))[0]
  if (row === undefined)
    return {
      reached: fraction(0),
      listed: 'no price break applies',
      lessened: 'no price break applies',
      marginLeft: '–',
      moneyLeft: '–',
      largestDiscount: '–',
      answer: 'Fewer than any quantity on Breaks',
    }
  const lessened = row.each.times(without(typed(quote.discount))).upTo(typed(quote.step))
  return {
    reached: row.quantity,
    listed: row.each,
    lessened,
    marginLeft: without(orderFloor.over(lessened)),
    moneyLeft: lessened.minus(orderFloor).times(liners),
    largestDiscount: without(leastPrice.over(row.each)).atLeast(0),
    answer: lessened.isBelow(orderFloor)
      ? 'No: below the floor'
      : lessened.isBelow(leastPrice)
        ? `Offer ${leastPrice.toNumber().toFixed(2)}`
        : 'Take it',
  }
}
