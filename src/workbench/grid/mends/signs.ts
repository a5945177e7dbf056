/**
 * Hands the grid's engine signs, spaces and quotes as it can read them. It read =5+--A1 as 5-A1, gave errors for
 * 2*--A1, 6/--A1 and 4>--A1, so that SUMPRODUCT(A1:A9*--(B1:B9="x")) was lost, and for a minus before LET. It took a
 * minus before a name, or a space after it, for a part of the name: =-Rate, =Rate * 2. Beside a name it read a text
 * with quotes in it wrongly: ="5"""&Rate. Each minus gets brackets around what it stands before, the space goes, and
 * the quotes become CHAR(34). What stands in the cell stays as it was typed. Seen with univer 0.25.1.
 */
import { type Token, tokenize, tokenTypes } from '@borgar/fx'
import type { Injector } from '@univerjs/core'
import { Lexer } from '@univerjs/engine-formula'

export function readSigns(injector: Injector): void {
  const lexer = injector.get(Lexer)
  const read = lexer.treeBuilder.bind(lexer)
  lexer.treeBuilder = (formula) => read(withPlainSigns(formula))
}

/** Two signs, a minus before a text, a word, a bracket or a space, a space after a word, or quotes in a text. */
const concerned = /[-+]\s*[-+]|-["A-Za-z_(\s]|[\w.]\s|""/

/** Most formulas are not concerned, and what is written in a text concerns none. */
function isConcerned(formula: string): boolean {
  return concerned.test(formula.replace(/"(?:[^"]|"")*"/g, (text) => (/.""./.test(text) ? '""' : '"')))
}

export function withPlainSigns(formula: string): string {
  if (!isConcerned(formula)) return formula
  const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false })
  return spelled(tokens.filter(isNeeded))
}

/** A space between two operands is an operator of its own. */
function isNeeded({ type }: Token, place: number, tokens: readonly Token[]): boolean {
  const [before, after] = [tokens[place - 1], tokens[place + 1]]
  if (type !== tokenTypes.WHITESPACE || before?.type !== tokenTypes.REF_NAMED) return true
  return after !== undefined && (after.type !== tokenTypes.OPERATOR || isOneOf(after, '(', '{'))
}

function spelled(tokens: readonly Token[]): string {
  let text = ''
  for (let place = 0; place < tokens.length; place++) {
    const signed = isBeforeOperand(tokens, place) ? signedFrom(tokens, place) : undefined
    if (signed === undefined) {
      text += withoutQuotes(tokens, place)
      continue
    }
    const operand = `-(${spelled(tokens.slice(signed.first, signed.end))})`
    text += signed.minuses % 2 === 1 ? operand : `-(${operand})`
    place = signed.end - 1
  }
  return text
}

/** An array constant takes no calculations. */
function withoutQuotes(tokens: readonly Token[], place: number): string {
  const { type, value } = tokens[place]!
  if (type !== tokenTypes.STRING || !value.slice(1, -1).includes('""') || isInArray(tokens, place)) return value
  return `("${value.slice(1, -1).replaceAll('""', '"&CHAR(34)&"')}")`
}

function isInArray(tokens: readonly Token[], place: number): boolean {
  const braces = tokens.slice(0, place).filter((token) => isOneOf(token, '{', '}'))
  return braces.length % 2 === 1
}

/** Where a sign is one of its own and no difference or sum. */
function isBeforeOperand(tokens: readonly Token[], place: number): boolean {
  if (tokens[place]!.type !== tokenTypes.WHITESPACE && !isOneOf(tokens[place]!, '-', '+')) return false
  const before = tokens
    .slice(0, place)
    .filter(({ type }) => type !== tokenTypes.WHITESPACE)
    .at(-1)
  if (before === undefined || before.type === tokenTypes.FX_PREFIX) return true
  return before.type === tokenTypes.OPERATOR && !isOneOf(before, ')', '}', '%', '#')
}

interface Signed {
  readonly minuses: number
  /** Of what the signs stand before. */
  readonly first: number
  readonly end: number
}

/** Undefined where no minus begins there. */
function signedFrom(tokens: readonly Token[], place: number): Signed | undefined {
  let first = place
  const isSkipped = (token: Token) => token.type === tokenTypes.WHITESPACE || isOneOf(token, '-', '+')
  while (first < tokens.length && isSkipped(tokens[first]!)) first++
  const minuses = tokens.slice(place, first).filter((token) => isOneOf(token, '-')).length
  const end = endOfOperand(tokens, first)
  return minuses === 0 || end === undefined ? undefined : { minuses, first, end }
}

/** A minus binds before all operators but that of a range, and less than a percent sign. */
function endOfOperand(tokens: readonly Token[], first: number): number | undefined {
  const opening = tokens[first]
  if (opening === undefined || (opening.type === tokenTypes.OPERATOR && !isOneOf(opening, '(', '{'))) return undefined
  let end =
    opening.type === tokenTypes.FUNCTION || isOneOf(opening, '(', '{') ? afterBrackets(tokens, first) : first + 1
  while (tokens[end] && isOneOf(tokens[end]!, '%', '#')) end++
  return tokens[end] && isOneOf(tokens[end]!, ':') ? endOfOperand(tokens, end + 1) : end
}

function afterBrackets(tokens: readonly Token[], first: number): number {
  let depth = 0
  for (let place = first; place < tokens.length; place++) {
    if (isOneOf(tokens[place]!, '(', '{')) depth++
    if (isOneOf(tokens[place]!, ')', '}')) depth--
    if (depth === 0 && tokens[place]!.type === tokenTypes.OPERATOR) return place + 1
  }
  return tokens.length
}

function isOneOf({ type, value }: Token, ...operators: readonly string[]): boolean {
  return type === tokenTypes.OPERATOR && operators.includes(value)
}
