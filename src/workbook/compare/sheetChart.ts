/** Charts of a sheet's own, made by its host from the cells that a table fills. */
import { addressOf } from '../../derived/reference'
import type { OpenBook } from '../openBook'
import type { CellPlace } from '../port'
import type { ChartedCell } from './chartedCells'
import { evaluated, rowsOf } from './evaluated'
import { askedFor } from './swings'

export interface SheetChart {
  readonly sheet: string
  readonly kind: 'bars' | 'line' | 'tornado' | 'curve'
  readonly title: string
  /** Cells of the names of the bars, or of the values along the line. */
  readonly along: string
  readonly series: readonly SheetSeries[]
  readonly alongTitle: string
  readonly valueTitle: string
  /** Where the bars of a tornado begin. */
  readonly from?: number
  /** Nothing stands in this cell, right of it or below it. */
  readonly free: CellPlace
}

export interface SheetSeries { readonly name: string; readonly values: string }

/** Undefined where the cells hold no table to draw: the function is a part of a larger formula, or gives one number. */
export function sheetChartOf(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const table = cell.alone ? evaluated(cell.id, cell.args) : undefined
  if (table === undefined || 'sentence' in table) return undefined
  const rows = rowsOf(table.result).length
  const column = (place: number, last = rows) => `${addressOf(cell.row + 1, cell.column + place)}:${addressOf(cell.row + last, cell.column + place)}`
  const common = { sheet: cell.sheet, free: freeBeside(cell, book) }
  switch (cell.id) {
    case 'COMPARE':
      return { ...common, kind: 'bars', title: 'Cost of a saleable liner', along: column(0), alongTitle: '', valueTitle: 'money per saleable liner', series: [{ name: 'per saleable liner', values: column(3) }] }
    case 'REUSELEDGER':
      return { ...common, kind: 'line', title: 'Level cost by the rounds it serves', along: column(0), alongTitle: 'rounds', valueTitle: 'money per unit and round', series: [{ name: 'level cost', values: column(5) }] }
    case 'SWINGS': {
      const { of, unit } = askedFor(table.text('functionName'))
      const ends = [{ name: 'with the argument at its low', values: column(3) }, { name: 'with the argument at its high', values: column(5) }]
      return { ...common, kind: 'tornado', title: `What moves ${of} most`, along: column(0), alongTitle: '', valueTitle: unit, series: ends, from: Number(rowsOf(table.result)[0]?.[4]) }
    }
    case 'ODDS': {
      const { of, unit } = askedFor(table.text('functionName'))
      // The last rows of the table are no percentiles.
      const shares = rowsOf(table.result).filter(([share]) => typeof share === 'number').length
      return { ...common, kind: 'curve', title: `How likely each ${of} is`, along: column(1, shares), alongTitle: unit, valueTitle: 'share of the draws', series: [{ name: 'share of the draws', values: column(0, shares) }] }
    }
    default:
      return undefined
  }
}

/** At the height of the cell, right of all that stands there or further down. */
function freeBeside({ sheet, row }: ChartedCell, { sheets }: OpenBook): CellPlace {
  const cells = [...(sheets.find(({ name }) => name === sheet)?.cells.values() ?? [])]
  const last = Math.max(...cells.filter((cell) => cell.row >= row).map(({ column }) => column))
  return { sheet, address: addressOf(row, last + 1 + 1) }
}
