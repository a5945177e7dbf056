/**
 * A formula as a person types it, `=STICK.BAGS(A1,XLOOKUP(B1,C:C,D:D))`, and as a file stores it,
 * `_xldudf_STICK_BAGS(A1,_xlfn.XLOOKUP(B1,C:C,D:D))`. A tokenizer does the reading, so that text literals and
 * quoted sheet names stay as they are, whatever they say.
 */
import { isFunction, isOperator, isWhitespace, parse, tokenize, tokenTypes, type Token } from '@borgar/fx'
import { laterFunctions, laterWorksheetFunctions } from './laterFunctions'

const ourNamespace = /^STICK\./i
const ourPrefixInFiles = /^_xldudf_STICK_/i
const laterPrefix = /^_xlfn\.(_xlws\.)?/i
const parameterPrefix = /^_xlpm\./i

/** From the typed spelling, with or without its leading "=", to the file's, which has none. */
export function toFileSpelling(formula: string): string {
  const tokens = tokensOf(formula).filter((token) => token.type !== tokenTypes.FX_PREFIX)
  const parameters = letAndLambdaParameters(tokens)
  const spelled = tokens.map((token, index) => {
    if (parameters.has(index)) return `_xlpm.${token.value}`
    return isFunction(token) ? functionInFile(token.value) : token.value
  })
  spellSigns(tokens, spelled)
  return spelled.join('')
}

/** From the file's spelling to the typed one, with its leading "=". */
export function fromFileSpelling(formula: string): string {
  const tokens = tokensOf(formula.startsWith('=') ? formula : `=${formula}`)
  const typed = tokens.map((token) => {
    if (isFunction(token)) return typedFunction(token.value)
    return token.type === tokenTypes.REF_NAMED ? token.value.replace(parameterPrefix, '') : token.value
  })
  // A1# is stored as a call.
  typed.forEach((value, index) => {
    if (value !== 'ANCHORARRAY' || typed[index + 1] !== '(' || typed[index + 3] !== ')') return
    typed.splice(index, 4, '', typed[index + 2] ?? '', '#', '')
  })
  return typed.join('')
}

/** True where the text is a whole formula. A file with half a formula in it does not open in Excel. */
export function isWholeFormula(formula: string): boolean {
  const tokens = tokensOf(formula)
  // What is left of a deleted cell, `Sheet1!#REF!`, is a formula to Excel, but not to the parser.
  if (tokens.some(({ type, value }) => type === tokenTypes.ERROR && value.toUpperCase() === '#REF!')) return true
  try {
    parse(tokens)
    return true
  } catch {
    return false
  }
}

export function tokensOf(formula: string): Token[] {
  return tokenize(formula, { withLocation: false })
}

function functionInFile(name: string): string {
  if (ourNamespace.test(name)) return `_xldudf_STICK_${name.replace(ourNamespace, '').toUpperCase()}`
  const upper = name.toUpperCase()
  if (laterWorksheetFunctions.has(upper)) return `_xlfn._xlws.${upper}`
  return laterFunctions.has(upper) ? `_xlfn.${upper}` : name
}

function typedFunction(name: string): string {
  if (ourPrefixInFiles.test(name)) return `STICK.${name.replace(ourPrefixInFiles, '').toUpperCase()}`
  if (ourNamespace.test(name)) return name.toUpperCase()
  return laterPrefix.test(name) ? name.replace(laterPrefix, '').toUpperCase() : name.replace(parameterPrefix, '')
}

/** Files know neither the # of A1# nor the @ of @A1:A9: they store calls of ANCHORARRAY and SINGLE. */
function spellSigns(tokens: readonly Token[], spelled: string[]): void {
  tokens.forEach((token, index) => {
    if (!isOperator(token)) return
    if (token.value === '#') {
      spelled[index - 1] = `_xlfn.ANCHORARRAY(${spelled[index - 1]}`
      spelled[index] = ')'
    }
    if (token.value === '@') {
      const end = endOfOperand(tokens, index + 1)
      spelled[index] = '_xlfn.SINGLE('
      spelled[end] = `${spelled[end]})`
    }
  })
}

/** A reference or a name is one token; a call reaches to the bracket that closes it. */
function endOfOperand(tokens: readonly Token[], start: number): number {
  if (!isFunction(tokens[start])) return start
  let depth = 0
  for (let index = start + 1; index < tokens.length; index += 1) {
    const token = tokens[index]
    if (!isOperator(token)) continue
    if (token?.value === '(') depth += 1
    if (token?.value === ')') depth -= 1
    if (depth === 0) return index
  }
  return tokens.length - 1
}

interface OpenBracket {
  readonly declares: 'LET' | 'LAMBDA' | undefined
  readonly names: Set<string>
  argument: number
}

/**
 * The places of the tokens that name a parameter of a LET or LAMBDA around them. A LET declares a name in every
 * other argument and a LAMBDA in each, but for the last one, which is what they calculate.
 */
export function letAndLambdaParameters(tokens: readonly Token[]): ReadonlySet<number> {
  const places = new Set<number>()
  const open: OpenBracket[] = []
  const significant = tokens.flatMap((token, index) => (isWhitespace(token) ? [] : [{ token, index }]))
  significant.forEach(({ token, index }, position) => {
    const before = significant[position - 1]?.token
    const after = significant[position + 1]?.token
    const bracket = open.at(-1)
    if (isOperator(token)) {
      if (token.value === '(' || token.value === '{') {
        open.push({ declares: declaringFunction(before), names: new Set(), argument: 0 })
      }
      if (token.value === ')' || token.value === '}') open.pop()
      if (token.value === ',' && bracket !== undefined) bracket.argument += 1
      return
    }
    if (token.type !== tokenTypes.REF_NAMED && !isFunction(token)) return
    const name = token.value.toLowerCase()
    const isWholeArgument = (before?.value === '(' || before?.value === ',') && after?.value === ','
    const declares = bracket?.declares === 'LAMBDA' || (bracket?.declares === 'LET' && bracket.argument % 2 === 0)
    if (bracket !== undefined && declares && isWholeArgument) bracket.names.add(name)
    if (open.some(({ names }) => names.has(name))) places.add(index)
  })
  return places
}

function declaringFunction(token: Token | undefined): OpenBracket['declares'] {
  if (token === undefined || !isFunction(token)) return undefined
  const name = token.value.toUpperCase()
  return name === 'LET' || name === 'LAMBDA' ? name : undefined
}
