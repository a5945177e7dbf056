/**
 * The project's decimal arithmetic, and the one place that imports decimal.js.
 * 34 significant digits are those of IEEE 754 decimal128. Halves round away from zero, as invoices do.
 */
import DecimalJs from 'decimal.js'

export const Decimal = DecimalJs.clone({ precision: 34, rounding: DecimalJs.ROUND_HALF_UP, toExpNeg: -30, toExpPos: 30 })
export type Decimal = DecimalJs

export const zero = new Decimal(0)
export const one = new Decimal(1)

/** The 15 significant digits that a spreadsheet shows of a number. */
const shownDigits = 15

/**
 * Reads the number of a cell as the decimal that the spreadsheet shows.
 * A cell holds a binary double: 0.1 + 0.2 arrives as 0.30000000000000004 and is meant as 0.3.
 */
export function fromCell(value: number): Decimal {
  const text = String(value)
  // A text of at most 15 characters cannot show more than 15 digits.
  return new Decimal(text.length <= shownDigits ? text : value.toPrecision(shownDigits))
}

/** The same for a number within a text: some hosts join 0.1 + 0.2 to a text with all its 17 digits. */
export function fromText(digits: string): Decimal {
  return new Decimal(digits).toSignificantDigits(shownDigits)
}

/** The largest and the smallest magnitude that a spreadsheet cell can hold. */
const largestInCell = new Decimal('9.99999999999999e307')
const smallestInCell = new Decimal('2.2251e-308')

export function fitsCell(value: Decimal): boolean {
  if (!value.isFinite()) return false
  if (value.isZero()) return true
  const size = value.abs()
  return size.lte(largestInCell) && size.gte(smallestInCell)
}

export function toCell(value: Decimal): number {
  // Minus zero is shown as "-0" by some hosts.
  return value.isZero() ? 0 : value.toNumber()
}
