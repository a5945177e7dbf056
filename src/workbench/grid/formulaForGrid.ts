/** Spells a formula so that the grid's engine reads it as Excel does, wherever it comes from. */
import { tokenize } from '@borgar/fx'
import { writtenNumber } from './mends/writtenNumbers'

/** Only a decimal fraction, an exponent, a zero in front or many digits can be meant; most formulas have none of them. */
const concerned = /\d[eE.]|\.\d|(?<![\w.$])0\d|\d{16}/

export function formulaForGrid(formula: string): string {
  if (!concerned.test(formula)) return formula
  let braces = 0
  return tokenize(formula, { withLocation: false })
    .map((token) => {
      if (token.value === '{') braces++
      if (token.value === '}') braces--
      return writtenNumber(token, braces === 0)
    })
    .join('')
}
