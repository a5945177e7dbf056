/**
 * The grid's engine reads a number that JavaScript writes with an exponent (1E-15, and 0.0000001 as well) as a text,
 * and compares it as one, without an error. Such a number is handed over as a product: (1*10^-15).
 */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'

export function formulaForGrid(formula: string): string {
  // Only an exponent or a long fraction can be meant; most formulas have neither.
  if (!/\d[eE]|\.0{6}|\d{21}/.test(formula)) return formula
  let braces = 0
  return tokenize(formula, { withLocation: false }).map((token) => {
    if (token.value === '{') braces++
    if (token.value === '}') braces--
    // An array constant takes no products.
    return braces === 0 ? spelledFor(token) : token.value
  }).join('')
}

function spelledFor({ type, value }: Token): string {
  if (type !== tokenTypes.NUMBER || !(/e/i.test(value) || String(Number(value)).includes('e'))) return value
  const [digits = '', power = ''] = Number(value).toExponential().split('e')
  return `(${digits}*10^${power.replace('+', '')})`
}
