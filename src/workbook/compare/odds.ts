/** How likely each result is: the percentiles that ODDS gives. */
import { addressOf } from '../../formula/address'
import type { OpenBook } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { definitionOf, evaluated, rowsOf, type NoChart } from './evaluated'
import { askedFor } from './swings'

export interface Odds {
  readonly of: string
  readonly unit: string
  readonly percentiles: readonly Percentile[]
  readonly mean: number
  readonly likely: number
  readonly drawsWithoutAnswer: number
}

export interface Percentile { readonly share: number; readonly result: number }

export function oddsOf(cell: ChartedCell, book: OpenBook): Odds | NoChart {
  const spilled = spilledRows(cell, book)
  if (spilled !== undefined) return oddsOfRows(String(onlyCell(cell.args[0])), spilled)
  const table = evaluated('ODDS', cell.args)
  return 'noChart' in table ? table : oddsOfRows(table.text('functionName'), rowsOf(table.result))
}

type Rows = readonly (readonly (number | string)[])[]

/** The last row of the table, which ends it. */
const lastRow = 'draws without answer'
const rowsOfTable = 14

/** What stands in the sheet already, because drawing ten thousand times again would take a while. */
function spilledRows({ sheet, row, column, alone }: ChartedCell, { sheets }: OpenBook): Rows | undefined {
  const cells = sheets.find(({ name }) => name === sheet)?.cells
  if (!alone || cells === undefined) return undefined
  const at = (below: number, beside: number) => cells.get(addressOf(row + below, column + beside))?.value
  const headings = definitionOf('ODDS').result.columns!.map(({ heading }) => heading)
  if (!headings.every((heading, beside) => at(0, beside) === heading) || at(rowsOfTable, 0) !== lastRow) return undefined
  const rows = Array.from({ length: rowsOfTable }, (_, index) => headings.map((_heading, beside) => at(index + 1, beside)))
  return rows.every((cellsOfRow) => cellsOfRow.every((value) => typeof value === 'number' || typeof value === 'string')) ? rows as Rows : undefined
}

function oddsOfRows(functionName: string, rows: Rows): Odds {
  const named = (name: string) => Number(rows.find(([first]) => first === name)?.[1])
  return {
    ...askedFor(functionName),
    percentiles: rows.flatMap(([share, result]): Percentile[] => (typeof share === 'number' ? [{ share, result: Number(result) }] : [])),
    mean: named('mean'),
    likely: named('all likely'),
    drawsWithoutAnswer: named(lastRow),
  }
}

/** A host hands over one cell as it is, or in the shape of a range. */
function onlyCell(given: unknown): unknown {
  return Array.isArray(given) ? onlyCell(given[0]) : given
}
