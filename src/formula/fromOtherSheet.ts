/** A formula of one sheet as it reads on another: cells that stand without a sheet get that of the formula. */
import { tokenize, tokenTypes } from '@borgar/fx'
import { quotedSheet } from './reference'

/** @param instead Formulas, without "=", that stand for names: by the name in lower case. */
export function fromOtherSheet(
  formula: string,
  sheet: string,
  instead: ReadonlyMap<string, string> = new Map(),
): string {
  return tokenize(formula, { mergeRefs: true, withLocation: false })
    .map(({ type, value }, index, tokens) => {
      const isCell = type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_TERNARY
      // Behind a colon it is the end of a range that began on its sheet.
      if (isCell && !value.includes('!') && tokens[index - 1]?.value !== ':') return `${quotedSheet(sheet)}!${value}`
      return type === tokenTypes.REF_NAMED ? (instead.get(value.toLowerCase()) ?? value) : value
    })
    .join('')
}
