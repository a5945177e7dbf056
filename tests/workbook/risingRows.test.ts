/** By the definition of the two questions. */
import { expect, it } from 'vitest'
import { risingRows } from '../../src/workbook/risingRows'

it('The nearest row at or above one, and where the rows that lead to it without a gap begin, are found in any order of rows.', () => {
  const rows = risingRows([7, 3, 4, 9, 8, 5])
  expect([2, 3, 6, 7, 1000].map(rows.lastUpTo)).toEqual([undefined, 3, 5, 7, 9])
  expect([2, 3, 5, 6, 9].map(rows.startOf)).toEqual([undefined, 3, 3, undefined, 7])
  expect(risingRows([]).lastUpTo(4)).toBe(undefined)
})
