import { expect, it } from 'vitest'
import { gridToBook } from '../../../../src/workbench/grid/gridToBook'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { giveOwnFormulas } from '../../../../src/workbench/grid/mends/ownFormulas'
import type { Cell } from '../../../../src/workbook/book'
import { openGrid } from '../univerInNode'

/** The formulas of column B in the saved book, after the first of them was filled down. */
async function filledDown(grid: ReturnType<typeof openGrid>): Promise<readonly unknown[]> {
  const rows: Cell[][] = [[{ value: 10 }, { formula: '=A1*2' }], [{ value: 20 }], [{ value: 30 }]]
  const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    const workbook = grid.api.getActiveWorkbook()!
    const sheet = workbook.getActiveSheet()
    await grid.calculated(() => sheet.getRange('B1').autoFill(sheet.getRange('B1:B3')))
    expect(sheet.getRange('B3').getValue()).toBe(60)
    return gridToBook(workbook.save()).sheets[0]!.rows.map((row) => row[1]?.formula)
  } finally {
    grid.close()
  }
}

it('A formula that was filled down is saved as a formula in each of its cells.', async () => {
  expect(await filledDown(openGrid([...engineMends, giveOwnFormulas]))).toEqual(['=A1*2', '=A2*2', '=A3*2'])
})

it('Without the mend the library leaves a value in a cell into which a formula was filled.', async () => {
  expect(await filledDown(openGrid())).toContain(undefined)
})
