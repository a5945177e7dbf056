/**
 * What a sheet itself calls its cells: the one answer for Working, recalc, Compare and Check. A label is made of texts
 * that were typed, or that a heading makes of the currency, never of a result or of a figure that stands nearby.
 *
 * The row is called by the first text left of the cell, as far as the cells before it are filled or stand below a
 * heading, and across a gap only by texts that end right there: behind a gap can be another table. The column is called
 * by the nearest heading above. A row of headings holds no figures, so the heading of a total is none of a column. The
 * way up ends at a row of several headings that has none here, and at an empty row, unless such a row stands right
 * above it: beyond is another table. A single heading elsewhere, as over a section, is passed by. A heading right above
 * a heading is its unit, or what several columns share; where no such row stands above, the cell of its row below the
 * heading "Unit" is. Headings such as "Figure" say nothing. A row without a text is called by the first heading of its
 * table. A row of totals right above the headings of its table is headed by them.
 *
 * What a formula fills from another cell is called as that cell is, unless the cells beside it give it a row. Where no
 * heading stands above, on sheets that mark none, the nearest text above a figure in an unbroken column is taken.
 */
import type { Block, Position } from '../formula/address'
import type { OpenSheet } from './openBook'
import { type RisingRows, risingRows } from './risingRows'
import { mostRows, sheetHeadings } from './sheetHeadings'
import { sheetTexts, type SheetTexts } from './sheetTexts'

export interface CellLabel {
  readonly row: string | undefined
  readonly column: string | undefined
  readonly unit: string | undefined
}

export interface SheetLabels {
  of(cell: Position): CellLabel
  /** Of a cell, a row or a column of cells: "Peat, Cost per liner, EUR"; empty where the sheet does not say. */
  textOf(cells: Block): string
  /** The text that was typed into a cell, where it can be what something is called. */
  textAt(row: number, column: number): string | undefined
  /** All texts of a row. Results too: these are no labels, but what a pack is sold as is often looked up. */
  textsIn(row: number): readonly string[]
}

interface Parts extends CellLabel {
  /** What the row says its unit is; a heading above the column's own goes before it. */
  readonly unit: string | undefined
  readonly unitAbove: string | undefined
  /** The first heading of the table. */
  readonly first: string | undefined
}

/** Headings over the figures of a table that has one column of them, whatever their capitals. */
const sayNothing = new Set(['figure', 'value'])

const known = new WeakMap<OpenSheet['cells'], SheetLabels>()

/** @param cells Of the rows down to those that are asked for; a sheet that was read is looked through once. */
export function labelsOf(cells: OpenSheet['cells']): SheetLabels {
  const found = known.get(cells) ?? labelsIn(cells)
  known.set(cells, found)
  return found
}

function labelsIn(cells: OpenSheet['cells']): SheetLabels {
  const texts = sheetTexts(cells)
  const headings = sheetHeadings(texts)
  const units = unitColumns(texts)

  function partsOf(cell: Position): Parts {
    const { row, column } = cell
    const filler = texts.fillerOf(row, column)
    const nearest = headings.above(row, column) ?? headings.below(row, column)
    const first = nearest && headings.firstOf(nearest.row, column)
    const heading =
      nearest === undefined && !headings.areMarkedAbove(row) ? textAbove(texts, row, column) : nearest?.heading
    return {
      row:
        filler === undefined
          ? (textBefore(texts, cell, nearest?.row, true) ?? first)
          : (textBefore(texts, cell, nearest?.row, false) ?? partsOf(filler).row ?? first),
      column: heading !== undefined && sayNothing.has(heading.toLowerCase()) ? undefined : heading,
      unit: filler === undefined && !nearest?.hasUnits ? unitOfRow(texts, units, cell, nearest?.row) : undefined,
      unitAbove: nearest?.above,
      first,
    }
  }

  return {
    of(cell) {
      const { row, column, unit, unitAbove } = partsOf(cell)
      return { row, column, unit: unitAbove ?? unit }
    },
    textOf({ top, left, bottom, right }) {
      const { row, column, unit, unitAbove, first } = partsOf({ row: top, column: left })
      if (top === bottom && left === right) return joined(row, column, unitAbove ?? unit)
      if (top === bottom) return joined(row, unit)
      return left === right ? joined(column ?? first, unitAbove) : ''
    },
    textAt: texts.textAt,
    textsIn: (row) =>
      texts
        .cellsOf(row)
        .map(({ value }) => value)
        .filter((value) => typeof value === 'string'),
  }
}

/** @param headings The row of headings above: below one of them an empty cell is no gap. */
function textBefore(
  { cellAt, textAt }: SheetTexts,
  { row, column }: Position,
  headings: number | undefined,
  isAcrossGap: boolean,
): string | undefined {
  const isHeaded = (at: number) => headings !== undefined && cellAt(headings, at) !== undefined
  const isGap = (at: number) => cellAt(row, at) === undefined && !isHeaded(at)
  let first: string | undefined
  let at = column - 1
  for (; at >= 0 && !isGap(at); at -= 1) first = textAt(row, at) ?? first
  if (first !== undefined || !isAcrossGap) return first
  while (at >= 0 && isGap(at)) at -= 1
  if (textAt(row, at) === undefined) return undefined
  for (; at >= 0 && !isGap(at); at -= 1) first = textAt(row, at) ?? first
  return first
}

function textAbove(texts: SheetTexts, row: number, column: number): string | undefined {
  if (typeof texts.cellAt(row, column)?.value === 'string') return undefined
  const start = texts.filledIn(column).startOf(row - 1)
  const at = texts.textsIn(column).lastUpTo(row - 1)
  const isNear = start !== undefined && at !== undefined && at >= Math.max(start, row - mostRows)
  return isNear ? texts.textAt(at, column) : undefined
}

/** @param headings The row of headings that stands above; where none is marked, the nearest that has a unit. */
function unitOfRow(
  texts: SheetTexts,
  units: UnitColumns,
  { row, column }: Position,
  headings: number | undefined,
): string | undefined {
  const at = headings ?? unitsAbove(texts, units, row)
  const place = at === undefined ? undefined : units.of.get(at)
  const isOfFigures = place !== column && texts.cellsOf(row).some((cell) => cell.column < column)
  if (place === undefined || !isOfFigures) return undefined
  // A formula may make it of the currency.
  const unit = texts.cellAt(row, place)?.value
  return texts.textAt(row, place) ?? (typeof unit === 'string' && unit.trim() !== '' ? unit.trim() : undefined)
}

/** The column with the units of each row of headings that has one. */
interface UnitColumns {
  readonly of: ReadonlyMap<number, number>
  readonly rows: RisingRows
}

function unitColumns({ rows, cellsOf, textAt }: SheetTexts): UnitColumns {
  const columns = new Map<number, number>()
  for (const row of rows) {
    const unit = cellsOf(row).find(({ column }) => textAt(row, column)?.toLowerCase() === 'unit')
    if (unit !== undefined) columns.set(row, unit.column)
  }
  return { of: columns, rows: risingRows(columns.keys()) }
}

function unitsAbove({ filled }: SheetTexts, { rows }: UnitColumns, row: number): number | undefined {
  const start = filled.startOf(row - 1)
  const at = rows.lastUpTo(row - 1)
  return start !== undefined && at !== undefined && at >= Math.max(start, row - mostRows) ? at : undefined
}

/** "Trays, trays" says nothing more than "Trays". */
function joined(...texts: readonly (string | undefined)[]): string {
  const said = texts.filter((text) => text !== undefined)
  const lower = said.map((text) => text.toLowerCase())
  return said.filter((_, place) => lower.indexOf(lower[place]!) === place).join(', ')
}
