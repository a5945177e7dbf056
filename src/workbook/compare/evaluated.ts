/** The result of a charted call with its arguments as they were read, or why there is nothing to draw. */
import type { Definition } from '../../core/definition/definition'
import { evaluate } from '../../core/definition/evaluate'
import type { Problem } from '../../core/definition/problem'
import type { Decimal } from '../../core/quantity/decimal'
import { cellsOf, type CellValues } from '../../derived/cellsOf'
import { catalogue } from '../../functions/catalogue'
import type { ChartedId } from './chartedCells'

export interface NoChart {
  readonly noChart:
    | { readonly kind: 'cellError'; readonly code: string }
    | { readonly kind: 'problems'; readonly problems: readonly Problem[]; readonly definition: Definition }
    /** Nothing is used again, and the chart is of what is. */
    | { readonly kind: 'oneRoundOnly' }
}

export interface Evaluated {
  readonly definition: Definition
  readonly result: CellValues
  readonly decimal: (parameter: string) => Decimal
  readonly decimals: (parameter: string) => readonly Decimal[]
  readonly text: (parameter: string) => string
  readonly texts: (parameter: string) => readonly string[]
}

export function definitionOf(id: string): Definition {
  const definition = catalogue.find((one) => one.id === id)
  if (definition === undefined) throw new Error(`The catalogue holds no ${id}`)
  return definition
}

export function evaluated(id: ChartedId, given: readonly unknown[]): Evaluated | NoChart {
  const definition = definitionOf(id)
  const evaluation = evaluate(definition, given)
  if ('cellError' in evaluation) return { noChart: { kind: 'cellError', code: evaluation.cellError.code } }
  if ('problems' in evaluation) return { noChart: { kind: 'problems', problems: evaluation.problems, definition } }
  const { result, args } = evaluation
  return {
    definition,
    result: cellsOf(result),
    decimal: (parameter) => args[parameter] as Decimal,
    decimals: (parameter) => args[parameter] as readonly Decimal[],
    text: (parameter) => args[parameter] as string,
    texts: (parameter) => args[parameter] as readonly string[],
  }
}

/** The rows of a table below its headings. */
export function rowsOf(result: CellValues): readonly (readonly (number | string)[])[] {
  return typeof result === 'number' ? [] : result.slice(1)
}
