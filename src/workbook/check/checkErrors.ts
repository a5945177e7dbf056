/** Cells that show an error: where it comes from, and which of the cells that only pass it on. */
import { isCellError } from '../../core/definition/problem'
import { holds, rangesRead } from '../../derived/rangesRead'
import { found } from '../../wording/findings'
import type { OpenBook, OpenCell } from '../openBook'
import type { Finding } from './finding'

interface CellInError {
  readonly sheet: string
  readonly address: string
  readonly cell: OpenCell
  readonly code: string
}

export function checkErrors(book: OpenBook): readonly Finding[] {
  const names = new Map(book.names.map(({ name, refersTo }) => [name.toLowerCase(), refersTo]))
  const inError = book.sheets.flatMap(({ name, cells }) => [...cells].flatMap(([address, cell]): CellInError[] => (
    isCellError(cell.value) ? [{ sheet: name, address, cell, code: cell.value.code }] : [])))
  return inError.map(({ sheet, address, cell, code }) => {
    const ranges = cell.sentence === undefined && cell.formula !== '' ? rangesRead(cell.formula, sheet, names) : []
    const sources = inError.filter((other) => ranges.some((range) => holds(range, other.sheet, other.cell.row, other.cell.column)))
    const [source] = sources
    const sentence = cell.sentence ?? (source === undefined ? found.shows(code) : found.follows(code, sources.length, `${source.sheet}!${source.address}`))
    return { sheet, address, kind: 'error', sentence }
  })
}
