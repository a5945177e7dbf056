import { addressOf } from '../../derived/reference'
import type { OpenBook, OpenCell } from '../openBook'
import { sheetNamed } from '../sheetNamed'

/** What a cell may be called: by the first texts of its row where the cells of a sum stand in a column, else by the texts above it. */
export function headingsOf(book: OpenBook, sheet: string, { row, column }: OpenCell, standing: 'in a row' | 'in a column'): readonly string[] {
  const cells = sheetNamed(book, sheet)?.cells
  const before = standing === 'in a column'
    ? Array.from({ length: column }, (_, index) => addressOf(row, index))
    : Array.from({ length: row }, (_, index) => addressOf(row - 1 - index, column))
  const texts = before.map((address) => cells?.get(address)?.value).filter((value): value is string => typeof value === 'string' && /\p{L}/u.test(value))
  // Further away stand other rows and tables.
  return texts.slice(0, 2)
}
