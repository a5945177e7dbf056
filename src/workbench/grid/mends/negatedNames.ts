/**
 * Finds the names that need brackets. The grid's engine takes a minus before a defined name for a part of the name: it
 * answers =-Price with #NAME?, where -(Price) is right. Seen with univer 0.25.1.
 */
import { type Token, tokenTypes } from '@borgar/fx'

export function isNegatedName(tokens: readonly Token[], index: number): boolean {
  if (tokens[index]?.type !== tokenTypes.REF_NAMED) return false
  const [minus, before] = tokens
    .slice(0, index)
    .filter(({ type }) => type !== tokenTypes.WHITESPACE)
    .reverse()
  if (minus?.value !== '-') return false
  const isOperand =
    before !== undefined &&
    before.type !== tokenTypes.FX_PREFIX &&
    (before.type !== tokenTypes.OPERATOR || [')', '}', '%', '#'].includes(before.value))
  return !isOperand
}
