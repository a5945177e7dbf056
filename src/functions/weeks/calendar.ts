/** What the functions of weeks and days have in common: days as cells hold them, and the weeks in which they lie. */
import { Decimal } from '../../core/quantity/decimal'
import { roundDownToWhole } from '../../core/quantity/rounding'

/**
 * Days from 1 March 1900 to the end of 9999. Before, Excel counts a 29 February 1900 that never was, and its weekdays
 * are one off; a number so small is more likely a week typed for a day.
 */
export const days = { atLeast: 61, atMost: 2_958_465 } as const

/** Without its time of day. */
export function dayOf(moment: Decimal): Decimal {
  return roundDownToWhole(moment)
}

/** Weeks begin on Monday, as in ISO 8601; that of Excel's day 2 is week 0. */
export function weekOf(moment: Decimal): number {
  return Math.floor((dayOf(moment).toNumber() - 2) / 7)
}

export function mondayOf(week: number): Decimal {
  return new Decimal(7 * week + 2)
}
