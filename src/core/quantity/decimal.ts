/**
 * The project's decimal arithmetic, and the one place that imports decimal.js.
 * 34 significant digits are those of IEEE 754 decimal128. Halves round away from zero, as invoices do.
 */
import DecimalJs from 'decimal.js'

export const Decimal = DecimalJs.clone({
  precision: 34,
  rounding: DecimalJs.ROUND_HALF_UP,
  toExpNeg: -30,
  toExpPos: 30,
})
export type Decimal = DecimalJs

export const zero = new Decimal(0)
export const one = new Decimal(1)

/** The 15 significant digits that a spreadsheet shows of a number. */
const shownDigits = 15

/**
 * The number that the spreadsheet shows for what a cell holds: 0.1 + 0.2 is held as 0.30000000000000004 and
 * meant as 0.3.
 */
export function asShown(value: number): number {
  // A text of at most 15 characters cannot show more than 15 digits.
  return String(value).length <= shownDigits ? value : Number(value.toPrecision(shownDigits))
}

/** The same for a number within a text, as a decimal: some hosts join 0.1 + 0.2 to a text with all its 17 digits. */
export function fromText(digits: string): Decimal {
  return new Decimal(digits).toSignificantDigits(shownDigits)
}

/** Powers of ten between which a spreadsheet cell can hold a number with all its digits. */
const [leastPower, mostPower] = [-307, 307]

export function fitsCell(value: Decimal): boolean {
  return value.isZero() || (value.isFinite() && value.e >= leastPower && value.e <= mostPower)
}

export function toCell(value: Decimal): number {
  // Minus zero is shown as "-0" by some hosts.
  return value.isZero() ? 0 : value.toNumber()
}
