import { expect, it } from 'vitest'
import { readNameTexts } from '../../../../src/workbench/grid/mends/nameTexts'
import { without } from '../univerInNode'
import { resultsOf } from './openCells'

const cells = { A1: 2, A2: 3, A3: 5, B1: 10, B2: 20, B3: 30 }

const names = [
  { name: 'Date', refersTo: 'S!$A$3' },
  { name: 'Rate', refersTo: 'S!$A$1' },
  { name: 'SUM', refersTo: 'S!$B$1' },
  { name: 'Max', refersTo: 'S!$A$1' },
  { name: 'Both', refersTo: 'S!$A$1+S!$A$2' },
  { name: 'Minus', refersTo: '-S!$A$1' },
  { name: 'Deep', refersTo: 'Both*Rate' },
  { name: 'Over', refersTo: 'SUMPRODUCT(S!$A$1:$A$3*--(S!$B$1:$B$3>15))' },
  { name: 'Twice', refersTo: 'LAMBDA(x,2*x)' },
]

// A name stands for its value, and the name of a function before a bracket calls it. DATE(2024,1,1) is day 45292.
const right: Readonly<Record<string, unknown>> = {
  '=DATE(2024,1,1)': 45292,
  '=DATE(2024,1,1)+Date': 45297,
  '=Date*2': 10,
  '=SUM(A1:A3)': 10,
  '=SUM*2': 20,
  '=MAX(A1:A3)+Max': 7,
  '=max(B1:B3)': 30,
  '=ROUND(RATE(12,-100,1000),4)': 0.0292,
  '=Rate+1': 3,
  '=Both*2': 10,
  '=100/Both': 20,
  '=10-Minus': 12,
  '=Deep': 10,
  '=Over': 8,
  '=Twice(4)': 8,
}

it('Names stand for what they refer to, beside functions of the same name.', async () => {
  const results = await resultsOf(Object.keys(right), cells, undefined, names)
  expect(Object.fromEntries(Object.keys(right).map((formula, index) => [formula, results[index]]))).toEqual(right)
})

it('Without the mend the library takes calls for names, and a name for a piece of its formula.', async () => {
  const formulas = ['=DATE(2024,1,1)', '=MAX(A1:A3)', '=Both*2']
  expect(await resultsOf(formulas, cells, without(readNameTexts), names)).toEqual([5, 2, 8])
})
