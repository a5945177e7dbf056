/** How a number came about: the arguments as they were read, the steps, and the convention. For an auditor. */
import type { Definition } from '../core/definition/definition'
import { evaluate } from '../core/definition/evaluate'
import type { Problem } from '../core/definition/problem'
import { isBlank } from '../core/definition/readArguments'
import { Decimal, toCell } from '../core/quantity/decimal'
import { sentence } from '../wording/en/problems'

export type Working =
  | { readonly inputs: readonly WorkingInput[]; readonly steps: readonly WorkingLine[]; readonly convention: string }
  | { readonly refused: readonly string[] }
  | { readonly cellError: string }

/** Several values stand for a row or column of cells; a blank one is an empty text. */
type Shown = number | string | readonly (number | string)[]

export interface WorkingInput {
  readonly name: string
  readonly text: string
  readonly value: Shown
  readonly unit: string
  /** False where the argument was left out or blank, and its default counts. */
  readonly given: boolean
}

export interface WorkingLine {
  readonly name: string
  readonly text: string
  readonly formula: string
  readonly value: Shown
  readonly unit: string
}

export function workingOf(definition: Definition, given: readonly unknown[], say: (problem: Problem, definition: Definition) => string = sentence): Working {
  const evaluation = evaluate(definition, given)
  if ('cellError' in evaluation) return { cellError: evaluation.cellError.code }
  if ('problems' in evaluation) return { refused: evaluation.problems.map((problem) => say(problem, definition)) }
  const inputs = Object.entries(definition.parameters).flatMap(([name, { text, unit }], index) => {
    const value = evaluation.args[name]
    return value === undefined ? [] : [{ name, text, value: shown(value), unit, given: !isBlank(given[index]) }]
  })
  const steps = evaluation.working().map(({ value, ...step }) => ({ ...step, value: shown(value) }))
  return { inputs, steps, convention: definition.convention }
}

function shown(value: Decimal | string | readonly (Decimal | string | undefined)[]): Shown {
  return value instanceof Decimal || typeof value === 'string' ? shownCell(value) : value.map(shownCell)
}

function shownCell(value: Decimal | string | undefined): number | string {
  return value instanceof Decimal ? toCell(value) : value ?? ''
}
