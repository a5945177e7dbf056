import { IFormulaRuntimeService } from '@univerjs/engine-formula'
import { describe, expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { goOnFromChanges } from '../../../../src/workbench/grid/mends/unchangedResults'
import { openGrid, type OpenGrid, without } from '../univerInNode'

/** How many formulas an edit calculates. */
async function calculatedBy(grid: OpenGrid, edit: () => Promise<void>): Promise<number> {
  const runtime = grid.injector.get(IFormulaRuntimeService)
  const set = runtime.setRuntimeData.bind(runtime)
  let count = 0
  runtime.setRuntimeData = (value) => {
    count += 1
    set(value)
  }
  await edit()
  return count
}

describe('A formula whose inputs give what they gave', () => {
  // B1 is the same for all positive numbers, and a hundred formulas read it.
  const rows = [
    [{ value: 5 }, { formula: '=A1>0' }, ...Array.from({ length: 100 }, () => ({ formula: '=IF(B1,1,2)' }))],
  ]
  const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  const count = async (mends = engineMends) => {
    const grid = openGrid(mends)
    try {
      await grid.calculated(() => grid.replace(book, 'book'))
      const typed = grid.api.getActiveWorkbook()!.getActiveSheet().getRange('A1')
      return await calculatedBy(grid, () => grid.calculated(() => typed.setValue(7)))
    } finally {
      grid.close()
    }
  }

  it('is not calculated again.', async () => {
    expect(await count()).toBe(1)
  })

  it('Without the mend the library calculates it and all that follow.', async () => {
    expect(await count(without(goOnFromChanges))).toBe(101)
  })
})

describe('Where a formula spills', () => {
  const rows = [[{ value: 2 }, { formula: '=SEQUENCE(A1)', spills: true }, { formula: '=A1*2' }]]
  const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  const count = async (mends = engineMends) => {
    const grid = openGrid(mends)
    try {
      return await calculatedBy(grid, () => grid.calculated(() => grid.replace(book, 'book')))
    } finally {
      grid.close()
    }
  }

  it('all formulas are calculated once when the workbook is opened.', async () => {
    expect(await count()).toBe(2)
  })

  it('Without the mend the library calculates all of them twice.', async () => {
    expect(await count(without(goOnFromChanges))).toBe(4)
  })
})
