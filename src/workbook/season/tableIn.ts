import type { SheetTable } from '../book'

/** A table from its row of headings to its last row: `tableIn('OrderBook', 'A', 7, 'T', 24)`. */
export function tableIn(
  name: string,
  firstColumn: string,
  headingRow: number,
  lastColumn: string,
  lastRow: number,
): SheetTable {
  return { name, range: `${firstColumn}${headingRow}:${lastColumn}${lastRow}` }
}
