/** What the sentences about problems are made of in every language. */
import type { CellFunction } from '../core/definition/definition'
import type { Parameter } from '../core/definition/parameter'
import type { NoAnswer, Problem, Refusal } from '../core/definition/problem'
import { withMark, type DecimalMark } from '../core/quantity/decimalMark'
import type { Dimension } from '../core/quantity/units'

/** What a sentence about a refusal may speak of. */
export interface Context {
  /** The argument, with the row where it is a range: "parts, row 3,". */
  readonly place: string
  readonly name: string
  readonly parameter: Parameter | undefined
  /** "Type a number in mL, such as 65, or text with a unit, such as "65 mL"." */
  readonly type: string
  readonly definition: CellFunction
  readonly mark: DecimalMark
  readonly n: Shown
}

/** A number as the user writes it. */
export type Shown = (number: string) => string
type RefusalSentence = (problem: Refusal, context: Context) => string
export type NoAnswerSentence = (problem: NoAnswer, n: Shown) => string
export type RefusalWords = {
  readonly [C in Refusal['code']]: (problem: Extract<Refusal, { code: C }>, context: Context) => string
}
export type NoAnswerWords = {
  readonly [C in NoAnswer['code']]: (problem: Extract<NoAnswer, { code: C }>, n: Shown) => string
}

interface ProblemWords {
  readonly refusals: RefusalWords
  readonly noAnswers: NoAnswerWords
  /** The word before the number of a row. */
  readonly row: string
  readonly typeSomething: (parameter: Parameter, example: string, n: Shown) => string
}

export function sentenceIn(
  { refusals, noAnswers, row, typeSomething }: ProblemWords,
  problem: Problem,
  definition: CellFunction,
  mark: DecimalMark,
): string {
  const n = (number: string) => withMark(number, mark)
  if (problem.kind === 'noAnswer') return (noAnswers[problem.code] as NoAnswerSentence)(problem, n)
  const name = problem.parameter ?? ''
  const parameter = definition.parameters[name]
  const place = problem.row === undefined ? name : `${name}, ${row} ${problem.row},`
  const type = parameter === undefined ? '' : typeSomething(parameter, exampleOf(parameter), n)
  return (refusals[problem.code] as RefusalSentence)(problem, { place, name, parameter, type, definition, mark, n })
}

/** What a cell of the argument may hold. */
function exampleOf({ example, default: fallback, share }: Parameter): string {
  if (example !== undefined) return String(example)
  if (typeof fallback === 'number' && fallback > 0) return String(fallback)
  return share === true ? '0.05' : '1'
}

export const unitList: Readonly<Record<Dimension, string>> = {
  volume: 'mL, L, m3, in3, ft3, yd3, US dry qt, US bushel, US gal or imp gal',
  length: 'mm, cm, m, in, ft or yd',
  mass: 'g, kg, t, oz, lb or short ton',
  massPerVolume: 'kg/m3, g/L, lb/ft3 or lb/yd3',
  volumePerMass: 'L/kg',
}

/** The beginning of a text that is too long to be shown. */
export function shortened(text: string): string {
  // By whole signs, since an emoji is two units of a text.
  const signs = [...text]
  return signs.length > 40 ? `${signs.slice(0, 40).join('')}…` : text
}

/** Moves the decimal point of a written number, so that no binary dust is shown: 0.15 is 15%. */
export function asPercent(value: string): string {
  return `${Number((Number(value) * 100).toPrecision(12))}%`
}

export function hundredth(value: string): string {
  return String(Number((Number(value) / 100).toPrecision(12)))
}
