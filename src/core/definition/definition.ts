/**
 * A cell function, defined once. Everything else that names it is derived: the registration in both hosts,
 * functions.json, the pane's texts, the help page, the working and the plain Excel formula. It is written as two
 * values: what a call needs, which Excel loads before it can calculate, and what people read of it.
 */
import { compile, type Expression, type Value } from '../expression/expression'
import type { Decimal } from '../quantity/decimal'
import type { SourceKey } from '../../sources/bibliography'
import type { Fact } from './fact'
import type { Parameter } from './parameter'
import type { NoAnswer, Refusal } from './problem'

export type Subject = 'counting' | 'weeks' | 'volume' | 'blend' | 'buying' | 'reuse' | 'cost' | 'review'

export type Parameters = Readonly<Record<string, Parameter>>

/** The arguments of a call once they were read: decimals in the parameter's unit, defaults filled in. */
export type Arguments<P extends Parameters> = {
  readonly [K in keyof P]: P[K] extends Parameter<infer V> ? V : never
}

export interface Result<C extends Columns = Columns> {
  readonly name: string
  readonly unit: string
  /** Set where the result is a range: `like` names the argument whose shape it takes. */
  readonly like?: string
  /** Set where the result is a table: its columns, whose headings become its first row. */
  readonly columns?: C
}

export interface TableResult<C extends Columns = Columns> extends Result<C> {
  readonly columns: C
}

export function fillsOneCell({ like, columns }: Pick<Result, 'like' | 'columns'>): boolean {
  return like === undefined && columns === undefined
}

export interface Column {
  readonly heading: string
}

/** By key, in the order in which they stand in the sheet. */
export type Columns = Readonly<Record<string, Column>>

/** A number, a name as it was given, or what wording makes a text of. */
export type Cell = Decimal | string | Fact

/** A row of a table below its headings. */
export type TableRow<C extends Columns = Columns> = { readonly [K in keyof C]: Cell }

/** One line of a working: what was computed, how, and what came out. */
export interface WorkingStep {
  readonly name: string | Fact
  readonly text: string | Fact
  /** The rule in words or symbols, without "=". */
  readonly formula: string | Fact
  readonly value: Cell | readonly Cell[]
  readonly unit: string
}

export interface Step<S extends string = string> {
  readonly name: S
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

interface NoResult {
  readonly problem: RefusalWithoutKind | NoAnswer
}

export type ValueResult = { readonly value: Value; readonly working: () => readonly WorkingStep[] } | NoResult
export type RowsResult<C extends Columns = Columns> =
  { readonly table: readonly TableRow<C>[]; readonly working: () => readonly WorkingStep[] } | NoResult
export type MethodResult<C extends Columns = Columns> = ValueResult | RowsResult<C>

type WithoutKind<T> = T extends unknown ? Omit<T, 'kind'> : never
export type RefusalWithoutKind = WithoutKind<Refusal>

/**
 * The call as plain Excel over the parameter names, or why there is none, and where there can be one a formula over
 * these names and that of the result which is TRUE of a right answer.
 */
export type PlainFormula = { readonly formula: string } | { readonly reason: string; readonly check?: string }

export interface StepsBody<S extends string = string> {
  readonly steps: readonly Step<S>[]
}

export interface MethodBody<P extends Parameters = Parameters, C extends Columns = Columns> {
  /** A method, so that a function of certain parameters goes for one of any: it is called with those alone. */
  method(args: Arguments<P>): MethodResult<C>
}

export type Body<P extends Parameters = Parameters, C extends Columns = Columns> = StepsBody | MethodBody<P, C>

/**
 * A cell function as a call needs it.
 * @template P The parameters by name, in the order of the arguments. @template C The columns of a table by key.
 */
export interface CellFunction<P extends Parameters = Parameters, C extends Columns = Columns> {
  readonly id: string
  readonly subject: Subject
  readonly parameters: P
  readonly result: Result<C>
  readonly body: Body<P, C>
  /** The functions that this one can be asked to compute, by name. */
  readonly over?: readonly CellFunction[]
}

/** @template S The names of the steps. */
export interface StepFunction<P extends Parameters = Parameters, S extends string = string> extends CellFunction<P> {
  readonly body: StepsBody<S>
}

export interface MethodFunction<P extends Parameters = Parameters, C extends Columns = Columns> extends CellFunction<
  P,
  C
> {
  readonly body: MethodBody<P, C>
}

/** A function whose result is a table. */
export interface TableFunction<P extends Parameters = Parameters, C extends Columns = Columns> extends MethodFunction<
  P,
  C
> {
  readonly result: TableResult<C>
}

/** What people read of a cell function, and no call needs. */
interface Texts {
  readonly summary: string
  /** When money flows, what a loss is a share of, how halves round: what must be known to use the number. */
  readonly convention: string
  /** What the result is. */
  readonly result: string
  readonly examples: readonly Example[]
}

interface TextsOfMethod<C extends Columns> extends Texts {
  /** Made when asked for, of the columns of a table: what is computed as a module loads stays in functions.js. */
  plain(columns: C): PlainFormula
}

interface TextsOfTable<C extends Columns> extends TextsOfMethod<C> {
  readonly columns: { readonly [K in keyof C]: ColumnTexts }
}

interface ColumnTexts {
  readonly text: string
  readonly unit: string
}

/** The texts that a certain function must have: those of each column where it gives a table. */
export type TextsOf<F> =
  F extends TableFunction<infer _P, infer C> ? TextsOfTable<C> : F extends StepFunction ? Texts : TextsOfMethod<Columns>

/** A cell function with all that people read of it. */
export interface Definition<
  P extends Parameters = Parameters,
  C extends DescribedColumns = DescribedColumns,
> extends CellFunction<P, C> {
  readonly summary: string
  readonly convention: string
  readonly result: Result<C> & { readonly text: string }
  /** Undefined where the steps are the plain formula. */
  readonly plain?: PlainFormula
  readonly examples: readonly Example[]
}

export interface DescribedColumn extends Column, ColumnTexts {}

export type DescribedColumns = Readonly<Record<string, DescribedColumn>>

type Draft<P extends Parameters, R = Omit<Result, 'columns'>> = Omit<CellFunction<P>, 'result' | 'body'> & {
  readonly result: R
}

/** A step before its expression is compiled. */
export type StepDraft<S extends string = string> = readonly [name: S, expression: string, unit: string, text: string]

/** Defines a function as named Excel expressions over its parameters; the last step is the result. */
export function defineBySteps<P extends Parameters, S extends string>(
  draft: Draft<P> & { readonly steps: readonly StepDraft<S>[] },
): StepFunction<P, S> {
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
export function defineByMethod<P extends Parameters>(
  draft: Draft<P> & { readonly method: (args: Arguments<P>) => ValueResult },
): MethodFunction<P> {
  const { method, ...rest } = draft
  return { ...rest, body: { method } }
}

/** Defines a function by an algorithm whose result is a table: each row has a cell for every column, by its key. */
export function defineTable<P extends Parameters, C extends Columns>(
  draft: Draft<P, TableResult<C>> & { readonly method: (args: Arguments<P>) => RowsResult<NoInfer<C>> },
): TableFunction<P, C> {
  const { method, ...rest } = draft
  return { ...rest, body: { method } }
}

/** The place of an argument in a call, from 0; -1 where the function has none of that name. */
export function placeOf<P extends Parameters>(
  { parameters }: Pick<CellFunction<P>, 'parameters'>,
  name: keyof P & string,
): number {
  return Object.keys(parameters).indexOf(name)
}

/** Joins a function and its texts. That they belong together the compiler holds where they are listed, by TextsOf. */
export function described(one: CellFunction, texts: Texts & Partial<TextsOfTable<Columns>>): Definition {
  const { columns, ...result } = one.result
  const { result: text, columns: textsByColumn = {}, plain, ...others } = texts
  const withTexts = (all: Columns) =>
    Object.fromEntries(Object.entries(all).map(([key, column]) => [key, { ...column, ...textsByColumn[key]! }]))
  return {
    ...one,
    ...others,
    result: { ...result, text, ...(columns && { columns: withTexts(columns) }) },
    ...(plain && { plain: plain(columns ?? {}) }),
  }
}
