/** The result of a charted call with its arguments as they were read, or why there is nothing to draw. */
import type { Arguments, CellFunction, Columns, Parameters } from '../../core/definition/definition'
import { evaluate, type Answer } from '../../core/definition/evaluate'
import type { Problem } from '../../core/definition/problem'

export interface NoChart {
  readonly noChart:
    | { readonly kind: 'cellError'; readonly code: string }
    | { readonly kind: 'problems'; readonly problems: readonly Problem[]; readonly definition: CellFunction }
    /** Nothing is used again, and the chart is of what is. */
    | { readonly kind: 'oneRoundOnly' }
}

export interface Evaluated<P extends Parameters, C extends Columns = Columns> {
  readonly args: Arguments<P>
  readonly result: Answer<C>
}

export function evaluated<P extends Parameters, C extends Columns>(
  definition: CellFunction<P, C>,
  given: readonly unknown[],
): Evaluated<P, C> | NoChart {
  const evaluation = evaluate(definition, given)
  if ('cellError' in evaluation) return { noChart: { kind: 'cellError', code: evaluation.cellError.code } }
  if ('problems' in evaluation) return { noChart: { kind: 'problems', problems: evaluation.problems, definition } }
  return evaluation
}
