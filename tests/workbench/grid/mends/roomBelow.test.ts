import { expect, it } from 'vitest'
import { roomBelow } from '../../../../src/workbench/grid/mends/roomBelow'
import { openGrid } from '../univerInNode'

it('Without the mend the library answers #REF! where a SEQUENCE would reach below the last row.', async () => {
  const grid = openGrid()
  const rows = [roomBelow - 10, roomBelow + 10].map((length) => [{ formula: `=MAX(SEQUENCE(${length}))` }])
  const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    const sheet = grid.api.getActiveWorkbook()!.getActiveSheet()
    expect(['A1', 'A2'].map((address) => sheet.getRange(address).getValue())).toEqual([roomBelow - 10, '#REF!'])
  } finally {
    grid.close()
  }
})
