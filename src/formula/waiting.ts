/** What a formula shows once what it waits for is there: of =IF($A9="ready",B9+C9,"") that is B9+C9. */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'
import { argumentsFrom } from './callArguments'

/** The formula itself where it waits for nothing. */
export function waitedFor(formula: string): string {
  const tokens = withoutSpace(tokenize(formula))
  const [prefix, ...rest] = tokens
  if (prefix?.type !== tokenTypes.FX_PREFIX) return formula
  return `=${waitedForIn(rest)
    .map(({ value }) => value)
    .join('')}`
}

/** The same of its tokens: an IF of which one branch is a text, or a FILTER with a text for nothing, as long as there is one. */
export function waitedForIn(tokens: readonly Token[]): readonly Token[] {
  const [first, second] = tokens
  const called = first?.type === tokenTypes.FUNCTION ? first.value.toUpperCase() : ''
  if (!['IF', 'FILTER'].includes(called) || second?.value !== '(') return tokens
  const { args, end } = argumentsFrom(tokens, 1)
  const [, yes, no] = args
  if (end !== tokens.length - 1 || args.length !== 3) return tokens
  if (called === 'FILTER') return isText(no!) ? waitedForIn(args[0]!) : tokens
  if (isText(no!)) return waitedForIn(yes!)
  return isText(yes!) ? waitedForIn(no!) : tokens
}

function isText(tokens: readonly Token[]): boolean {
  return tokens.length === 1 && tokens[0]!.type === tokenTypes.STRING
}

function withoutSpace(tokens: readonly Token[]): readonly Token[] {
  return tokens.filter(({ type }) => type !== tokenTypes.WHITESPACE)
}
