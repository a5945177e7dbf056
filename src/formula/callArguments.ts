/** The arguments of a call as they are written in a formula. */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'

/** Undefined where the formula is not this one call and nothing else. */
export function callArguments(formula: string, id: string): readonly string[] | undefined {
  const [prefix, name, open, ...rest] = withoutAt(tokenize(formula.trim()))
  if (prefix?.type !== tokenTypes.FX_PREFIX || name?.value.toUpperCase() !== `STICK.${id}` || open?.value !== '(')
    return undefined
  const { args, end } = argumentsFrom([open, ...rest], 0)
  return end === rest.length
    ? args.map((argument) =>
        argument
          .map(({ value }) => value)
          .join('')
          .trim(),
      )
    : undefined
}

/** Without the @ that Excel shows before a function which is to fill one cell only: =@STICK.BAGS(A1,60). */
function withoutAt(tokens: readonly Token[]): readonly Token[] {
  return tokens[1]?.value === '@' ? [tokens[0]!, ...tokens.slice(2)] : tokens
}

/** The tokens of each argument of a call, and where its closing bracket stands. */
export function argumentsFrom(
  tokens: readonly Token[],
  open: number,
): { readonly args: readonly (readonly Token[])[]; readonly end: number } {
  const args: Token[][] = [[]]
  let depth = 0
  let end = open
  for (; end < tokens.length; end++) {
    const token = tokens[end]!
    const isOperator = token.type === tokenTypes.OPERATOR
    if (isOperator && (token.value === '(' || token.value === '{')) depth += 1
    if (isOperator && (token.value === ')' || token.value === '}')) depth -= 1
    if (depth === 0) break
    if (end === open) continue
    if (isOperator && token.value === ',' && depth === 1) args.push([])
    else args.at(-1)!.push(token)
  }
  return { args, end }
}
