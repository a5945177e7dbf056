/** Cheapest: the order of one medium that costs least, by trying every number of packs of each offer. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { cheapest } from '../../../../src/workbook/season/tables/answers'
import { fraction, sum, type Fraction } from '../fraction'
import type { mediumNeeds } from './media'
import { rowCalled, typed, type FiguresOf } from './typed'

type Offer = SeasonData['offers'][number]

function costOf(offer: Offer, packs: number): Fraction {
  const hasBreak = offer.breakFrom !== undefined && packs >= Number(offer.breakFrom)
  return typed(hasBreak ? offer.breakPrice : offer.price).times(packs)
}

/** Delivery is paid once for each supplier used: here the dearest of its rows. */
function deliveryOf(offers: readonly Offer[], packs: readonly number[]): Fraction {
  const used = offers.filter((_, index) => packs[index]! > 0)
  const suppliers = [...new Set(used.map(({ supplier }) => supplier))]
  return sum(suppliers.map((supplier) => typed(rowCalled(used, 'supplier', supplier).delivery, 0)))
}

/** @param needed Litres. */
export function leastCost(offers: readonly Offer[], needed: Fraction): Fraction {
  let least: Fraction | undefined
  const tryFrom = (index: number, packs: readonly number[], covered: Fraction, paid: Fraction): void => {
    if (least !== undefined && !paid.isBelow(least)) return
    const offer = offers[index]
    if (offer === undefined) {
      if (covered.isBelow(needed)) return
      const cost = paid.plus(deliveryOf(offers, packs))
      if (least === undefined || cost.isBelow(least)) least = cost
      return
    }
    const step = Number(offer.multiple ?? 1)
    /** A price break may make more packs than needed the cheaper order. */
    const most = Math.max(
      Number(needed.over(typed(offer.litres)).up().above) + step,
      Number(offer.breakFrom ?? 0) + step,
    )
    for (let count = 0; count <= Math.min(most, Number(offer.available ?? most)); count += step)
      tryFrom(
        index + 1,
        [...packs, count],
        covered.plus(typed(offer.litres).times(count)),
        paid.plus(costOf(offer, count)),
      )
  }
  tryFrom(0, [], fraction(0), fraction(0))
  return least!
}

export function cheapestOf(data: SeasonData, medium: ReturnType<typeof mediumNeeds>, onHand: Fraction) {
  const needed = medium.withWaste.minus(onHand).atLeast(0)
  const offers = data.offers.filter((offer) => offer.medium === data.cheapest.medium)
  const planned = leastCost(offers, needed)
  return {
    needed,
    listed: medium.cost,
    planned,
    saved: medium.cost.minus(planned),
  } satisfies FiguresOf<typeof cheapest>
}
