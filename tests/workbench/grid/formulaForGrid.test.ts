import { expect, test } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { formulaForGrid } from '../../../src/workbench/grid/formulaForGrid'

test.each([
  ['=IF(A1<1E-15,1,2)', '=IF(A1<(1*10^-15),1,2)'],
  ['=A1*2.5e+21', '=A1*(2.5*10^21)'],
  ['=IF(A1>1.50,.5,01)', '=IF(A1>1.5,0.5,1)'],
  ['=A1*1E-3', '=A1*0.001'],
  ['=COUNTIF(A1:A9,">=0.50")&"1.50"', '=COUNTIF(A1:A9,">=0.5")&"1.50"'],
  ['=SUM({1.50,2})', '=SUM({1.5,2})'],
  ['=A1>0.0000001', '=A1>(1*10^-7)'],
  ['="1E-15"&A1', '="1E-15"&A1'],
  ['=SUM({1E-15,2})', '=SUM({1e-15,2})'],
  ["='Sheet 1E5'!A1+E15", "='Sheet 1E5'!A1+E15"],
  ['=-A1', '=-A1'],
  ['=-Rate', '=-Rate'],
])('the grid is handed %s as %s', (formula, expected) => {
  expect(formulaForGrid(formula)).toBe(expected)
})

test('a comparison with a number that is written with an exponent is right', async () => {
  const formulas = ['=IF(0.5<1E-15,1,2)', '=IF(0.5>1E-3,1,2)', '=IF(0.5<0.0000001,1,2)', '=2E3+1']
  const rows = formulas.map((formula) => [{ formula }])
  const { sheets } = await calculateBook({
    sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }],
    names: [],
  })
  expect(formulas.map((_, index) => sheets[0]!.cells.get(`A${index + 1}`)?.value)).toEqual([2, 1, 2, 2001])
})

test('a number is compared right however it is written', async () => {
  const formulas = [
    '=IF(A1>1.50,1,2)',
    '=IF(A1>.5,1,2)',
    '=IF(A1>01,1,2)',
    '=A1=10.0',
    '=MATCH(A1,{1.50,10.0},0)',
    '=SUM({1.50,2})',
    '=COUNTIF(A1:A1,">1.50")',
    '=IF(A1>-1.50,1,2)',
    '=IF(A1>Rate,1,2)',
    '=IF(A1>Tiny,1,2)',
  ]
  const rows = [[{ value: 10 }], ...formulas.map((formula) => [{ formula }])]
  const { sheets } = await calculateBook({
    sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }],
    names: [
      { name: 'Rate', refersTo: '0.50' },
      { name: 'Tiny', refersTo: '1E-9' },
    ],
  })
  expect(formulas.map((_, index) => sheets[0]!.cells.get(`A${index + 2}`)?.value)).toEqual([
    1,
    1,
    1,
    true,
    2,
    3.5,
    1,
    1,
    1,
    1,
  ])
})
