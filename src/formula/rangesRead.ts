/** Which cells a formula reads: to tell where an error comes from, and what a number was made of. */
import { parseA1Ref, tokenize, tokenTypes } from '@borgar/fx'
import type { Block } from './address'

export interface RangeRead extends Block {
  readonly sheet: string
}

/** What a defined name refers to, without "=", by the name in lower case. */
export type NamedRanges = ReadonlyMap<string, string>

export function namedRanges(names: readonly { readonly name: string; readonly refersTo: string }[]): NamedRanges {
  return new Map(names.map(({ name, refersTo }) => [name.toLowerCase(), refersTo]))
}

/** Ranges of other workbooks, of tables and of names that stand for a formula are not among them. */
export function rangesRead(formula: string, sheet: string, names: NamedRanges): readonly RangeRead[] {
  return referencesIn(formula).flatMap((value): readonly RangeRead[] => {
    const reference = names.get(value.toLowerCase()) ?? value
    const parsed = parseA1Ref(reference)
    const { range, context = [] } = parsed !== undefined && 'range' in parsed ? parsed : {}
    if (range === undefined || context.length > 1) return []
    return [
      {
        sheet: context[0] ?? sheet,
        top: range.top ?? 0,
        left: range.left ?? 0,
        bottom: range.bottom ?? Infinity,
        right: range.right ?? Infinity,
      },
    ]
  })
}

/** Addresses and names as they are written in a formula. */
export function referencesIn(formula: string): readonly string[] {
  return tokenize(formula, { mergeRefs: true })
    .filter(
      ({ type }) => type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_NAMED,
    )
    .map(({ value }) => value)
}

export function holds(range: RangeRead, sheet: string, row: number, column: number): boolean {
  return (
    range.sheet.toLowerCase() === sheet.toLowerCase() &&
    row >= range.top &&
    row <= range.bottom &&
    column >= range.left &&
    column <= range.right
  )
}
