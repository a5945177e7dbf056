/**
 * Turns references to tables, Prices[Price each], into plain ones, Prices!$B$2:$B$9: all that reads formulas here reads
 * those, and the grid's own tables read the wrong column after one was renamed. Excel writes [@Price], of the same row,
 * where a user points into a row of a table; that becomes B5, which differs from row to row as it does in a column.
 */
import { parseStructRef, tokenize, tokenTypes } from '@borgar/fx'
import { absoluteAddress, type Block, blockAddress, type Position, positionOf } from './address'
import { quotedSheet } from './reference'

export interface PlacedTable extends Block {
  readonly name: string
  readonly sheet: string
  readonly hasHeader: boolean
  readonly hasTotals: boolean
  readonly columns: readonly string[]
}

interface Home {
  readonly sheet: string
  readonly address: string
}

/** What names no table, or no column of it, stays as it is: the cell then shows #NAME?, which is seen. */
export function withoutTableReferences(formula: string, home: Home, tables: readonly PlacedTable[]): string {
  if (tables.length === 0) return formula
  return tokenize(formula, { withLocation: false })
    .map(({ type, value }) => {
      const isReference = type === tokenTypes.REF_STRUCT || type === tokenTypes.REF_NAMED
      return (isReference ? plainReference(value, home, tables) : undefined) ?? value
    })
    .join('')
}

function plainReference(reference: string, home: Home, tables: readonly PlacedTable[]): string | undefined {
  // A table's bare name stands for its data.
  const wanted = parseStructRef(reference) ?? { table: reference, columns: [], sections: [] }
  const place = positionOf(home.address)
  const table = tables.find((one) =>
    wanted.table
      ? one.name.toLowerCase() === wanted.table.toLowerCase()
      : one.sheet === home.sheet && holds(one, place),
  )
  if (table === undefined) return undefined
  const rows = rowsOf(table, wanted.sections ?? [], place)
  const columns = columnsOf(table, wanted.columns ?? [])
  if (rows === undefined || columns === undefined) return undefined
  const block = { top: rows[0], bottom: rows[1], left: columns[0], right: columns[1] }
  const address = wanted.sections?.includes('this row') ? inThisRow(block) : absoluteAddress(block)
  return table.sheet === home.sheet ? address : `${quotedSheet(table.sheet)}!${address}`
}

/** With columns that stay where they are, and the row that follows. */
function inThisRow(block: Block): string {
  return blockAddress(block).replace(/[A-Z]+/g, '$$$&')
}

type Span = readonly [first: number, last: number]

function rowsOf(table: PlacedTable, sections: readonly string[], home: Position): Span | undefined {
  const header = table.top
  const totals = table.bottom
  const firstData = header + (table.hasHeader ? 1 : 0)
  const lastData = totals - (table.hasTotals ? 1 : 0)
  const spans = (sections.length === 0 ? ['data'] : sections).map((section): Span | undefined => {
    switch (section) {
      case 'data':
        return [firstData, lastData]
      case 'all':
        return [header, totals]
      case 'headers':
        return table.hasHeader ? [header, header] : undefined
      case 'totals':
        return table.hasTotals ? [totals, totals] : undefined
      case 'this row':
        return home.row >= firstData && home.row <= lastData ? [home.row, home.row] : undefined
      default:
        return undefined
    }
  })
  const known = spans.filter((span) => span !== undefined)
  if (known.length < spans.length) return undefined
  return [Math.min(...known.map(([first]) => first)), Math.max(...known.map(([, last]) => last))]
}

function columnsOf(table: PlacedTable, names: readonly string[]): Span | undefined {
  if (names.length === 0) return [table.left, table.right]
  const places = names.map((name) => table.columns.findIndex((column) => column.toLowerCase() === name.toLowerCase()))
  if (places.includes(-1)) return undefined
  return [table.left + Math.min(...places), table.left + Math.max(...places)]
}

function holds({ top, left, bottom, right }: PlacedTable, { row, column }: Position): boolean {
  return row >= top && row <= bottom && column >= left && column <= right
}
