import { rangesRead, namedRanges } from '../../../src/formula/rangesRead'
import { addressOf } from '../../../src/formula/address'
import type { OpenBook, ReadCell } from '../../../src/workbook/openBook'

/** What the cells of a name show: one value, or those of a column from the top. */
export function valuesOf(book: OpenBook, name: string): readonly ReadCell[] {
  const [range] = rangesRead(`=${name}`, '', namedRanges(book.names))
  if (range === undefined) throw new Error(`The workbook has no name ${name}.`)
  const { cells } = book.sheets.find(({ name: sheet }) => sheet === range.sheet)!
  return Array.from(
    { length: range.bottom - range.top + 1 },
    (_, row) => cells.get(addressOf(range.top + row, range.left))?.value ?? null,
  )
}

export function figureOf(book: OpenBook, name: string): ReadCell {
  return valuesOf(book, name)[0] ?? null
}

/** What the sheet Season shows, by its labels. */
export function overviewOf(book: OpenBook): ReadonlyMap<string, ReadCell> {
  const { cells } = book.sheets.find(({ name }) => name === 'Season')!
  return new Map(
    [...cells.values()]
      .filter(({ column, value }) => column === 0 && typeof value === 'string')
      .map(({ row, value }) => [value as string, cells.get(addressOf(row, 1))?.value ?? null]),
  )
}
