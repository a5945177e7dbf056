/** The chart that a sheet itself can hold of the table in its cells. */
import { largest } from '../../core/quantity/largest'
import { columnsBefore } from '../../core/definition/columns'
import type { CellFunction, Columns, Parameters } from '../../core/definition/definition'
import { isTable } from '../../core/definition/evaluate'
import { addressOf } from '../../formula/address'
import { odds, swings } from '../../functions/functions'
import { reuseLedger } from '../../functions/reuse/reuseLedger'
import { compare } from '../../functions/review/compare'
import { english } from '../../wording/en/words'
import type { OpenBook } from '../openBook'
import type { SheetChart } from '../sheetChart'
import type { ChartedCell } from './chartedCells'
import { evaluated } from './evaluated'
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
    sheet: cell.sheet,
    free: addressOf(row, right + 1 + 1),
    kind: 'stack',
    title: words.ways.chart,
    along: below(column),
    alongTitle: '',
    valueTitle: words.perLiner,
    series: headings.slice(1).map((name, index) => ({ name, values: below(column + 1 + index) })),
    table: {
      place: `${addressOf(row, column)}:${addressOf(bottom, right)}`,
      rows: [headings, ...rows],
      format: '0.0000_)',
    },
  }
}

function chartOfTable(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  switch (cell.id) {
    case 'COMPARE':
      return chartOfWays(cell, book)
    case 'REUSELEDGER':
      return chartOfRounds(cell, book)
    case 'SWINGS':
      return chartOfSwings(cell, book)
    default:
      return undefined
  }
}

function chartOfWays(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const table = tableOf(compare, cell, book)
  return (
    table && {
      ...table.placed,
      kind: 'bars',
      title: 'Cost of a saleable liner',
      along: table.column('name'),
      alongTitle: '',
      valueTitle: words.perLiner,
      series: [{ name: words.ways.perLiner, values: table.column('perLiner') }],
    }
  )
}

function chartOfRounds(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const table = tableOf(reuseLedger, cell, book)
  return (
    table && {
      ...table.placed,
      kind: 'line',
      title: 'Level cost by the rounds it serves',
      along: table.column('round'),
      alongTitle: words.rounds.rounds,
      valueTitle: 'money per unit and round',
      series: [{ name: 'level cost', values: table.column('levelCost') }],
    }
  )
}

function chartOfSwings(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const table = tableOf(swings, cell, book)
  if (table === undefined) return undefined
  const { of, unit } = askedFor(table.args.functionName)
  return {
    ...table.placed,
    kind: 'tornado',
    title: words.swings.chart(of),
    along: table.column('argument'),
    alongTitle: '',
    valueTitle: unit,
    series: [
      { name: words.swings.atItsLow, values: table.column('atLow') },
      { name: words.swings.atItsHigh, values: table.column('atHigh') },
    ],
    from: Number(table.rows[0]?.likely),
  }
}

/** The table in the cells, whose columns a chart takes by key, and where there is room for the chart. */
function tableOf<P extends Parameters, C extends Columns>(
  definition: CellFunction<P, C>,
  cell: ChartedCell,
  book: OpenBook,
) {
  const found = evaluated(definition, cell.args)
  if ('noChart' in found || !isTable(found.result)) return undefined
  const { columns, rows } = found.result
  return {
    args: found.args,
    rows,
    placed: { sheet: cell.sheet, free: freeBeside(cell, book) },
    column: (key: keyof C & string) => columnBelow(cell, columnsBefore(columns, key), rows.length),
  }
}

function curveOf(cell: ChartedCell, book: OpenBook): SheetChart | undefined {
  const found = oddsOf(cell, book)
  if ('noChart' in found) return undefined
  const {
    of,
    unit,
    percentiles: { length },
  } = found
  const column = (key: keyof typeof odds.result.columns) =>
    columnBelow(cell, columnsBefore(odds.result.columns, key), length)
  return {
    sheet: cell.sheet,
    free: freeBeside(cell, book),
    kind: 'curve',
    title: words.odds.chart(of),
    along: column('result'),
    alongTitle: unit,
    valueTitle: words.odds.shareOfDraws,
    series: [{ name: words.odds.shareOfDraws, values: column('share') }],
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

function freePlaceBeside(
  { sheet, row }: ChartedCell,
  { sheets }: OpenBook,
): { readonly row: number; readonly column: number } {
  const cells = [...(sheets.find(({ name }) => name === sheet)?.cells.values() ?? [])]
  const columns = cells.filter((cell) => cell.row >= row).map(({ column }) => column)
  return { row, column: largest(columns, 0) + 1 + 1 }
}
