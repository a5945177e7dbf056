import { expect, test } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { formulaForGrid } from '../../../src/workbench/grid/formulaForGrid'

test.each([
  ['=IF(A1<1E-15,1,2)', '=IF(A1<(1*10^-15),1,2)'],
  ['=A1*2.5e+20', '=A1*(2.5*10^20)'],
  ['=A1>0.0000001', '=A1>(1*10^-7)'],
  ['="1E-15"&A1', '="1E-15"&A1'],
  ['=SUM({1E-3,2})', '=SUM({1E-3,2})'],
  ["='Sheet 1E5'!A1+E15", "='Sheet 1E5'!A1+E15"],
])('the grid is handed %s as %s', (formula, expected) => {
  expect(formulaForGrid(formula)).toBe(expected)
})

test('a comparison with a number that is written with an exponent is right', async () => {
  const formulas = ['=IF(0.5<1E-15,1,2)', '=IF(0.5>1E-3,1,2)', '=IF(0.5<0.0000001,1,2)', '=2E3+1']
  const rows = formulas.map((formula) => [{ formula }])
  const { sheets } = await calculateBook({ sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }], names: [] })
  expect(formulas.map((_, index) => sheets[0]!.cells.get(`A${index + 1}`)?.value)).toEqual([2, 1, 2, 2001])
})
