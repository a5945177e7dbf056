/** How a number came about: the arguments as they were read, the steps, and the convention. For an auditor. */
import type { Cell, Definition } from '../core/definition/definition'
import { isFact, type Fact } from '../core/definition/fact'
import { evaluate } from '../core/definition/evaluate'
import type { Problem } from '../core/definition/problem'
import { isLeftOut, type ReadValues } from '../core/definition/readArguments'
import { Decimal, toCell } from '../core/quantity/decimal'
import { factText } from '../wording/en/facts'
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

export function workingOf(
  definition: Definition,
  given: readonly unknown[],
  say: (problem: Problem, definition: Definition) => string = sentence,
): Working {
  const evaluation = evaluate(definition, given)
  if ('cellError' in evaluation) return { cellError: evaluation.cellError.code }
  if ('problems' in evaluation) return { refused: evaluation.problems.map((problem) => say(problem, definition)) }
  const args = evaluation.args as ReadValues
  const inputs = Object.entries(definition.parameters).flatMap(([name, { text, unit }], index) => {
    const value = args[name]
    const isGiven = !isLeftOut(definition.parameters[name]!, given[index])
    return value === undefined ? [] : [{ name, text, value: shown(value), unit, given: isGiven }]
  })
  const steps = evaluation.working().map(({ name, text, formula, value, unit }): WorkingLine => ({
    name: said(name),
    text: said(text),
    formula: said(formula),
    value: shown(value),
    unit,
  }))
  return { inputs, steps, convention: definition.convention }
}

/** In English, where definitionIn has not said it in another language. */
function said(text: string | Fact): string {
  return isFact(text) ? factText(text) : text
}

function shown(value: Cell | readonly (Cell | undefined)[]): Shown {
  return isList(value) ? value.map(shownCell) : shownCell(value)
}

function isList(value: Cell | readonly (Cell | undefined)[]): value is readonly (Cell | undefined)[] {
  return Array.isArray(value)
}

function shownCell(value: Cell | undefined): number | string {
  return value instanceof Decimal ? toCell(value) : said(value ?? '')
}
