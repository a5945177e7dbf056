/** Cells that show an error: where it comes from, and which of the cells that only pass it on. */
import { isCellError } from '../../core/definition/problem'
import { namedRanges, rangesRead, type RangeRead } from '../../derived/rangesRead'
import type { Words } from '../../wording/words'
import type { OpenBook, OpenCell } from '../openBook'
import type { Finding } from './finding'

interface CellInError {
  readonly sheet: string
  readonly address: string
  readonly cell: OpenCell
  readonly code: string
}

export function checkErrors(book: OpenBook, found: Words['found']): readonly Finding[] {
  const names = namedRanges(book.names)
  const inError = book.sheets.flatMap(({ name, cells }) => [...cells].flatMap(([address, cell]): CellInError[] => (
    isCellError(cell.value) ? [{ sheet: name, address, cell, code: cell.value.code }] : [])))
  const errorsIn = errorsByPlace(inError)
  return inError.map(({ sheet, address, cell, code }) => {
    const ranges = cell.sentence === undefined && cell.formula !== '' ? rangesRead(cell.formula, sheet, names) : []
    const sources = new Set(ranges.flatMap(errorsIn))
    const [source] = sources
    const sentence = cell.sentence ?? (source === undefined ? found.shows(code) : found.follows(code, sources.size, `${source.sheet}!${source.address}`))
    return { sheet, address, kind: 'error', sentence }
  })
}

/** Looks them up by place, since a broken sheet may hold thousands of cells that all read each other. */
function errorsByPlace(inError: readonly CellInError[]): (range: RangeRead) => readonly CellInError[] {
  const bySheet = new Map<string, Map<number, Map<number, CellInError>>>()
  for (const one of inError) {
    const columns = bySheet.get(one.sheet.toLowerCase()) ?? new Map<number, Map<number, CellInError>>()
    bySheet.set(one.sheet.toLowerCase(), columns)
    columns.set(one.cell.column, (columns.get(one.cell.column) ?? new Map<number, CellInError>()).set(one.cell.row, one))
  }
  return ({ sheet, top, left, bottom, right }) => [...bySheet.get(sheet.toLowerCase()) ?? []]
    .filter(([column]) => column >= left && column <= right)
    .flatMap(([, byRow]) => (
      bottom - top < byRow.size
        ? Array.from({ length: bottom - top + 1 }, (_, row) => byRow.get(top + row)).filter((one) => one !== undefined)
        : [...byRow.values()].filter(({ cell }) => cell.row >= top && cell.row <= bottom)
    ))
}
