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
  ['=-Rate', '=-(Rate)'],
  ['=2*- Rate', '=2*- (Rate)'],
  ['=IF(A1>0,-Rate,A1-Rate)', '=IF(A1>0,-(Rate),A1-Rate)'],
  ['=(A1)-Rate', '=(A1)-Rate'],
  ['=-A1', '=-A1'],
])('the grid is handed %s as %s', (formula, expected) => {
  expect(formulaForGrid(formula)).toBe(expected)
})

test('a comparison with a number that is written with an exponent is right', async () => {
  const formulas = ['=IF(0.5<1E-15,1,2)', '=IF(0.5>1E-3,1,2)', '=IF(0.5<0.0000001,1,2)', '=2E3+1']
  const rows = formulas.map((formula) => [{ formula }])
  const { sheets } = await calculateBook({ sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }], names: [] })
  expect(formulas.map((_, index) => sheets[0]!.cells.get(`A${index + 1}`)?.value)).toEqual([2, 1, 2, 2001])
})

test('a minus before a name is read as in Excel', async () => {
  const rows = [[{ value: 5 }], [{ formula: '=-Rate' }], [{ formula: '=10-Rate' }], [{ formula: '=2*-Rate' }]]
  const { sheets } = await calculateBook({ sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }], names: [{ name: 'Rate', refersTo: 'S!$A$1' }] })
  expect(['A2', 'A3', 'A4'].map((address) => sheets[0]!.cells.get(address)?.value)).toEqual([-5, 5, -10])
})
