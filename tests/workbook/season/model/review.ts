/** Review: what was used and paid against what the workbook allows; price and usage apart. Positive is adverse. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { review } from '../../../../src/workbook/season/tables/review'
import type { Fraction } from '../fraction'
import { typed, type ResultsOf } from './typed'

/** What is allowed of an item, in its unit, and what one costs. */
export interface Standard {
  readonly quantity: Fraction
  readonly price: Fraction
}

export function reviewOf(row: SeasonData['review'][number], { quantity, price }: Standard) {
  const [actualQuantity, actualPrice] = [typed(row.actualQuantity), typed(row.actualPrice, 0)]
  const [standard, actual] = [quantity.times(price), actualQuantity.times(actualPrice)]
  const total = actual.minus(standard)
  return {
    standardQuantity: quantity,
    standardPrice: price,
    standard,
    actual,
    price: actualPrice.minus(price).times(actualQuantity),
    usage: actualQuantity.minus(quantity).times(price),
    total,
    reads: total.equals(0) ? 'as allowed' : total.isBelow(0) ? 'favourable' : 'adverse',
  } satisfies ResultsOf<typeof review>
}
