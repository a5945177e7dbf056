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

/** What a calculated column of a table shows, from the top; headings may repeat, with another unit above each. */
export function columnOf(book: OpenBook, sheet: string, heading: string, unit: string): readonly ReadCell[] {
  const { cells } = book.sheets.find(({ name }) => name === sheet)!
  const at = (row: number, column: number) => cells.get(addressOf(row, column))?.value ?? null
  const headings = [...cells.values()].find(({ column, value }) => column === 0 && value === 'State')!.row
  const found = [...cells.values()].filter(
    ({ row, column, value }) =>
      row === headings &&
      value === heading &&
      (at(row - 1, column) ?? '') === unit &&
      at(row - 2, column) === 'calculated',
  )
  if (found.length !== 1) throw new Error(`${sheet} has ${found.length} calculated columns ${heading}, ${unit}.`)
  const last = Math.max(...[...cells.values()].map(({ row }) => row))
  return Array.from({ length: last - headings }, (_, index) => at(headings + 1 + index, found[0]!.column))
}

/** The figure beside its label, with that unit. */
export function figureIn(book: OpenBook, sheet: string, label: string, unit: string): ReadCell {
  const { cells } = book.sheets.find(({ name }) => name === sheet)!
  const at = (row: number, column: number) => cells.get(addressOf(row, column))?.value ?? null
  const found = [...cells.values()].filter(
    ({ row, column, value }) => column === 0 && value === label && (at(row, 2) ?? '') === unit,
  )
  if (found.length !== 1) throw new Error(`${sheet} has ${found.length} figures ${label}, ${unit}.`)
  return at(found[0]!.row, 1)
}

/** The rows below the headings of a table that a formula spills, by its first heading. */
export function tableIn(book: OpenBook, sheet: string, heading: string): readonly (readonly ReadCell[])[] {
  const { cells } = book.sheets.find(({ name }) => name === sheet)!
  const at = (row: number, column: number) => cells.get(addressOf(row, column))?.value ?? null
  const corner = [...cells.values()].find(({ value, spill }) => value === heading && spill !== undefined)
  if (corner === undefined) throw new Error(`${sheet} has no table ${heading}.`)
  const isIn = (row: number, column: number) => ![null, ''].includes(at(row, column) as string | null)
  const rows: ReadCell[][] = []
  for (let row = corner.row + 1; isIn(row, corner.column); row++) {
    rows.push([])
    for (let column = corner.column; isIn(row, column); column++) rows.at(-1)!.push(at(row, column))
  }
  return rows
}
