import { IUndoRedoService } from '@univerjs/core'
import { expect, it } from 'vitest'
import type { Cell } from '../../../../src/workbook/book'
import { openGrid } from '../univerInNode'

it('Without the mend the library takes several edits back in the order in which they were made.', async () => {
  const grid = openGrid()
  const rows: Cell[][] = [[{ value: 'Liners' }], [{ value: 1200 }]]
  const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    const sheet = grid.api.getActiveWorkbook()!.getActiveSheet()
    const batch = grid.injector.get(IUndoRedoService).__tempBatchingUndoRedo('book')
    await grid.calculated(() => {
      sheet.insertRows(1)
      sheet.getRange('A2').setValue(700)
    })
    batch.dispose()
    await grid.calculated(() => grid.execute('univer.command.undo', {}))
    // The row of 1200 moved back, and then lost its number to the undo of the 700.
    expect(sheet.getRange('A2').getValue()).toBeNull()
  } finally {
    grid.close()
  }
})
