/** The headings of a sheet: its rows of headings, and which of them stand above a cell. */
import { isCellError } from '../core/definition/problem'
import { risingRows } from './risingRows'
import type { SheetTexts } from './sheetTexts'

export interface HeadingsAbove {
  readonly row: number
  readonly heading: string | undefined
  readonly above: string | undefined
  /** Whether another row of headings stands right above. */
  readonly hasUnits: boolean
}

export interface SheetHeadings {
  /** The nearest row of headings that belongs to a cell, with the cell's own. */
  above(row: number, column: number): HeadingsAbove | undefined
  /** Those that stand right below a row of totals: the nearest to the table, with what stands above them. */
  below(row: number, column: number): HeadingsAbove | undefined
  /** The first of those that stand side by side without a gap. */
  firstOf(row: number, column: number): string | undefined
  areMarkedAbove(row: number): boolean
}

/** So far up headings are looked for. */
export const mostRows = 1000

/** So many rows of headings stand below a row of totals: what to type, units and headings. */
export const rowsBelowTotals = 3

export function sheetHeadings(texts: SheetTexts): SheetHeadings {
  const headingRows = texts.rows.filter((row) => isRowOfHeadings(texts, row))
  const severalHeadings = new Set(headingRows.filter((row) => headingsIn(texts, row).length > 1))
  const marked = risingRows(headingRows)
  const several = risingRows(severalHeadings)
  /** The nearest row of several headings above, down from which each row is filled but at most the one below it. */
  const severalAbove = (row: number) => {
    const gap = (texts.filled.startOf(row - 1) ?? row) - 1
    const at = several.lastUpTo(row - 1)
    return at !== undefined && at >= gap - 1 ? at : undefined
  }
  return {
    above(row, column) {
      const most = row - mostRows
      const nearest = severalAbove(row)
      const last = Math.max(nearest ?? texts.filled.startOf(row - 1) ?? row, most)
      for (let at = marked.lastUpTo(row - 1); at !== undefined && at >= last; at = marked.lastUpTo(at - 1)) {
        const heading = headingAt(texts, at, column)
        if (heading === undefined && at !== nearest) continue
        const hasUnits = severalHeadings.has(at - 1)
        const above = hasUnits ? headingAt(texts, at - 1, column) : undefined
        return { row: at, heading: heading ?? above, above: heading === undefined ? undefined : above, hasUnits }
      }
      return undefined
    },
    below(row, column) {
      let at = row
      while (severalHeadings.has(at + 1)) at += 1
      const heading = at > row ? headingAt(texts, at, column) : undefined
      if (heading === undefined) return undefined
      const hasUnits = at - 1 > row
      return { row: at, heading, above: hasUnits ? headingAt(texts, at - 1, column) : undefined, hasUnits }
    },
    firstOf(row, column) {
      let first = column
      while (first > 0 && headingAt(texts, row, first - 1) !== undefined) first -= 1
      return headingAt(texts, row, first)
    },
    areMarkedAbove: (row) => (marked.lastUpTo(row - 1) ?? -1) >= Math.max(row - mostRows, 0),
  }
}

/** The corner of a table that a formula fills is a heading too, also where it shows an error. */
function isRowOfHeadings(texts: SheetTexts, row: number): boolean {
  const hasFigures = texts
    .cellsOf(row)
    .some(
      ({ value, isHeading }) =>
        typeof value === 'number' || typeof value === 'boolean' || (isCellError(value) && !isHeading),
    )
  return headingsIn(texts, row).length > 0 && !hasFigures
}

function headingsIn(texts: SheetTexts, row: number): readonly string[] {
  return texts.cellsOf(row).flatMap(({ column }) => headingAt(texts, row, column) ?? [])
}

function headingAt({ cellAt, textAt }: SheetTexts, row: number, column: number): string | undefined {
  return cellAt(row, column)?.isHeading ? textAt(row, column) : undefined
}
