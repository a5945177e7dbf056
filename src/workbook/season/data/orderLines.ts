import { serialOf } from '../../../core/quantity/day'
import type { Typed } from '../table/tableSheet'
import type { orders } from '../tables/orders'

/** An order line as one row of a list: its rates are strike, potting on and grading; the day as year-month-day. */
export type Line = readonly [
  line: string | number,
  species: string,
  liners: number,
  delivery: string,
  method: string,
  weeks: number,
  rates: readonly [number, number, number],
  confidence?: number,
  spread?: number,
]

export function orderLines(lines: readonly Line[]): Typed<typeof orders> {
  return lines.map(
    ([line, species, liners, delivery, method, weeks, [strike, pottingOn, grading], confidence, spread]) => ({
      line,
      species,
      liners,
      delivery: serialOf(delivery),
      method,
      weeks,
      strike,
      pottingOn,
      grading,
      ...(confidence !== undefined && { confidence }),
      ...(spread !== undefined && { spread }),
    }),
  )
}
