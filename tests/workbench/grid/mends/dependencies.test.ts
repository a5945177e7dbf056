import { IDependencyManagerService } from '@univerjs/engine-formula'
import { expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { keepDependencies } from '../../../../src/workbench/grid/mends/dependencies'
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
