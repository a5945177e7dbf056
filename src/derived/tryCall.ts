/** A call that is still being typed: its result, or what is wrong, argument by argument. */
import type { CellFunction } from '../core/definition/definition'
import { evaluate } from '../core/definition/evaluate'
import type { Problem } from '../core/definition/problem'
import { cellsOf, type CellValues } from './cellsOf'

export type Tried =
  /** As it will stand in the sheet, so in English. */
  | { readonly value: CellValues }
  | { readonly cellError: string }
  | { readonly missing: readonly string[]; readonly problems: readonly ArgumentProblem[] }

export interface ArgumentProblem {
  /** Absent where the call as a whole has no answer. */
  readonly parameter?: string
  readonly sentence: string
}

export function tryCall(
  definition: CellFunction,
  args: readonly unknown[],
  say: (problem: Problem, definition: CellFunction) => string,
): Tried {
  const evaluation = evaluate(definition, args)
  if ('result' in evaluation) return { value: cellsOf(evaluation.result) }
  if ('cellError' in evaluation) return { cellError: evaluation.cellError.code }
  const missing: string[] = []
  const problems: ArgumentProblem[] = []
  for (const problem of evaluation.problems) {
    const parameter = problem.kind === 'refused' ? problem.parameter : undefined
    if (problem.code === 'missing' && parameter !== undefined) missing.push(parameter)
    else problems.push({ ...(parameter === undefined ? {} : { parameter }), sentence: say(problem, definition) })
  }
  return { missing, problems }
}
