/** What the page opens with: the demo season, or an empty workbook where its address ends in #empty, which takes less time. */
import type { Book } from '../../workbook/book'
import type { StoredResults } from '../../workbook/storedResults'

export const emptyBook: Book = {
  names: [],
  sheets: [{ name: 'Sheet1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }],
}

export const emptyResults: StoredResults = [{ values: {}, spills: {} }]

export function beginsEmpty(): boolean {
  return location.hash === '#empty'
}
