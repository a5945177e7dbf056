import { cellAt } from '../cellAt'
import { hasWords } from '../hasWords'
import type { OpenBook, OpenCell } from '../openBook'

/** What a term of a sum may be called: by the first texts of its row where the terms stand in a column, else by the texts above it. */
export function headingsOfTerm(book: OpenBook, sheet: string, { row, column }: OpenCell, standing: 'in a row' | 'in a column'): readonly string[] {
  const before = standing === 'in a column'
    ? Array.from({ length: column }, (_, index) => cellAt(book, sheet, row, index))
    : Array.from({ length: row }, (_, index) => cellAt(book, sheet, row - 1 - index, column))
  // Further away stand other rows and tables.
  return before.map((cell) => cell?.value).filter(hasWords).slice(0, 2)
}
