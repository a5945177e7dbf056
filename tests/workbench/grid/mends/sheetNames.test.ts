import { expect, it } from 'vitest'
import { findSheets } from '../../../../src/workbench/grid/mends/sheetNames'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import type { Book } from '../../../../src/workbook/book'
import { openGrid, without } from '../univerInNode'

const formulas = ["='PLAN A'!A1*2", "='Plan A'!A1*3", "=SUM('plan a'!A1:A2)", '=other!A1', '=OTHER!A1+1']
const sheet = (name: string, rows: Book['sheets'][number]['rows']) => ({
  ...{ name, widths: [], frozenRows: 0, frozenColumns: 0, rows },
})
const book: Book = {
  names: [],
  sheets: [
    sheet('Plan A', [[{ value: 2 }, ...formulas.map((formula) => ({ formula }))], [{ value: 5 }]]),
    sheet('Other', [[{ value: 7 }]]),
  ],
}

async function resultsWith(mends: typeof engineMends): Promise<unknown[]> {
  const grid = openGrid(mends)
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    return grid.api.getActiveWorkbook()!.getSheetByName('Plan A')!.getRange('B1:F1').getValues()[0]!
  } finally {
    grid.close()
  }
}

// Names of sheets differ by more than their capitals, so Excel takes no second "plan a".
it('A sheet is found whatever its capitals.', async () =>
  expect(await resultsWith(engineMends)).toEqual([4, 6, 7, 7, 8]))

it('Without the mend the library makes errors of all formulas that read it.', async () =>
  expect((await resultsWith(without(findSheets))).slice(0, 2)).toEqual(['#VALUE!', '#VALUE!']))
