/** Computes a definition for the arguments a host handed over. Problems are returned, all of them; nothing is thrown. */
import { Decimal, fitsCell, toCell, zero } from '../quantity/decimal'
import type { Value } from '../expression/expression'
import type {
  Arguments,
  Cell,
  CellFunction,
  Columns,
  MethodResult,
  Parameters,
  RefusalWithoutKind,
  TableRow,
  WorkingStep,
} from './definition'
import type { Fact } from './fact'
import { runSteps } from './runSteps'
import { environmentOf, readArguments, type Layout, type ReadValues } from './readArguments'
import type { CellError, NoAnswer, Problem } from './problem'

/** What a function gives: one number, the rows of a range, or a table. */
export type Answer<C extends Columns = Columns> = number | Cells | Table<C>

/** Row by row. */
type Cells = readonly (readonly number[])[]

export interface Table<C extends Columns = Columns> {
  readonly columns: C
  /** The rows below the headings. */
  readonly rows: readonly AnswerRow<C>[]
}

export type AnswerRow<C extends Columns = Columns> = { readonly [K in keyof C]: number | string | Fact }

export function isTable<C extends Columns>(answer: Answer<C>): answer is Table<C> {
  return typeof answer === 'object' && 'columns' in answer
}

/** The rows of a table; none where the answer is no table. */
export function rowsOf<C extends Columns>(answer: Answer<C>): readonly AnswerRow<C>[] {
  return isTable(answer) ? answer.rows : []
}

export type Evaluation<P extends Parameters = Parameters, C extends Columns = Columns> =
  | { readonly result: Answer<C>; readonly args: Arguments<P>; readonly working: () => readonly WorkingStep[] }
  | { readonly problems: readonly Problem[] }
  | { readonly cellError: CellError }

export function evaluate<P extends Parameters, C extends Columns>(
  definition: CellFunction<P, C>,
  given: readonly unknown[],
): Evaluation<P, C> {
  const read = readArguments(definition.parameters, given)
  if (!('args' in read)) return read
  const { args, layout } = read
  const outcome = computed(definition, read)
  if ('problem' in outcome) return { problems: [withRowOfRange(asProblem(outcome.problem), layout)] }
  const result = 'table' in outcome ? tableOf(definition, outcome.table) : answerOf(definition, outcome.value, layout)
  return result === undefined ? outsideCells : { result, args: args as Arguments<P>, working: outcome.working }
}

/** What the body gives: both kinds of it in one form. */
function computed<P extends Parameters, C extends Columns>(
  { body }: CellFunction<P, C>,
  { args }: Read,
): MethodResult<C> {
  if (!('steps' in body)) return body.method(args as Arguments<P>)
  const environment = environmentOf(args)
  return {
    value: runSteps(body.steps, environment),
    working: () =>
      body.steps.map(({ name, text, unit, expression }) => ({
        name,
        text,
        unit,
        formula: expression.source,
        value: environment[name]!,
      })),
  }
}

/** Of a method that says no more, a refusal. */
function asProblem(problem: RefusalWithoutKind | NoAnswer): Problem {
  return 'kind' in problem ? problem : ({ ...problem, kind: 'refused' } as Problem)
}

/** A method counts the rows that it was given, and the user those of the range, the blank ones too. */
function withRowOfRange(problem: Problem, layout: Layout | undefined): Problem {
  if (!('row' in problem) || problem.row === undefined) return problem
  const place = layout?.kept[problem.row - 1]
  return place === undefined ? problem : { ...problem, row: place + 1 }
}

interface Read {
  readonly args: ReadValues
  readonly layout: Layout | undefined
}

type Named<C extends Columns = Columns> = Pick<CellFunction<Parameters, C>, 'id' | 'result'>

const outsideCells = { problems: [{ kind: 'refused', code: 'resultOutsideCells' }] } as const

/** Nothing where a number is among them that no cell can hold. */
function answerOf(definition: Named, value: Value, layout: Layout | undefined): number | Cells | undefined {
  const values = value instanceof Decimal ? [value] : value
  if (!values.every(fitsCell)) return undefined
  return value instanceof Decimal ? toCell(value) : inShapeOf(value, layout, definition)
}

function tableOf<C extends Columns>(
  { id, result: { columns } }: Named<C>,
  rows: readonly TableRow<C>[],
): Table<C> | undefined {
  const keys = Object.keys(columns ?? {})
  const isWhole = (row: TableRow<C>) => Object.keys(row).length === keys.length && keys.every((key) => key in row)
  if (columns === undefined || !rows.every(isWhole)) {
    throw new Error(`${id} gives a table that is not the one it describes`)
  }
  const isHeld = (cell: Cell) => !(cell instanceof Decimal) || fitsCell(cell)
  if (!rows.every((row) => keys.every((key) => isHeld(row[key]!)))) return undefined
  const shown = (cell: Cell) => (cell instanceof Decimal ? toCell(cell) : cell)
  const cellsOf = (row: TableRow<C>) => Object.fromEntries(keys.map((key) => [key, shown(row[key]!)])) as AnswerRow<C>
  return { columns, rows: rows.map(cellsOf) }
}

/** Puts the values where their arguments lay; a blank place of the range counts as a part of nothing. */
function inShapeOf(values: readonly Decimal[], layout: Layout | undefined, { id, result }: Named): Cells {
  if (layout === undefined || result.like === undefined) {
    throw new Error(`${id} gives a range but does not say in whose shape`)
  }
  const cells = Array.from({ length: layout.places }, () => toCell(zero))
  layout.kept.forEach((place, index) => {
    cells[place] = toCell(values[index]!)
  })
  return layout.lies === 'row' ? [cells] : cells.map((cell) => [cell])
}
