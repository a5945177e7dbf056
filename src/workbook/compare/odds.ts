/** How likely each result is: the percentiles that ODDS gives. */
import { columnsBefore } from '../../core/definition/columns'
import { placeOf } from '../../core/definition/definition'
import { rowsOf, type AnswerRow } from '../../core/definition/evaluate'
import { isFact, type Fact } from '../../core/definition/fact'
import { addressOf } from '../../formula/address'
import { odds } from '../../functions/functions'
import { factText } from '../../wording/en/facts'
import type { OpenBook } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { evaluated, type NoChart } from './evaluated'
import { askedFor } from './swings'

export interface Odds {
  readonly of: string
  readonly unit: string
  readonly percentiles: readonly Percentile[]
  readonly mean: number
  readonly likely: number
  readonly drawsWithoutAnswer: number
}

export interface Percentile {
  readonly share: number
  readonly result: number
}

export function oddsOf(cell: ChartedCell, book: OpenBook): Odds | NoChart {
  const spilled = spilledRows(cell, book)
  if (spilled !== undefined) return oddsOfRows(String(onlyCell(cell.args[placeOf(odds, 'functionName')])), spilled)
  const table = evaluated(odds, cell.args)
  return 'noChart' in table ? table : oddsOfRows(table.args.functionName, rowsOf(table.result))
}

const { columns } = odds.result
type Row = AnswerRow<typeof columns>

/** What the rows below the percentiles hold. */
const lastRows: readonly Fact[] = [{ fact: 'mean' }, { fact: 'allLikely' }, { fact: 'drawsWithoutAnswer' }]
const rowsOfTable = 14

/** What stands in the sheet already, because drawing ten thousand times again would take a while. */
function spilledRows({ sheet, row, column, alone }: ChartedCell, { sheets }: OpenBook): readonly Row[] | undefined {
  const cells = sheets.find(({ name }) => name === sheet)?.cells
  if (!alone || cells === undefined) return undefined
  const at = (below: number, key: keyof Row) =>
    cells.get(addressOf(row + below, column + columnsBefore(columns, key)))?.value
  const isBelowHeadings = at(0, 'share') === columns.share.heading && at(0, 'result') === columns.result.heading
  if (!isBelowHeadings || at(rowsOfTable, 'share') !== factText(lastRows.at(-1)!)) return undefined
  const rows = Array.from({ length: rowsOfTable }, (_, index): { readonly [K in keyof Row]: unknown } => {
    const [share, result] = [at(index + 1, 'share'), at(index + 1, 'result')]
    return { share: lastRows.find((fact) => factText(fact) === share) ?? share, result }
  })
  return rows.every(isRow) ? rows : undefined
}

/** Else something was typed over them. */
function isRow(row: { readonly [K in keyof Row]: unknown }): row is Row {
  return (typeof row.share === 'number' || isFact(row.share)) && typeof row.result === 'number'
}

function oddsOfRows(functionName: string, rows: readonly Row[]): Odds {
  const told = (wanted: Fact['fact']) =>
    Number(rows.find(({ share }) => isFact(share) && share.fact === wanted)?.result)
  return {
    ...askedFor(functionName),
    percentiles: rows.flatMap(({ share, result }): Percentile[] =>
      typeof share === 'number' ? [{ share, result: Number(result) }] : [],
    ),
    mean: told('mean'),
    likely: told('allLikely'),
    drawsWithoutAnswer: told('drawsWithoutAnswer'),
  }
}

/** A host hands over one cell as it is, or in the shape of a range. */
function onlyCell(given: unknown): unknown {
  return Array.isArray(given) ? onlyCell(given[0]) : given
}
