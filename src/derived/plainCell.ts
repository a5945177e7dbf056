/** A cell's formula without the add-in: each call of ours replaced by its plain Excel formula. */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'
import { fillsOneCell, type Definition } from '../core/definition/definition'
import { argumentsFrom } from '../formula/callArguments'
import { plainFormula, type PlainCall } from './plainFormula'

export type PlainCell =
  | { readonly formula: string }
  /** The functions that have no plain formula, and why. */
  | { readonly without: readonly NoPlain[] }

export interface NoPlain {
  readonly id: string
  /** In the words of its definition; absent where an argument is written in a way that is not read here. */
  readonly reason?: string
  readonly check?: string
}

/** @param formula In en-US form, with its leading "=". A formula without calls of ours stays as it is. */
export function plainCell(formula: string, definitions: readonly Definition[]): PlainCell {
  const without = new Map<string, NoPlain>()
  const text = plainText(tokenize(formula), definitions, (none) => without.set(none.id, none))
  return without.size > 0 ? { without: [...without.values()] } : { formula: text }
}

function plainOf(definition: Definition, args: readonly string[]): PlainCall | undefined {
  try {
    return plainFormula(definition, args)
  } catch {
    // Cells of a closed workbook stand with its folder, and other hosts may hand over formulas of their own kind.
    return undefined
  }
}

function calledBy(token: Token | undefined, definitions: readonly Definition[]): Definition | undefined {
  return token?.type === tokenTypes.FUNCTION
    ? definitions.find(({ id }) => `STICK.${id}` === token.value.toUpperCase())
    : undefined
}

function plainText(
  tokens: readonly Token[],
  definitions: readonly Definition[],
  refuse: (none: NoPlain) => void,
): string {
  let text = ''
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!
    const hasAt = token.value === '@' && calledBy(tokens[at + 1], definitions) !== undefined
    const start = hasAt ? at + 1 : at
    const definition = calledBy(tokens[start], definitions)
    if (definition === undefined) {
      text += token.value
      continue
    }
    const { args, end } = argumentsFrom(tokens, start + 1)
    const plain = plainOf(
      definition,
      args.map((argument) => plainText(argument, definitions, refuse).trim()),
    )
    if (plain !== undefined && 'formula' in plain) {
      const isWhole = at === 1 && end === tokens.length - 1
      const formula = plain.formula.slice(1)
      // An @ takes one cell of what a function fills, and changes nothing where that is one cell anyway.
      if (hasAt && !fillsOneCell(definition.result)) text += `INDEX(${formula},1,1)`
      else text += isWhole ? formula : `(${formula})`
    } else {
      refuse({ id: definition.id, ...plain })
    }
    at = end
  }
  return text
}
