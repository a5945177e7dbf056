/** The cells of a sheet, row by row, and the texts among them that can be what something is called. */
import { isCellError } from '../core/definition/problem'
import { readUnit } from '../core/quantity/units'
import { addressesIn, blockIn } from '../formula/address'
import { hasWords } from './hasWords'
import type { OpenCell, OpenSheet, ReadCell } from './openBook'
import { type RisingRows, risingRows } from './risingRows'

export interface SheetTexts {
  /** In which something stands. */
  readonly rows: readonly number[]
  readonly filled: RisingRows
  /** The rows in which something stands in a column. */
  filledIn(column: number): RisingRows
  /** The rows in which a column has a text. */
  textsIn(column: number): RisingRows
  cellAt(row: number, column: number): OpenCell | undefined
  cellsOf(row: number): readonly OpenCell[]
  /** The text that was written into a cell, where it can be what something is called. */
  textAt(row: number, column: number): string | undefined
  /** Of a cell that a formula elsewhere fills, that formula's cell. */
  fillerOf(row: number, column: number): OpenCell | undefined
}

export function sheetTexts(cells: OpenSheet['cells']): SheetTexts {
  const rows = filledRows(cells)
  const fillers = cellsThatFill(cells)
  const cellAt = (row: number, column: number) => rows.get(row)?.get(column)
  const textAt = (row: number, column: number) => {
    const cell = cellAt(row, column)
    if (cell === undefined || fillers.has(cell) || !isName(cell.value)) return undefined
    // A heading may be made by a formula, as a unit is of the currency; the corner of a table is a result.
    const isWritten = cell.formula === '' || (cell.isHeading && cell.spill === undefined)
    return isWritten ? cell.value.trim() : undefined
  }
  const rowsOf = (column: number) => [...rows].flatMap(([row, inRow]) => (inRow.has(column) ? [row] : []))
  const filledIn = byColumn((column) => risingRows(rowsOf(column)))
  const textsIn = byColumn((column) => risingRows(rowsOf(column).filter((row) => textAt(row, column) !== undefined)))
  return {
    rows: [...rows.keys()],
    filled: risingRows(rows.keys()),
    filledIn,
    textsIn,
    cellAt,
    cellsOf: (row) => [...(rows.get(row)?.values() ?? [])],
    textAt,
    fillerOf: (row, column) => fillers.get(cellAt(row, column)),
  }
}

/** Found once, when it is first asked for. */
function byColumn<T>(find: (column: number) => T): (column: number) => T {
  const found = new Map<number, T>()
  return (column) => {
    const one = found.get(column) ?? find(column)
    found.set(column, one)
    return one
  }
}

type Rows = ReadonlyMap<number, ReadonlyMap<number, OpenCell>>

/** Row by row, those in which something stands: one host has an empty text where another has no cell. */
function filledRows(cells: OpenSheet['cells']): Rows {
  const rows = new Map<number, Map<number, OpenCell>>()
  for (const cell of cells.values()) {
    if (cell.formula === '' && (cell.value === null || cell.value === '')) continue
    const inRow = rows.get(cell.row) ?? new Map<number, OpenCell>()
    rows.set(cell.row, inRow.set(cell.column, cell))
  }
  return rows
}

/** Of each cell that a formula elsewhere fills, that formula's cell. */
function cellsThatFill(cells: OpenSheet['cells']): ReadonlyMap<OpenCell | undefined, OpenCell> {
  const fillers = new Map<OpenCell | undefined, OpenCell>()
  for (const cell of cells.values()) {
    // A formula with something in its way says where it would spill, and fills nothing.
    if (cell.spill === undefined || isCellError(cell.value)) continue
    for (const address of addressesIn(blockIn(cell.spill))) {
      const filled = cells.get(address)
      if (filled !== undefined && filled !== cell) fillers.set(filled, cell)
    }
  }
  return fillers
}

/** A text with letters that is no figure with its unit, such as "65 mL" or "12 weeks"; "6-inch pot" is a name. */
function isName(value: ReadCell): value is string {
  if (!hasWords(value)) return false
  const [, unit] = /^[+-]?\d[\d.,]*\s*(.+)$/.exec(value.trim()) ?? []
  return unit === undefined || (/\s/.test(unit) && 'code' in readUnit(unit)) || unit.startsWith('-')
}
