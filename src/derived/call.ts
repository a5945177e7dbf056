/**
 * Calls a cell function with the arguments a host handed over. It never throws: this is the outermost
 * wrapper of every cell function in both hosts.
 */
import type { CellFunction } from '../core/definition/definition'
import { evaluate } from '../core/definition/evaluate'
import { sentence } from '../wording/en/problems'
import { cellsOf, type CellValues } from './cellsOf'

export type CallOutcome =
  | { readonly kind: 'value'; readonly value: CellValues }
  /** Excel shows a function's sentence for these two error values alone. */
  | { readonly kind: 'error'; readonly code: '#VALUE!' | '#N/A'; readonly sentence: string }
  /** An error value of an input cell, which comes through as it is. */
  | { readonly kind: 'cellError'; readonly code: string }

export function call(definition: CellFunction, args: readonly unknown[]): CallOutcome {
  try {
    const evaluation = evaluate(definition, args)
    if ('result' in evaluation) return { kind: 'value', value: cellsOf(evaluation.result) }
    if ('cellError' in evaluation) return { kind: 'cellError', code: evaluation.cellError.code }
    const sentences = evaluation.problems.map((problem) => sentence(problem, definition))
    const code = evaluation.problems[0]?.kind === 'noAnswer' ? '#N/A' : '#VALUE!'
    return { kind: 'error', code, sentence: sentences.join(' ') }
  } catch (mistake) {
    // Only a mistake of ours ends here. The user still gets a sentence, and we get the call.
    const detail = mistake instanceof Error ? mistake.message : String(mistake)
    return {
      kind: 'error',
      code: '#VALUE!',
      sentence: `STICK.${definition.id} met a fault of its own (${detail}). Please report the formula and its inputs.`,
    }
  }
}
