/**
 * Reads a number that was typed as text: "65", "65 mL", "15 %", "3.8 cu ft", "0,15".
 * A point is the decimal point, as in the workbooks' own en-US form: "3.785 L" is a gallon, and 1.500 is 1.5. A comma
 * before one, two or four and more digits is a decimal comma. Before exactly three it may as well separate
 * thousands, so it is never guessed; nor are texts with several marks, such as 1.500.000, and fractions.
 */
import { fromText, type Decimal } from '../quantity/decimal'

export type NumberText =
  | { readonly value: Decimal; readonly rest: string }
  | { readonly unclear: 'unclearComma' | 'severalMarks' | 'notPlainDigits' }
  | undefined

const pattern = /^([+-]?)(\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE]([+-]?\d{1,3})(?![\dA-Za-z]))?\s*([^\d.,+\s-].*)?$/s

const severalMarks = /^[+-]?\d+[.,]\d+[.,]\d/
/** A half as one sign or as 1/2, and digits of other scripts. */
const notPlainDigits = /[\u00bc-\u00be\u2150-\u215f\u2189]|^[+-]?\d+(\s+\d+)?\s*[/\u2044]\s*\d|(?![0-9])\p{Nd}/u

export function readNumberText(text: string): NumberText {
  const typed = text.trim()
  if (severalMarks.test(typed)) return { unclear: 'severalMarks' }
  if (notPlainDigits.test(typed)) return { unclear: 'notPlainDigits' }
  const match = pattern.exec(typed)
  if (match === null) return undefined
  const [, sign = '', digits = '', exponent = '0', rest = ''] = match
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return { unclear: 'unclearComma' }
  return { value: fromText(`${sign}${digits.replace(',', '.')}e${exponent}`), rest }
}
