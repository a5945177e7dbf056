import { addressOf } from '../../src/formula/address'
import type { Sheet } from '../../src/workbook/book'

/** Each note says what stands in its cell. */
export const notedSheet: Sheet = {
  name: 'Noted',
  widths: [],
  frozenRows: 0,
  frozenColumns: 0,
  rows: Array.from({ length: 12 }, (_row, row) =>
    Array.from({ length: 3 }, (_column, column) => {
      const value = `was ${addressOf(row, column)}`
      return { value, note: value }
    }),
  ),
}
