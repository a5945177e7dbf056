import { addressOf } from '../formula/address'
import type { OpenBook, OpenCell } from './openBook'
import { sheetNamed } from './sheetNamed'

/** What stands there, rows and columns from 0; undefined where nothing does. */
export function cellAt(book: OpenBook, sheet: string, row: number, column: number): OpenCell | undefined {
  return sheetNamed(book, sheet)?.cells.get(addressOf(row, column))
}
