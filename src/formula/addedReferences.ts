/** What a formula adds up, where it does nothing else: =B4+B5, =SUM(B4:B6,Bench), also where it waits for its cells. */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'
import { argumentsFrom } from './callArguments'

/** The references and names among the terms, as they are written; undefined where anything but cells is added up. */
export function addedReferences(formula: string): readonly string[] | undefined {
  const tokens = tokenize(formula, { mergeRefs: true }).filter(
    ({ type }) => type !== tokenTypes.WHITESPACE && type !== tokenTypes.FX_PREFIX,
  )
  return added(tokens)
}

const referring: ReadonlySet<string> = new Set([tokenTypes.REF_RANGE, tokenTypes.REF_BEAM, tokenTypes.REF_NAMED])

function added(tokens: readonly Token[]): readonly string[] | undefined {
  const references = termsOf(tokens).map(referencesOfTerm)
  return references.every((ofTerm) => ofTerm !== undefined) ? references.flat() : undefined
}

function referencesOfTerm(term: readonly Token[]): readonly string[] | undefined {
  const [first, second] = term
  if (first === undefined) return undefined
  if (term.length === 1 && referring.has(first.type)) return [first.value]
  if (first.type !== tokenTypes.FUNCTION || second?.value !== '(') return undefined
  const { args, end } = argumentsFrom(term, 1)
  if (end !== term.length - 1) return undefined
  if (first.value.toUpperCase() === 'SUM') {
    const ofArguments = args.map(added)
    return ofArguments.every((ofOne) => ofOne !== undefined) ? ofArguments.flat() : undefined
  }
  if (first.value.toUpperCase() !== 'IF' || args.length !== 3) return undefined
  // So the formulas of a season wait: IF(A4="ready",B4+B5,""), or IF(LEN(B4)=0,"",B4+B5).
  const [kept, ...others] = args.slice(1).filter((branch) => branch.map(({ value }) => value).join('') !== '""')
  return kept !== undefined && others.length === 0 ? added(kept) : undefined
}

/** Parted at each plus sign outside brackets. */
function termsOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const terms: Token[][] = [[]]
  let depth = 0
  for (const token of tokens) {
    if (token.value === '(') depth += 1
    if (token.value === ')') depth -= 1
    if (token.value === '+' && depth === 0) terms.push([])
    else terms.at(-1)!.push(token)
  }
  return terms
}
