/** The bars of a tornado: what each uncertain argument alone does to a result. */
import type { ChartedCell } from './chartedCells'
import { definitionOf, evaluated, rowsOf, type NoChart } from './evaluated'

export interface Swings {
  /** The function that is computed, and the unit of its result. */
  readonly of: string
  readonly unit: string
  readonly likely: number
  /** The widest first. */
  readonly bars: readonly Swing[]
}

export interface Swing {
  readonly argument: string
  readonly low: number
  readonly high: number
  readonly atLow: number
  readonly atHigh: number
  readonly swing: number
}

export function swingsOf({ args }: ChartedCell): Swings | NoChart {
  const table = evaluated('SWINGS', args)
  if ('noChart' in table) return table
  const rows = rowsOf(table.result)
  const bars = rows.map(([argument, low, high, atLow, , atHigh, swing]): Swing => (
    { argument: String(argument), low: Number(low), high: Number(high), atLow: Number(atLow), atHigh: Number(atHigh), swing: Number(swing) }
  ))
  return { ...askedFor(table.text('functionName')), likely: Number(rows[0]?.[4]), bars }
}

/** The name of a function as SWINGS and ODDS take it, with the unit of its result. */
export function askedFor(functionName: string): { readonly of: string; readonly unit: string } {
  const of = functionName.toUpperCase().replace(/^STICK\./, '')
  return { of, unit: definitionOf(of).result.unit }
}
