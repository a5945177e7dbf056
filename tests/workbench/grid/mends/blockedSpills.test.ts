import { SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { guardBlockedSpills } from '../../../../src/workbench/grid/mends/blockedSpills'
import { without } from '../univerInNode'
import { type Content, withCells } from './openCells'

/** A column of three, and a row that comes to lie over it. */
const crossing = { B1: '=SEQUENCE(3)', A2: '=SEQUENCE(1,D1)', D1: 1, E1: '=SUM(B1:B3)', E2: '=SUM(A2:A2)' }

// In Excel nothing changes but the formula that cannot spill, which shows #SPILL! until its way is free.
it('A formula that comes to lie over what another spilled shows an error, and the other stays, before and after.', () =>
  withCells(crossing, async ({ values, type }) => {
    await type('D1', 3)
    expect(values('A2', 'B1', 'B2', 'B3', 'E1', 'E2')).toEqual(['#SPILL!', 1, 2, 3, 6, '#SPILL!'])
    await type('D1', 1)
    expect(values('A2', 'B1', 'B2', 'B3', 'E1', 'E2')).toEqual([1, 1, 2, 3, 6, 1])
    await type('D1', 3)
    await type('B1', 7)
    expect(values('A2', 'B2', 'C2', 'E1', 'E2')).toEqual([1, 2, 3, 9, 1])
  }))

it('Of two formulas that would spill into one cell when a workbook opens, one does and the other says so.', () =>
  withCells({ ...crossing, D1: 3 }, ({ values }) =>
    expect(values('A2', 'B1', 'B2', 'B3', 'C2', 'E1')).toEqual(['#SPILL!', 1, 2, 3, null, 6]),
  ))

it('A formula in the way of a spill keeps its formula and its new result.', () =>
  withCells({ A1: '=SEQUENCE(D1)', A3: '=D1*2', B1: '=SUM(A3)', D1: 1 }, async ({ grid, values, type }) => {
    await type('D1', 4)
    expect(values('A1', 'A3', 'B1')).toEqual(['#SPILL!', 8, 8])
    expect(grid.api.getActiveWorkbook()!.getActiveSheet().getRange('A3').getFormula()).toBe('=D1*2')
    await type('D1', 2)
    expect(values('A1', 'A2', 'A3', 'B1')).toEqual([1, 2, 4, 4])
  }))

it('After any edits in the way of spills, every cell holds what a calculation of everything gives.', () => {
  const size = fc.integer({ min: 1, max: 4 })
  const content = fc.oneof(
    fc.constantFrom<Content>('', 7, '=""', '=F1*2'),
    fc.constantFrom<Content>('=SEQUENCE(F1)', '=SEQUENCE(1,F2)', '=SEQUENCE(F1,F2)', '=SEQUENCE(2)'),
  )
  const place = fc.tuple(fc.constantFrom('A', 'B', 'C'), size).map((one) => one.join(''))
  const edit = fc.oneof(fc.tuple(place, content), fc.tuple(fc.constantFrom('F1', 'F2'), size))
  const all = 'ABCDE'.split('').flatMap((column) => [1, 2, 3, 4, 5, 6, 7, 8].map((row) => `${column}${row}`))
  const read = { G1: '=SUM(B1:B8)', G2: '=COUNT(A1:E8)', G3: '=B2', G4: '=COUNTIF(A1:E8,"#SPILL!")' }
  return fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 8 }), async (edits) => {
      await withCells({ F1: 2, F2: 2, A1: '=SEQUENCE(F1)', ...read }, async ({ grid, values, type }) => {
        for (const [address, typed] of edits) await type(address, typed)
        const edited = values(...all, ...Object.keys(read))
        await grid.calculated(() => grid.execute(SetFormulaCalculationStartMutation.id, { forceCalculation: true }))
        expect(values(...all, ...Object.keys(read))).toEqual(edited)
      })
    }),
    { numRuns: 30 },
  )
})

it('Without the mend the library loses what another formula spilled, without an error.', () =>
  withCells(
    crossing,
    async ({ values, type }) => {
      await type('D1', 3)
      await type('D1', 1)
      expect(values('B2', 'E1')).toEqual(['', 4])
    },
    without(guardBlockedSpills),
  ))
