import { tokenize, tokenTypes } from '@borgar/fx'

/**
 * A formula with other text in the place of names.
 *
 * @param by The text, by the name in lower case, with its sheet or without.
 */
export function withNamesReplaced(formula: string, by: ReadonlyMap<string, string>): string {
  // What LET and LAMBDA call their own goes before any name.
  if (/\b(LET|LAMBDA)\(/i.test(formula)) return formula
  return tokenize(formula, { withLocation: false, mergeRefs: true })
    .map(({ type, value }) => (type === tokenTypes.REF_NAMED ? (by.get(value.toLowerCase()) ?? value) : value))
    .join('')
}
