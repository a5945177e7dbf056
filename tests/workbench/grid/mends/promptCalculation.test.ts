import { ICommandService } from '@univerjs/core'
import { SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { calculatePromptly } from '../../../../src/workbench/grid/mends/promptCalculation'
import { openGrid } from '../univerInNode'

afterEach(() => {
  vi.useRealTimers()
})

describe('Within two frames after an edit', () => {
  const begun = async (mends = [...engineMends, calculatePromptly]) => {
    const grid = openGrid(mends)
    try {
      const rows = [[{ value: 1 }, { formula: '=A1*2' }]]
      const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
      await grid.calculated(() => grid.replace(book, 'book'))
      let count = 0
      grid.injector.get(ICommandService).onCommandExecuted(({ id }) => {
        if (id === SetFormulaCalculationStartMutation.id) count += 1
      })
      const cell = (address: string) => grid.api.getActiveWorkbook()!.getActiveSheet().getRange(address)
      vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
      cell('A1').setValue(5)
      await vi.advanceTimersByTimeAsync(32)
      const within = count
      await vi.advanceTimersByTimeAsync(200)
      vi.useRealTimers()
      await expect.poll(() => cell('B1').getValue()).toBe(10)
      return { within, altogether: count }
    } finally {
      grid.close()
    }
  }

  it('it is being calculated, once.', async () => {
    expect(await begun()).toEqual({ within: 1, altogether: 1 })
  })

  it('it is not without the mend.', async () => {
    expect(await begun([...engineMends])).toEqual({ within: 0, altogether: 1 })
  })
})
