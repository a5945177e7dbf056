/**
 * Spells a formula so that the grid's engine reads it as Excel does. Of two things it makes something else:
 * - a number that JavaScript writes with an exponent (1E-15, and 0.0000001 as well) it takes for a text, and compares
 *   it as one, without an error; such a number is handed over as a product, (1*10^-15);
 * - a minus before a defined name it takes for a part of the name; the name is handed over in brackets, -(Rate).
 */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'

export function formulaForGrid(formula: string): string {
  // Only an exponent, a long fraction or a minus before a word can be meant; most formulas have none of them.
  if (!/\d[eE]|\.0{6}|\d{21}|-\s*[A-Za-z_]/.test(formula)) return formula
  let braces = 0
  return tokenize(formula, { withLocation: false }).map((token, index, tokens) => {
    if (token.value === '{') braces++
    if (token.value === '}') braces--
    // An array constant takes neither products nor names.
    if (braces > 0) return token.value
    return isNegatedName(tokens, index) ? `(${token.value})` : spelledFor(token)
  }).join('')
}

function isNegatedName(tokens: readonly Token[], index: number): boolean {
  if (tokens[index]?.type !== tokenTypes.REF_NAMED) return false
  const [minus, before] = tokens.slice(0, index).filter(({ type }) => type !== tokenTypes.WHITESPACE).reverse()
  if (minus?.value !== '-') return false
  const isOperand = before !== undefined && (before.type !== tokenTypes.OPERATOR || [')', '}', '%', '#'].includes(before.value)) && before.type !== tokenTypes.FX_PREFIX
  return !isOperand
}

function spelledFor({ type, value }: Token): string {
  if (type !== tokenTypes.NUMBER || !(/e/i.test(value) || String(Number(value)).includes('e'))) return value
  const [digits = '', power = ''] = Number(value).toExponential().split('e')
  return `(${digits}*10^${power.replace('+', '')})`
}
