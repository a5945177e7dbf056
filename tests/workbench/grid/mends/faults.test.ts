import { ICalculateFormulaService, IFunctionService } from '@univerjs/engine-formula'
import { expect, it } from 'vitest'
import { catchFaults } from '../../../../src/workbench/grid/mends/faults'
import { openGrid, without } from '../univerInNode'
import { withCells } from './openCells'

const failing = ['=DROP("",0)', '=LAMBDA(H1:H3,"x")', '=SUM(1,LAMBDA(H1,2))']

/** With the one that each of these formulas leads to, and one that has nothing to do with it. */
const cellsWith = (formula: string) => ({ A1: 2, B1: formula, C1: '=B1', D1: '=A1*2' })

// An error is the answer of what cannot be calculated.
it.each(failing)('Where the engine fails on %s, that cell shows an error and all others are calculated.', (formula) =>
  withCells(cellsWith(formula), async ({ values, type }) => {
    expect(values('B1', 'C1', 'D1')).toEqual(['#VALUE!', '#VALUE!', 4])
    await type('A1', 5)
    expect(values('D1')).toEqual([10])
    await type('B1', '=A1')
    expect(values('B1', 'C1', 'D1')).toEqual([5, 5, 10])
    await type('B1', formula)
    expect(values('B1', 'C1', 'D1')).toEqual(['#VALUE!', '#VALUE!', 10])
  }),
)

it('Whichever function throws, its cell shows an error and all others are calculated.', () =>
  withCells({ A1: 2, B1: '=A1*2' }, async ({ grid, values, type }) => {
    const functions = grid.injector.get(IFunctionService)
    for (const call of ['SUM(A1)', 'OFFSET(A1,0,0)', 'INDIRECT("A1")', 'IF(A1,1)', 'SEQUENCE(A1)', 'ISBLANK(A1:A3)']) {
      functions.getExecutor(call.replace(/\(.*/, ''))!.calculate = () => {
        throw new Error(call)
      }
      await type('C1', `=${call}`)
      await type('A1', 3)
      await type('A1', 2)
      expect(values('B1', 'C1'), call).toEqual([4, '#VALUE!'])
    }
  }))

it('Without the mend the library throws, and whatever calculates ends there.', async () => {
  const grid = openGrid(without(catchFaults))
  try {
    const rows = [[{ value: 2 }]]
    const book = { names: [], sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
    await grid.calculated(() => grid.replace(book, 'book'))
    await expect(grid.injector.get(ICalculateFormulaService).calculate('=DROP("",0)')).rejects.toThrow(TypeError)
  } finally {
    grid.close()
  }
})
