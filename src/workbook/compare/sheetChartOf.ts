/** The chart that a sheet itself can hold of the table in its cells. */
import { addressOf } from '../../formula/address'
import { english } from '../../wording/en/words'
import type { OpenBook } from '../openBook'
import type { SheetChart } from '../sheetChart'
import type { ChartedCell } from './chartedCells'
import { evaluated, rowsOf } from './evaluated'
import { oddsOf } from './odds'
import { partsTable, type PartsTable } from './partsTable'
import { askedFor } from './swings'

/** In English, as all that the pane writes into a workbook. */
const words = english.compare

/** Undefined where the cells hold no table to draw: the function is a part of a larger formula, or gives one number. */
export function sheetChartOf(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  if (!cell.alone) return undefined
  const parts = cell.id === 'COMPARE' ? partsTable(cell, book) : undefined
  if (parts !== undefined) return chartOfParts(parts, cell, book)
  return cell.id === 'ODDS' ? curveOf(cell, book) : chartOfTable(cell, book)
}

/** Its cells are written beside the comparison, which itself has no parts, and the chart beside them. */
function chartOfParts({ headings, rows }: PartsTable, cell: ChartedCell, book: OpenBook): SheetChart {
  const { row, column } = freePlaceBeside(cell, book)
  const [bottom, right] = [row + rows.length, column + headings.length - 1]
  const below = (place: number) => `${addressOf(row + 1, place)}:${addressOf(bottom, place)}`
  return {
    sheet: cell.sheet, free: addressOf(row, right + 1 + 1), kind: 'stack', title: words.ways.chart, along: below(column), alongTitle: '', valueTitle: words.perLiner,
    series: headings.slice(1).map((name, index) => ({ name, values: below(column + 1 + index) })),
    table: { place: `${addressOf(row, column)}:${addressOf(bottom, right)}`, rows: [headings, ...rows], format: '0.0000_)' },
  }
}

function chartOfTable(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const table = evaluated(cell.id, cell.args)
  if ('noChart' in table) return undefined
  const rows = rowsOf(table.result)
  const column = (place: number) => columnBelow(cell, place, rows.length)
  const common = { sheet: cell.sheet, free: freeBeside(cell, book) }
  switch (cell.id) {
    case 'COMPARE':
      return { ...common, kind: 'bars', title: 'Cost of a saleable liner', along: column(0), alongTitle: '', valueTitle: words.perLiner, series: [{ name: words.ways.perLiner, values: column(3) }] }
    case 'REUSELEDGER':
      return { ...common, kind: 'line', title: 'Level cost by the rounds it serves', along: column(0), alongTitle: words.rounds.rounds, valueTitle: 'money per unit and round', series: [{ name: 'level cost', values: column(5) }] }
    case 'SWINGS': {
      const { of, unit } = askedFor(table.text('functionName'))
      const ends = [{ name: words.swings.atItsLow, values: column(3) }, { name: words.swings.atItsHigh, values: column(5) }]
      return { ...common, kind: 'tornado', title: words.swings.chart(of), along: column(0), alongTitle: '', valueTitle: unit, series: ends, from: Number(rows[0]?.[4]) }
    }
    default:
      return undefined
  }
}

function curveOf(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const odds = oddsOf(cell, book)
  if ('noChart' in odds) return undefined
  const { of, unit, percentiles: { length } } = odds
  return {
    sheet: cell.sheet, free: freeBeside(cell, book), kind: 'curve', title: words.odds.chart(of), along: columnBelow(cell, 1, length), alongTitle: unit, valueTitle: words.odds.shareOfDraws,
    series: [{ name: words.odds.shareOfDraws, values: columnBelow(cell, 0, length) }],
  }
}

/** So many cells below the headings of a table. */
function columnBelow({ row, column }: ChartedCell, place: number, length: number): string {
  return `${addressOf(row + 1, column + place)}:${addressOf(row + length, column + place)}`
}

/** At the height of the cell, right of all that stands there or further down. */
function freeBeside(cell: ChartedCell, book: OpenBook): string {
  const { row, column } = freePlaceBeside(cell, book)
  return addressOf(row, column)
}

function freePlaceBeside({ sheet, row }: ChartedCell, { sheets }: OpenBook): { readonly row: number; readonly column: number } {
  const cells = [...(sheets.find(({ name }) => name === sheet)?.cells.values() ?? [])]
  const last = Math.max(...cells.filter((cell) => cell.row >= row).map(({ column }) => column))
  return { row, column: last + 1 + 1 }
}
