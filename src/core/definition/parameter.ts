/**
 * What a cell function takes. A parameter's text, unit, range and default stand here and nowhere else:
 * the argument reader, functions.json, the pane, the help pages and the sentences all read them.
 */
import type { Decimal } from '../quantity/decimal'
import { unit as unitOf, type Dimension } from '../quantity/units'

export interface Parameter<Value = unknown> {
  /** What it is, in the grower's words; a part of a sentence, without a full stop. */
  readonly text: string
  readonly takes: 'number' | 'text'
  /** One cell, or a row or column of cells. */
  readonly shape: 'cell' | 'line'
  /** As shown to people: "L", "share", "money per L". */
  readonly unit: string
  /** Set where text with a unit is read too; the number then comes in `unit`. */
  readonly dimension?: Dimension
  readonly share?: true
  readonly whole?: true
  readonly atLeast?: number
  readonly above?: number
  readonly atMost?: number
  readonly below?: number
  /** A range that is divided by its sum. */
  readonly notAllZero?: true
  /** A range of which one cell stands for all: one price for every period. */
  readonly oneForAll?: true
  /**
   * Ranges of one list belong together, place by place, and are of one length. Those without a name are the first list;
   * a second one, such as the additives beside the parts of a mix, has a length of its own.
   */
  readonly list?: string
  readonly optional: boolean
  /** What a sentence gives as an example of what to type, where it is not the default, or 1, or of a share 0.05. */
  readonly example?: number | string
  /** The value of a missing argument, or of a blank cell in a range, or the parameter whose value it takes then. */
  readonly default?: number | { readonly sameAs: string }
  /** Never set: it carries the type that the argument has once it was read. */
  readonly value?: Value
}

interface Range {
  readonly example?: number
  readonly atLeast?: number
  readonly above?: number
  readonly atMost?: number
  readonly below?: number
  readonly whole?: true
  readonly notAllZero?: true
  readonly oneForAll?: true
  readonly list?: string
}

interface Named {
  readonly example?: string
}

interface Described {
  readonly text: string
  readonly example?: number | string
}
interface Required extends Described {
  readonly optional?: never
  readonly default?: never
}
interface Defaulted extends Described {
  readonly default: number | { readonly sameAs: string }
  readonly optional?: never
}
interface Omittable extends Described {
  readonly optional: true
  readonly default?: never
}
type Need = Required | Defaulted | Omittable

type Read<N extends Need, Value> = Parameter<N extends Omittable ? Value | undefined : Value>
/** A range has a value for every place that counts; where it may be left out, its blank cells have none. */
type ReadLine<N extends Need, Value> = Parameter<readonly (N extends Omittable ? Value | undefined : Value)[]>

function build<N extends Need, Value>(need: N, rest: Omit<Parameter, keyof Need | 'value'>): Read<N, Value> {
  const { text, example, default: fallback } = need
  return {
    ...rest,
    text,
    ...(example !== undefined && { example }),
    optional: need.optional === true || fallback !== undefined,
    ...(fallback !== undefined && { default: fallback }),
  } as Parameter as Read<N, Value>
}

function buildLine<N extends Need, Value>(need: N, rest: Omit<Parameter, keyof Need | 'value'>): ReadLine<N, Value> {
  return build<N, Value>(need, rest) as Parameter as ReadLine<N, Value>
}

/** The same parameters, with other examples of what to type. */
export function withExamples<P extends Readonly<Record<string, Parameter>>>(
  parameters: P,
  examples: { readonly [K in keyof P]?: number | string },
): P {
  return Object.fromEntries(
    Object.entries(parameters).map(([name, parameter]) => {
      const example = examples[name]
      return [name, example === undefined ? parameter : { ...parameter, example }]
    }),
  ) as P
}

const cell = { takes: 'number', shape: 'cell' } as const
const line = { takes: 'number', shape: 'line' } as const

/** A number with a name for what it counts: "cuttings", "rounds", "days". */
export function number<N extends Need>(unit: string, need: N & Range): Read<N, Decimal> {
  return build<N, Decimal>(need, { ...cell, unit, ...limits(need) })
}

/** The unit of a day as a cell holds it: a number that the spreadsheet shows as a date. */
export const dayUnit = 'day'

/** An amount of the workbook's one currency. */
export function money<N extends Need>(unit: string, need: N & Range): Read<N, Decimal> {
  return build<N, Decimal>(need, { ...cell, unit, ...limits({ atLeast: 0, ...need }) })
}

/** A physical quantity: a number in `unit`, or text with any unit of the same dimension. */
export function quantity<N extends Need>(unit: string, need: N & Range): Read<N, Decimal> {
  return build<N, Decimal>(need, { ...cell, unit, dimension: unitOf(unit).dimension, ...limits(need) })
}

/** A share of the whole as a fraction: 0.15, or a cell formatted as 15%. */
export function share<N extends Need>(need: N & Range): Read<N, Decimal> {
  return build<N, Decimal>(need, { ...cell, unit: 'share', share: true, ...limits({ atLeast: 0, ...need }) })
}

/** A row or a column of numbers. */
export function numbers<N extends Need>(unit: string, need: N & Range): ReadLine<N, Decimal> {
  return buildLine<N, Decimal>(need, { ...line, unit, ...limits({ atLeast: 0, ...need }) })
}

/** A row or a column of numbers of either sign. */
export function signedNumbers<N extends Need>(unit: string, need: N & Range): ReadLine<N, Decimal> {
  return buildLine<N, Decimal>(need, { ...line, unit, ...limits(need) })
}

/** A row or a column of quantities, each a number in `unit` or text with a unit. */
export function quantities<N extends Need>(unit: string, need: N & Range): ReadLine<N, Decimal> {
  return buildLine<N, Decimal>(need, { ...line, unit, dimension: unitOf(unit).dimension, ...limits(need) })
}

/** A row or a column of shares. */
export function shares<N extends Need>(need: N & Range): ReadLine<N, Decimal> {
  return buildLine<N, Decimal>(need, { ...line, unit: 'share', share: true, ...limits({ atLeast: 0, ...need }) })
}

export function text<N extends Need>(need: N & Named): Read<N, string> {
  return build<N, string>(need, { takes: 'text', shape: 'cell', unit: 'text' })
}

/** A row or a column of names; a number in a cell is a name too. */
export function texts<N extends Need>(need: N & Named & Pick<Range, 'list'>): ReadLine<N, string> {
  return buildLine<N, string>(need, { takes: 'text', shape: 'line', unit: 'text', ...limits(need) })
}

function limits(range: Omit<Range, 'example'>): Omit<Range, 'example'> {
  const kept: { -readonly [K in keyof Range]: Range[K] } = {}
  if (range.atLeast !== undefined && range.above === undefined) kept.atLeast = range.atLeast
  if (range.above !== undefined) kept.above = range.above
  if (range.atMost !== undefined && range.below === undefined) kept.atMost = range.atMost
  if (range.below !== undefined) kept.below = range.below
  if (range.whole === true) kept.whole = true
  if (range.notAllZero === true) kept.notAllZero = true
  if (range.oneForAll === true) kept.oneForAll = true
  if (range.list !== undefined) kept.list = range.list
  return kept
}
