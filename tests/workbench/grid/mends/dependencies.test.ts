import { IDependencyManagerService } from '@univerjs/engine-formula'
import { expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { keepDependencies } from '../../../../src/workbench/grid/mends/dependencies'
import type { Cell, Sheet } from '../../../../src/workbook/book'
import { openGrid, without } from '../univerInNode'

/** How often the engine's index holds the one block that a formula reads, after so many edits. */
async function timesIndexed(edits: number, mends = engineMends): Promise<number> {
  const grid = openGrid(mends)
  try {
    const rows = [[{ value: 1 }, { formula: '=SUM(A1:A9)' }]]
    const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
    await grid.calculated(() => grid.replace(book, 'book'))
    const sheet = grid.api.getActiveWorkbook()!.getActiveSheet()
    for (let edit = 1; edit <= edits; edit++) await grid.calculated(() => sheet.getRange('A1').setValue(10 * edit))
    expect(sheet.getRange('B1').getValue()).toBe(10 * edits)
    const { _dependencyRTreeCache: index } = grid.injector.get(IDependencyManagerService) as unknown as {
      _dependencyRTreeCache: { toJSON(): Record<string, Record<string, { children: unknown[] }>> }
    }
    return Object.values(index.toJSON()['book']!)[0]!.children.length
  } finally {
    grid.close()
  }
}

it('The block that a formula reads is noted once, however often cells are edited.', async () => {
  expect(await timesIndexed(3)).toBe(1)
})

it('Without the mend the library notes it anew with every edit, and takes longer each time.', async () => {
  expect(await timesIndexed(3, without(keepDependencies))).toBeGreaterThan(3)
})

// Hiding a row has the engine forget who reads its sheet: 1 and 2 of A are doubled there and added up on B.
it('Other sheets follow an edit after a row was hidden.', async () => {
  const grid = openGrid()
  const sheet = (name: string, rows: Cell[][]): Sheet => ({ name, widths: [], frozenRows: 0, frozenColumns: 0, rows })
  try {
    const a = sheet('A', [[{ value: 1 }, { formula: '=A1*2' }], [{ value: 2 }]])
    const b = sheet('B', [[{ formula: '=A!A1' }, { formula: '=SUM(A!A1:A9)' }]])
    await grid.calculated(() => grid.replace({ names: [], sheets: [a, b] }, 'book'))
    const open = (name: string) => grid.api.getActiveWorkbook()!.getSheetByName(name)!
    await grid.calculated(() => open('A').hideRows(1))
    await grid.calculated(() => open('A').getRange('A1').setValue(10))
    expect(open('B').getRange('A1:B1').getValues()).toEqual([[10, 12]])
  } finally {
    grid.close()
  }
})
