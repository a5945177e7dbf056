/**
 * What a sheet itself calls its cells: the one answer for Working, recalc, Compare and Check. A label is made of texts
 * that were typed, never of a result or of a figure that stands nearby.
 *
 * The row is called by the first text left of the cell, as far as the cells before it are filled or stand below a
 * heading, and across a gap only by texts that end right there: behind a gap can be another table. The column is called
 * by the nearest heading above. A row of headings holds no figures, so the heading of a total is none of a column. The
 * way up ends at a row of several headings that has none here, and at an empty row, unless such a row stands right
 * above it: beyond is another table. A single heading elsewhere, as over a section, is passed by. A heading right above
 * a heading is its unit, or what several columns share; where no such row stands above, the cell of its row below the
 * heading "Unit" is. Headings such as "Figure" say nothing. A row without a text is called by the first heading of its
 * table.
 *
 * What a formula fills from another cell is called as that cell is, unless the cells beside it give it a row. Where no
 * heading stands above, on sheets that mark none, the nearest text above a figure in an unbroken column is taken.
 */
import { isCellError } from '../core/definition/problem'
import { readUnit } from '../core/quantity/units'
import { addressesIn, blockIn, type Block, type Position } from '../formula/address'
import { hasWords } from './hasWords'
import type { OpenCell, OpenSheet, ReadCell } from './openBook'

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

interface HeadingsAbove {
  readonly row: number
  readonly heading: string | undefined
  readonly above: string | undefined
  /** Whether another row of headings stands right above. */
  readonly hasUnits: boolean
}

interface Parts extends CellLabel {
  /** What the row says its unit is; a heading above the column's own goes before it. */
  readonly unit: string | undefined
  readonly unitAbove: string | undefined
  /** The first heading of the table. */
  readonly first: string | undefined
}

/** So far up headings are looked for. */
export const mostRows = 1000

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
  const rows = filledRows(cells)
  const fillers = cellsThatFill(cells)
  const headingRows = new Set([...rows.keys()].filter(isRowOfHeadings))
  const severalHeadings = new Set([...headingRows].filter((row) => headingsIn(row).length > 1))

  return {
    of: labelOf,
    textOf({ top, left, bottom, right }) {
      const { row, column, unit, unitAbove, first } = partsOf({ row: top, column: left })
      if (top === bottom && left === right) return joined(row, column, unitAbove ?? unit)
      if (top === bottom) return joined(row, unit)
      return left === right ? joined(column ?? first, unitAbove) : ''
    },
    textAt,
    textsIn: (row) =>
      cellsOf(row)
        .map(({ value }) => value)
        .filter((value) => typeof value === 'string'),
  }

  function labelOf(cell: Position): CellLabel {
    const { row, column, unit, unitAbove } = partsOf(cell)
    return { row, column, unit: unitAbove ?? unit }
  }

  function partsOf(cell: Position): Parts {
    const { row, column } = cell
    const filler = fillers.get(cellAt(row, column))
    const headings = headingsAbove(row, column)
    const first = headings && firstHeading(headings.row, column)
    const heading = headings === undefined && !marksHeadingsAbove(row) ? textAbove(row, column) : headings?.heading
    return {
      row:
        filler === undefined
          ? (textBefore(cell, headings?.row, true) ?? first)
          : (textBefore(cell, headings?.row, false) ?? partsOf(filler).row ?? first),
      column: heading !== undefined && sayNothing.has(heading.toLowerCase()) ? undefined : heading,
      unit: filler === undefined && !headings?.hasUnits ? unitOfRow(row, column, headings?.row) : undefined,
      unitAbove: headings?.above,
      first,
    }
  }

  function textAt(row: number, column: number): string | undefined {
    const cell = cellAt(row, column)
    return cell?.formula === '' && !fillers.has(cell) && isName(cell.value) ? cell.value.trim() : undefined
  }

  function headingAt(row: number, column: number): string | undefined {
    return cellAt(row, column)?.isHeading ? textAt(row, column) : undefined
  }

  function headingsIn(row: number): readonly string[] {
    return cellsOf(row).flatMap(({ column }) => headingAt(row, column) ?? [])
  }

  /** The corner of a table that a formula fills is a heading too, also where it shows an error. */
  function isRowOfHeadings(row: number): boolean {
    const hasFigures = cellsOf(row).some(
      ({ value, isHeading }) =>
        typeof value === 'number' || typeof value === 'boolean' || (isCellError(value) && !isHeading),
    )
    return headingsIn(row).length > 0 && !hasFigures
  }

  function headingsAbove(row: number, column: number): HeadingsAbove | undefined {
    for (let at = row - 1; at >= row - mostRows; at -= 1) {
      if (!rows.has(at) && !severalHeadings.has(at - 1)) return undefined
      const heading = headingRows.has(at) ? headingAt(at, column) : undefined
      if (heading === undefined && !severalHeadings.has(at)) continue
      const hasUnits = severalHeadings.has(at - 1)
      const above = hasUnits ? headingAt(at - 1, column) : undefined
      return { row: at, heading: heading ?? above, above: heading === undefined ? undefined : above, hasUnits }
    }
    return undefined
  }

  /** Of those that stand side by side without a gap. */
  function firstHeading(row: number, column: number): string | undefined {
    let first = column
    while (first > 0 && headingAt(row, first - 1) !== undefined) first -= 1
    return headingAt(row, first)
  }

  /** @param headings The row of headings above: below one of them an empty cell is no gap. */
  function textBefore(
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

  function textAbove(row: number, column: number): string | undefined {
    if (typeof cellAt(row, column)?.value === 'string') return undefined
    for (let at = row - 1; at >= row - mostRows && cellAt(at, column) !== undefined; at -= 1) {
      const text = textAt(at, column)
      if (text !== undefined) return text
    }
    return undefined
  }

  function marksHeadingsAbove(row: number): boolean {
    return [...headingRows].some((at) => at < row && at >= row - mostRows)
  }

  /** @param headings The row of headings that stands above; where none is marked, the nearest that has a unit. */
  function unitOfRow(row: number, column: number, headings: number | undefined): string | undefined {
    let at = headings ?? row - 1
    while (headings === undefined && at >= row - mostRows && rows.has(at) && unitColumn(at) === undefined) at -= 1
    const place = unitColumn(at)
    const isOfFigures = place !== column && cellsOf(row).some((cell) => cell.column < column)
    return place === undefined || !isOfFigures ? undefined : textAt(row, place)
  }

  function unitColumn(row: number): number | undefined {
    return cellsOf(row).find(({ column }) => textAt(row, column)?.toLowerCase() === 'unit')?.column
  }

  function cellAt(row: number, column: number): OpenCell | undefined {
    return rows.get(row)?.get(column)
  }

  function cellsOf(row: number): readonly OpenCell[] {
    return [...(rows.get(row)?.values() ?? [])]
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

/** "Trays, trays" says nothing more than "Trays". */
function joined(...texts: readonly (string | undefined)[]): string {
  const said = texts.filter((text) => text !== undefined)
  const lower = said.map((text) => text.toLowerCase())
  return said.filter((_, place) => lower.indexOf(lower[place]!) === place).join(', ')
}
