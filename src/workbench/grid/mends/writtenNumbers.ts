/**
 * Spells the numbers of a formula as JavaScript would. The grid's engine takes a number that is written in another way
 * (1.50, .5, 1E-15) for a text, and compares it as one, without an error: 2 was not more than 1.50. It does the same
 * with the number of a criterion, as in COUNTIF(A1:A9,">1.50"). Where JavaScript would write an exponent, which the
 * engine cannot read either, the number becomes a product, (1*10^-15). Seen with univer 0.25.1.
 */
import { type Token, tokenTypes } from '@borgar/fx'

const criterion = /^"([<>]=?|<>|=)(\d*\.?\d+|\d+\.)"$/

/** An array constant takes no products. */
export function writtenNumber({ type, value }: Token, takesProducts: boolean): string {
  if (type === tokenTypes.STRING) {
    return value.replace(criterion, (_all, comparison: string, number: string) => `"${comparison}${Number(number)}"`)
  }
  if (type !== tokenTypes.NUMBER || !Number.isFinite(Number(value))) return value
  const plain = String(Number(value))
  if (!plain.includes('e') || !takesProducts) return plain
  const [digits = '', power = ''] = plain.split('e')
  return `(${digits}*10^${power.replace('+', '')})`
}
