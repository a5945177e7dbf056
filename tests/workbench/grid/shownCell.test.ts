import { expect, it } from 'vitest'
import type { OpenGrid } from '../../../src/workbench/grid/open'
import { shownCell } from '../../../src/workbench/grid/read'
import type { Cell } from '../../../src/workbook/book'
import { openGrid } from './univerInNode'

// Day 46461 is 15 March 2027: Excel counts days from 1 January 1900 as 1, with a 29 February 1900.
const cells: readonly (readonly [Cell, string | undefined])[] = [
  [{ value: 46461, format: 'yyyy-mm-dd_)' }, '2027-03-15'],
  [{ formula: '=46460+1', format: 'd mmm yyyy' }, '15 Mar 2027'],
  [{ value: 46461.5, format: 'yyyy-mm-dd hh:mm' }, '2027-03-15 12:00'],
  [{ value: 46461 }, undefined],
  [{ value: 46461, format: '#,##0.00' }, undefined],
  [{ value: 0.5, format: '0%' }, undefined],
  [{ value: 3, format: '0" days"' }, undefined],
  [{ value: 'soon', format: 'yyyy-mm-dd' }, undefined],
  [{ formula: '=NA()', format: 'yyyy-mm-dd' }, undefined],
]

it('A cell that shows a day is told as that day, and any other as its value.', async () => {
  const grid = openGrid()
  try {
    const rows = cells.map(([cell]) => [cell])
    const sheet = { name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }
    await grid.calculated(() => grid.replace({ names: [], sheets: [sheet] }, 'book'))
    const open = { ...grid, workbook: () => grid.api.getActiveWorkbook()! } as unknown as OpenGrid
    const days = cells.map((_, row) => {
      grid.api.getActiveWorkbook()!.getActiveSheet().getRange(row, 0).activate()
      return shownCell(open)?.day
    })
    expect(days).toEqual(cells.map(([, day]) => day))
  } finally {
    grid.close()
  }
})
