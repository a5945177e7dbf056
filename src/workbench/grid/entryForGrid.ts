/**
 * Spells what a user typed or pasted so that the grid reads the same. By itself it knows the point only, and leaves out any
 * comma wherever it stands: it takes 15,5 % for 155 %, and 0,500 for 500.
 */
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { pointNumber } from '../../formula/decimalComma'

const number = /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?\s*%?$/i
const commaAtDigit = /(^|\d),\d|\d,(\D|$)/
const thousands = /^[^\d,]*[1-9]\d{0,2}(,\d{3})+(\.\d*)?[^\d,]*$/
/** Years of two digits from here on are of the last century, as in Excel. */
const lastCentury = 30

/** Undefined where the grid would misread the entry, so that it must stay a text. */
export function entryForGrid(entry: string, mark: DecimalMark): string | undefined {
  if (entry.startsWith('=')) return entry
  const read = mark === ',' ? withPoint(entry) : entry
  const misread = commaAtDigit.test(read) && !thousands.test(read) && !/[a-z]{2}/i.test(read)
  return misread ? undefined : read
}

function withPoint(entry: string): string {
  const read = pointNumber(entry)
  if (number.test(read)) return read
  // Whoever writes 1,5 writes the third of May as 3.5.2026.
  const [, day, month, year] = /^\s*(\d{1,2})\.(\d{1,2})\.(\d{4}|\d{2})\s*$/.exec(entry) ?? []
  if (year === undefined) return entry
  const century = year.length === 4 ? '' : Number(year) < lastCentury ? '20' : '19'
  return `${century}${year}-${month}-${day}`
}
