/**
 * Formulas from before dynamic arrays. Where such a formula meets several cells and takes one, it takes that in its own
 * row or column, which Excel now writes with an @ (Microsoft, "Implicit intersection operator: @"). A file stores it as
 * a plain formula, one that takes all cells as an array. Which function takes ranges and which takes arrays is from
 * memory of the file format of Excel 97; of those that are not listed, only ranges that stand alone are sure.
 */
import { isFunction, isOperator, isWhitespace, tokenTypes, type Token } from '@borgar/fx'
import { standsForSeveralCells, takeCells, takeRanges } from './arrayEvaluation'
import { tokensOf } from './formulaSpelling'

const takeArrays = new Set(
  `SUMPRODUCT MMULT MINVERSE MDETERM TRANSPOSE FREQUENCY LINEST LOGEST TREND GROWTH SUMX2MY2 SUMX2PY2 SUMXMY2 CORREL
  COVAR PEARSON RSQ SLOPE INTERCEPT STEYX PROB MODE LOOKUP FILTER SORT SORTBY UNIQUE`
    .trim()
    .split(/\s+/),
)

/** Of those that take ranges, the arguments of one cell, from 0. */
const cellArguments: Readonly<Record<string, (argument: number) => boolean>> = {
  MATCH: (argument) => argument !== 1,
  VLOOKUP: (argument) => argument !== 1,
  HLOOKUP: (argument) => argument !== 1,
  COUNTIF: (argument) => argument === 1,
  SUMIF: (argument) => argument === 1,
  AVERAGEIF: (argument) => argument === 1,
  COUNTIFS: (argument) => argument % 2 === 1,
  SUMIFS: (argument) => argument > 0 && argument % 2 === 0,
  AVERAGEIFS: (argument) => argument > 0 && argument % 2 === 0,
  MAXIFS: (argument) => argument > 0 && argument % 2 === 0,
  MINIFS: (argument) => argument > 0 && argument % 2 === 0,
  LARGE: (argument) => argument === 1,
  SMALL: (argument) => argument === 1,
  RANK: (argument) => argument !== 1,
  PERCENTILE: (argument) => argument === 1,
  QUARTILE: (argument) => argument === 1,
  SUBTOTAL: (argument) => argument === 0,
  NPV: (argument) => argument === 0,
  IRR: (argument) => argument === 1,
}

/** A call, or brackets within an expression. */
interface Bracket {
  readonly name: string | undefined
  argument: number
  readonly takes: 'cell' | 'range' | 'array' | 'unknown'
}

/** The formula with an @ where one cell is taken; undefined where that is not sure. */
export function withOneCells(
  formula: string,
  referenceOf: (name: string) => string | undefined,
  namesOneCell: (name: string) => boolean,
): string | undefined {
  const tokens = tokensOf(formula)
  const open: Bracket[] = []
  let isSure = true
  const spelled = tokens.map((token, index) => {
    const inner = open.at(-1)
    if (isOperator(token)) {
      if (token.value === '(') open.push(bracketOf(before(tokens, index), inner))
      if (token.value === ')') open.pop()
      if (token.value === ',' && inner !== undefined) inner.argument += 1
      return token.value
    }
    if (!standsForSeveralCells(token, namesOneCell) || before(tokens, index)?.value === '@') return token.value
    const takes = takenBy(inner, isAlone(tokens, index))
    // A name may stand for a number, or for a formula.
    const reference = token.type === tokenTypes.REF_NAMED ? referenceOf(token.value) : token.value
    if (takes === 'all' || reference === undefined) return token.value
    if (takes === 'unknown') isSure = false
    return `@${reference}`
  })
  return isSure ? spelled.join('') : undefined
}

function bracketOf(opening: Token | undefined, outer: Bracket | undefined): Bracket {
  if (opening?.value === '@') return { name: undefined, argument: 0, takes: 'array' }
  const name = opening !== undefined && isFunction(opening) ? opening.value.toUpperCase() : undefined
  if (outer?.takes === 'array') return { name, argument: 0, takes: 'array' }
  if (name === undefined) return { name, argument: 0, takes: outer?.takes ?? 'cell' }
  if (takeArrays.has(name)) return { name, argument: 0, takes: 'array' }
  // What a branch is depends on what asks for it.
  if (name === 'IF' && outer !== undefined && outer.takes !== 'cell') return { name, argument: 0, takes: 'unknown' }
  return { name, argument: 0, takes: takeRanges.has(name) ? 'range' : takeCells.has(name) ? 'cell' : 'unknown' }
}

function takenBy(inner: Bracket | undefined, isAlone: boolean): 'one' | 'all' | 'unknown' {
  if (inner === undefined || inner.takes === 'cell') return 'one'
  if (inner.takes === 'array') return 'all'
  if (inner.name === 'IF') return inner.argument === 0 ? 'one' : 'unknown'
  if (inner.name === undefined && isAlone) return 'unknown'
  // One number or all, as what asks for them.
  if (inner.name === 'ROW' || inner.name === 'COLUMN') return 'unknown'
  if (inner.takes === 'unknown') return isAlone ? 'all' : 'unknown'
  return isAlone && cellArguments[inner.name ?? '']?.(inner.argument) !== true ? 'all' : 'one'
}

/** Where nothing but commas and brackets is beside it, or the sign of a range. */
function isAlone(tokens: readonly Token[], index: number): boolean {
  const [left, right] = [before(tokens, index)?.value, tokens.slice(index + 1).find((one) => !isWhitespace(one))?.value]
  return (left === '(' || left === ',' || left === ':') && (right === ')' || right === ',' || right === ':')
}

function before(tokens: readonly Token[], index: number): Token | undefined {
  return tokens
    .slice(0, index)
    .filter((one) => !isWhitespace(one))
    .at(-1)
}
