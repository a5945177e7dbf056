/** The bars of a tornado: what each uncertain argument alone does to a result. */
import { rowsOf } from '../../core/definition/evaluate'
import { catalogue } from '../../functions/catalogue'
import { swings } from '../../functions/functions'
import type { OpenBook } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { evaluated, type NoChart } from './evaluated'
import { wordsBeside } from './wordsBeside'

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
  /** What the sheet calls it, where it says. */
  readonly called?: string
  readonly low: number
  readonly high: number
  readonly atLow: number
  readonly atHigh: number
  readonly swing: number
}

export function swingsOf(cell: ChartedCell, book: OpenBook): Swings | NoChart {
  const table = evaluated(swings, cell.args)
  if ('noChart' in table) return table
  const rows = rowsOf(table.result)
  const words = wordsBeside(cell, swings, 'argumentNames', book)
  const called = new Map(numbered(table.args.argumentNames).map((name, row) => [name, words[row]]))
  const bars = rows.map(({ argument, low, high, atLow, atHigh, swing }): Swing => {
    const own = called.get(String(argument).toLowerCase())
    return {
      argument: String(argument),
      ...(own && { called: own }),
      low: Number(low),
      high: Number(high),
      atLow: Number(atLow),
      atHigh: Number(atHigh),
      swing: Number(swing),
    }
  })
  return { ...askedFor(table.args.functionName), likely: Number(rows[0]?.likely), bars }
}

/** As SWINGS tells several cells of one argument apart: "stagerates 2". */
function numbered(typed: readonly string[]): readonly string[] {
  const names = typed.map((name) => name.toLowerCase())
  const count = (name: string, upTo: number) => names.slice(0, upTo).filter((other) => other === name).length
  return names.map((name, row) => (count(name, names.length) === 1 ? name : `${name} ${count(name, row + 1)}`))
}

/** The name of a function as SWINGS and ODDS take it, with the unit of its result. */
export function askedFor(functionName: string): { readonly of: string; readonly unit: string } {
  const of = functionName.toUpperCase().replace(/^STICK\./, '')
  const definition = catalogue.find(({ id }) => id === of)
  if (definition === undefined) throw new Error(`The catalogue holds no ${of}`)
  return { of, unit: definition.result.unit }
}
