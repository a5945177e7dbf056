/**
 * Lets the formulas of a book wait for what they read: as long as a cell that one reads is empty, or a whole range,
 * it shows nothing, and neither does what reads it. So a book whose inputs are to be typed is not full of errors.
 */
import { namedRanges, rangesRead, referencesIn, type RangeRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import { formulaAt, relativeFormula } from '../../formula/relativeFormula'
import type { Book, Cell, Sheet } from '../book'

export interface Place {
  readonly sheet: string
  readonly row: number
  readonly column: number
}

/** Of the inputs that are empty, some may stay so: nothing waits for those. */
export function withWaitingFormulas({ sheets, names }: Book, mayStayEmpty: (place: Place) => boolean): Book {
  const named = namedRanges(names)
  const formulas = placedCells(sheets)
    .filter(({ cell }) => cell.formula !== undefined)
    .map(({ cell, ...place }) => ({
      place,
      relative: relativeFormula(cell.formula!, addressIn(place)),
      reads: referencesIn(cell.formula!).flatMap((text) =>
        rangesRead(`=${text}`, place.sheet, named).map((range) => ({ text, range })),
      ),
    }))
  const empty = new EmptyCells()
  for (const { cell, ...place } of placedCells(sheets))
    if (isEmptyAtFirst(cell) && !mayStayEmpty(place)) empty.add(place)

  let waiting = formulas.filter(({ reads }) => reads.some(({ range }) => empty.hasIn(range)))
  for (let known = 0; known < waiting.length;) {
    known = waiting.length
    for (const { place } of waiting) empty.add(place)
    waiting = formulas.filter(({ reads }) => reads.some(({ range }) => empty.hasIn(range)))
  }

  // What was filled down a column waits alike in every row, so that it is still one formula.
  const conditions = new Map<string, Set<string>>()
  for (const { place, relative, reads } of waiting) {
    const alike = conditions.get(columnOf(place, relative)) ?? new Set()
    for (const { text, range } of reads)
      if (empty.hasIn(range)) alike.add(relativeFormula(`=${isEmptyText(text, range)}`, addressIn(place)))
    conditions.set(columnOf(place, relative), alike)
  }
  return {
    names,
    sheets: mapCells(sheets, (cell, place) => {
      if (cell.formula === undefined) return cell
      const alike = conditions.get(columnOf(place, relativeFormula(cell.formula, addressIn(place)))) ?? []
      return waitingFor(
        [...alike].map((condition) => formulaAt(condition, addressIn(place)).slice(1)),
        cell,
        cell.formula,
      )
    }),
  }
}

export function mapCells(sheets: readonly Sheet[], change: (cell: Cell, place: Place) => Cell): readonly Sheet[] {
  return sheets.map((sheet) => ({
    ...sheet,
    rows: sheet.rows.map((row, rowIndex) =>
      Array.from(row, (cell, column) => cell && change(cell, { sheet: sheet.name, row: rowIndex, column })),
    ),
  }))
}

function waitingFor(conditions: readonly string[], cell: Cell, formula: string): Cell {
  if (conditions.length === 0) return cell
  const all = conditions.length === 1 ? conditions[0] : `OR(${conditions.join(',')})`
  return { ...cell, formula: `=IF(${all},"",${formula.slice(1)})` }
}

function isEmptyText(text: string, { top, left, bottom, right }: RangeRead): string {
  const sizes = [...(bottom > top ? [`ROWS(${text})`] : []), ...(right > left ? [`COLUMNS(${text})`] : [])]
  // Not =""; the grid's engine takes a 0 for an empty text there.
  return sizes.length === 0 ? `LEN(${text})=0` : `COUNTBLANK(${text})=${sizes.join('*')}`
}

/** An input without content, or a cell that a formula is to spill over. */
function isEmptyAtFirst({ look, formula, value }: Cell): boolean {
  return formula === undefined && value === undefined && (look === 'input' || look === 'result' || look === 'heading')
}

class EmptyCells {
  /** By sheet and row: the columns. */
  private readonly columns = new Map<string, Map<number, Set<number>>>()

  add({ sheet, row, column }: Place): void {
    const rows = this.columns.get(sheet) ?? new Map<number, Set<number>>()
    this.columns.set(sheet, rows.set(row, (rows.get(row) ?? new Set()).add(column)))
  }

  hasIn({ sheet, top, left, bottom, right }: RangeRead): boolean {
    for (const [row, columns] of this.columns.get(sheet) ?? []) {
      if (row >= top && row <= bottom && [...columns].some((column) => column >= left && column <= right)) return true
    }
    return false
  }
}

function placedCells(sheets: readonly Sheet[]): readonly (Place & { readonly cell: Cell })[] {
  return sheets.flatMap((sheet) =>
    sheet.rows.flatMap((row, rowIndex) =>
      Array.from(row).flatMap((cell, column) =>
        cell === undefined ? [] : [{ sheet: sheet.name, row: rowIndex, column, cell }],
      ),
    ),
  )
}

function columnOf({ sheet, column }: Place, relative: string): string {
  return `${sheet}!${column} ${relative}`
}

function addressIn({ row, column }: Place): string {
  return addressOf(row, column)
}
