/**
 * A cell function, defined once. Everything else that names it is derived: the registration in both hosts,
 * functions.json, the pane's texts, the help page, the working and the plain Excel formula.
 */
import { compile, type Expression, type Value } from '../expression/expression'
import type { Decimal } from '../quantity/decimal'
import type { SourceKey } from '../../sources/bibliography'
import type { Fact } from './fact'
import type { Parameter } from './parameter'
import type { NoAnswer, Refusal } from './problem'

export type Subject = 'counting' | 'volume' | 'blend' | 'buying' | 'reuse' | 'cost' | 'review'

export type Parameters = Readonly<Record<string, Parameter>>

/** The arguments of a call once they were read: decimals in the parameter's unit, defaults filled in. */
export type Arguments<P extends Parameters> = {
  readonly [K in keyof P]: P[K] extends Parameter<infer V> ? V : never
}

export interface Result {
  readonly name: string
  readonly text: string
  readonly unit: string
  /** Set where the result is a range: `like` names the argument whose shape it takes. */
  readonly like?: string
  /** Set where the result is a table: its columns, whose headings become its first row. */
  readonly columns?: readonly Column[]
}

export function fillsOneCell({ like, columns }: Result): boolean {
  return like === undefined && columns === undefined
}

export interface Column {
  readonly heading: string
  readonly text: string
  readonly unit: string
}

/** A number, a name as it was given, or what wording makes a text of. */
export type Cell = Decimal | string | Fact

/** The rows below the headings, each with as many cells as there are columns. */
export type Table = readonly (readonly Cell[])[]

/** One line of a working: what was computed, how, and what came out. */
export interface WorkingStep {
  readonly name: string | Fact
  readonly text: string | Fact
  /** The rule in words or symbols, without "=". */
  readonly formula: string | Fact
  readonly value: Cell | readonly Cell[]
  readonly unit: string
}

export interface Step {
  readonly name: string
  readonly text: string
  readonly unit: string
  readonly expression: Expression
}

export interface Example {
  /** What the example shows, as a sentence. */
  readonly text: string
  /** The arguments as they would be typed; a nested array is a range. */
  readonly given: readonly ExampleArgument[]
  /** A range as its rows; a table as its rows below the headings. */
  readonly gives: number | readonly (readonly (number | string)[])[]
  readonly source: SourceKey
}

export type ExampleArgument = number | string | null | readonly (number | string)[]

export type MethodResult =
  | { readonly value: Value; readonly working: () => readonly WorkingStep[] }
  | { readonly table: Table; readonly working: () => readonly WorkingStep[] }
  | { readonly problem: RefusalWithoutKind | NoAnswer }

type WithoutKind<T> = T extends unknown ? Omit<T, 'kind'> : never
export type RefusalWithoutKind = WithoutKind<Refusal>

/**
 * The call as plain Excel over the parameter names, or why there is none, and where there can be one a formula over
 * these names and that of the result which is TRUE of a right answer.
 */
export type PlainFormula =
  | { readonly formula: string }
  | { readonly reason: string; readonly check?: string }

export type Body =
  | { readonly steps: readonly Step[] }
  | { readonly method: (args: Arguments<Parameters>) => MethodResult; readonly plain: PlainFormula }

export interface Definition {
  readonly id: string
  readonly subject: Subject
  readonly summary: string
  /** When money flows, what a loss is a share of, how halves round: what must be known to use the number. */
  readonly convention: string
  readonly parameters: Parameters
  readonly result: Result
  readonly body: Body
  readonly examples: readonly Example[]
  /** The functions that this one can be asked to compute, by name. */
  readonly over?: readonly Definition[]
}

interface Draft<P extends Parameters> {
  readonly id: string
  readonly subject: Subject
  readonly summary: string
  readonly convention: string
  readonly parameters: P
  readonly result: Result
  readonly examples: readonly Example[]
  readonly over?: readonly Definition[]
}

/** A step before its expression is compiled. */
export type StepDraft = readonly [name: string, expression: string, unit: string, text: string]

/** Defines a function as named Excel expressions over its parameters; the last step is the result. */
export function defineBySteps<P extends Parameters>(draft: Draft<P> & { readonly steps: readonly StepDraft[] }): Definition {
  const known = new Set(Object.keys(draft.parameters))
  const steps = draft.steps.map(([name, source, unit, text]) => {
    const step = { name, text, unit, expression: compile(source, new Set(known)) }
    known.add(name)
    return step
  })
  const { steps: _drafts, ...rest } = draft
  return { ...rest, body: { steps } }
}

/** Defines a function by an algorithm that no step can say. It brings its own working. */
export function defineByMethod<P extends Parameters>(draft: Draft<P> & {
  readonly method: (args: Arguments<P>) => MethodResult
  readonly plain: PlainFormula
}): Definition {
  const { method, plain, ...rest } = draft
  return { ...rest, body: { method: method as (args: Arguments<Parameters>) => MethodResult, plain } }
}
