/**
 * Reads a number that was typed as text: "65", "65 mL", "15 %", "3.8 cu ft", "0,15".
 * A comma before one, two or four and more digits is a decimal comma. Before exactly three it may as well
 * separate thousands, so it is never guessed.
 */
import { fromText, type Decimal } from '../quantity/decimal'

export type NumberText =
  | { readonly value: Decimal; readonly rest: string }
  | { readonly unclearComma: true }
  | undefined

const pattern = /^([+-]?)(\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE]([+-]?\d{1,3})(?![\dA-Za-z]))?\s*([^\d.,+\s-].*)?$/s

export function readNumberText(text: string): NumberText {
  const match = pattern.exec(text.trim())
  if (match === null) return undefined
  const [, sign = '', digits = '', exponent = '0', rest = ''] = match
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return { unclearComma: true }
  return { value: fromText(`${sign}${digits.replace(',', '.')}e${exponent}`), rest: rest.trim() }
}
