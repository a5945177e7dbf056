/** Computes a definition for the arguments a host handed over. Problems are returned, all of them; nothing is thrown. */
import { Decimal, fitsCell, toCell, zero } from '../quantity/decimal'
import type { Value } from '../expression/expression'
import type { Arguments, Definition, Parameters, Table, WorkingStep } from './definition'
import type { Fact } from './fact'
import { runSteps } from './runSteps'
import { environmentOf, readArguments, type Layout, type ReadValues } from './readArguments'
import type { CellError, Problem } from './problem'

/** What a function gives to its cell, or to the cells that it spills over. */
export type Answer = number | readonly (readonly (number | string | Fact)[])[]

export type Evaluation =
  | { readonly result: Answer; readonly args: ReadValues; readonly working: () => readonly WorkingStep[] }
  | { readonly problems: readonly Problem[] }
  | { readonly cellError: CellError }

export function evaluate(definition: Definition, given: readonly unknown[]): Evaluation {
  const read = readArguments(definition.parameters, given)
  if (!('args' in read)) return read
  const { args } = read
  const { body } = definition
  if ('steps' in body) {
    const environment = environmentOf(args)
    return finish(definition, runSteps(body.steps, environment), read, () => body.steps.map(({ name, text, unit, expression }) => (
      { name, text, unit, formula: expression.source, value: environment[name]! }
    )))
  }
  const outcome = body.method(args as Arguments<Parameters>)
  if ('value' in outcome) return finish(definition, outcome.value, read, outcome.working)
  if ('table' in outcome) return finishTable(definition, outcome.table, args, outcome.working)
  const { problem } = outcome
  return { problems: [withRowOfRange('kind' in problem ? problem : { ...problem, kind: 'refused' } as Problem, read.layout)] }
}

/** A method counts the rows that it was given, and the user those of the range, the blank ones too. */
function withRowOfRange(problem: Problem, layout: Layout | undefined): Problem {
  if (!('row' in problem) || problem.row === undefined) return problem
  const place = layout?.kept[problem.row - 1]
  return place === undefined ? problem : { ...problem, row: place + 1 }
}

interface Read { readonly args: ReadValues; readonly layout: Layout | undefined }

const outsideCells: Evaluation = { problems: [{ kind: 'refused', code: 'resultOutsideCells' }] }

function finish(definition: Definition, value: Value, { args, layout }: Read, working: () => readonly WorkingStep[]): Evaluation {
  const values = value instanceof Decimal ? [value] : value
  if (!values.every(fitsCell)) return outsideCells
  if (value instanceof Decimal) return { result: toCell(value), args, working }
  return { result: inShapeOf(value, layout, definition), args, working }
}

function finishTable({ id, result }: Definition, rows: Table, args: ReadValues, working: () => readonly WorkingStep[]): Evaluation {
  const { columns } = result
  if (columns === undefined || rows.some((row) => row.length !== columns.length)) throw new Error(`${id} gives a table that is not the one it describes`)
  if (!rows.flat().every((cell) => !(cell instanceof Decimal) || fitsCell(cell))) return outsideCells
  const cells = rows.map((row) => row.map((cell) => (cell instanceof Decimal ? toCell(cell) : cell)))
  return { result: [columns.map(({ heading }) => heading), ...cells], args, working }
}

/** Puts the values where their arguments lay; a blank place of the range counts as a part of nothing. */
function inShapeOf(values: readonly Decimal[], layout: Layout | undefined, { id, result }: Definition): Answer {
  if (layout === undefined || result.like === undefined) throw new Error(`${id} gives a range but does not say in whose shape`)
  const cells = Array.from({ length: layout.places }, () => toCell(zero))
  layout.kept.forEach((place, index) => { cells[place] = toCell(values[index]!) })
  return layout.lies === 'row' ? [cells] : cells.map((cell) => [cell])
}
