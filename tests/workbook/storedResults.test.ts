import { expect, test } from 'vitest'
import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Book, Cell } from '../../src/workbook/book'
import { storedResults } from '../../src/workbook/storedResults'

const sheet = (name: string, rows: readonly (readonly (Cell | undefined)[])[]) => ({
  name,
  widths: [],
  frozenRows: 0,
  frozenColumns: 0,
  rows,
})

test('Results and what they spill into are stored, of each sheet; what is typed is not, nor is an error.', async () => {
  const book: Book = {
    names: [],
    sheets: [
      sheet('A', [[{ value: 3 }, { formula: '=A1*2' }, { formula: '=1/0' }, { formula: '=A1>2' }]]),
      sheet('B', [[{ formula: '={1,2;3,4}', spills: true }], [undefined, undefined, { value: 'x' }]]),
    ],
  }
  expect(storedResults(book, await calculateBook(book))).toEqual([
    { values: { B1: 6, D1: true }, spills: {} },
    { values: { A1: 1, B1: 2, A2: 3, B2: 4 }, spills: { A1: 'A1:B2' } },
  ])
})
