/**
 * Spells a formula so that the grid's engine reads it as Excel does. Of three things it makes something else:
 * - a number that JavaScript would write in another way (1.50, .5, 1E-15) it takes for a text, and compares it as one,
 *   without an error; so it gets the number as JavaScript writes it, and where that has an exponent, as a product, (1*10^-15);
 * - it does the same with the number of a criterion, as in COUNTIF(A1:A9,">1.50");
 * - a minus before a defined name it takes for a part of the name; the name is handed over in brackets, -(Rate).
 */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'

const criterion = /^"([<>]=?|<>|=)(\d*\.?\d+|\d+\.)"$/

export function formulaForGrid(formula: string): string {
  // Only a decimal fraction, an exponent, a zero in front, many digits or a minus before a word can be meant; most formulas have none of them.
  if (!/\d[eE.]|\.\d|(?<![\w.$])0\d|\d{16}|-\s*[A-Za-z_]/.test(formula)) return formula
  let braces = 0
  return tokenize(formula, { withLocation: false }).map((token, index, tokens) => {
    if (token.value === '{') braces++
    if (token.value === '}') braces--
    // An array constant takes neither products nor names.
    return isNegatedName(tokens, index) ? `(${token.value})` : spelledFor(token, braces === 0)
  }).join('')
}

function isNegatedName(tokens: readonly Token[], index: number): boolean {
  if (tokens[index]?.type !== tokenTypes.REF_NAMED) return false
  const [minus, before] = tokens.slice(0, index).filter(({ type }) => type !== tokenTypes.WHITESPACE).reverse()
  if (minus?.value !== '-') return false
  const isOperand = before !== undefined && (before.type !== tokenTypes.OPERATOR || [')', '}', '%', '#'].includes(before.value)) && before.type !== tokenTypes.FX_PREFIX
  return !isOperand
}

function spelledFor({ type, value }: Token, takesProducts: boolean): string {
  if (type === tokenTypes.STRING) return value.replace(criterion, (_all, comparison: string, number: string) => `"${comparison}${Number(number)}"`)
  if (type !== tokenTypes.NUMBER || !Number.isFinite(Number(value))) return value
  const plain = String(Number(value))
  if (!plain.includes('e') || !takesProducts) return plain
  const [digits = '', power = ''] = plain.split('e')
  return `(${digits}*10^${power.replace('+', '')})`
}
