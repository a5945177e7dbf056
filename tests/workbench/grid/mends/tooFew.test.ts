import { expect, it } from 'vitest'
import { needTwoNumbers } from '../../../../src/workbench/grid/mends/tooFew'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** C1:C9 are blank. */
const cells = { A1: 1, A2: 3, B1: 'x', B2: true, B3: 4 }

// From memory of Excel: #DIV/0! of fewer than two numbers, by the formula in Microsoft's documentation of STDEV.S and
// VAR.S, which divides by n - 1. The numbers by arithmetic.
const right = [
  ['=STDEV(C1:C9)', '#DIV/0!'],
  ['=STDEV.S(C1)', '#DIV/0!'],
  ['=VAR(C1:C9)', '#DIV/0!'],
  ['=VAR.S(C1:C9,C1)', '#DIV/0!'],
  ['=STDEV(A1)', '#DIV/0!'],
  ['=STDEV(5)', '#DIV/0!'],
  ['=STDEV(5,C1)', '#DIV/0!'],
  ['=STDEV.S(B1:B3)', '#DIV/0!'],
  ['=VAR(B1:B9)', '#DIV/0!'],
  ['=VAR.S(A1,B1)', '#DIV/0!'],
  ['=STDEVA(C1:C9)', '#DIV/0!'],
  ['=STDEVA(B1)', '#DIV/0!'],
  ['=VARA(A1,C1:C9)', '#DIV/0!'],
  ['=STDEV.P(C1:C9)', '#DIV/0!'],
  ['=SUBTOTAL(7,C1:C9)', '#DIV/0!'],
  ['=SUBTOTAL(10,B1:B3)', '#DIV/0!'],
  ['=VAR(A1:A9)', 2],
  ['=VAR.S(A1,B3)', 4.5],
  ['=VAR("5",TRUE)', 8],
  ['=VAR(3,3)', 0],
  ['=VARA(B1:B2)', 0.5],
  ['=VAR.P(A1)', 0],
  ['=STDEV(A1:A2,NA())', '#N/A'],
  ['=STDEV(A1,NA())', '#N/A'],
  ['=VAR("x")', '#VALUE!'],
] as const

it('The deviation and the variance of fewer than two numbers are an error.', () => expectResults(right, cells))

it('Without the mend the library gives 0 for those of nothing.', async () => {
  const formulas = ['=STDEV(C1:C9)+5', '=STDEV.S(C1)+5', '=VAR(C1:C9)+5', '=STDEVA(C1:C9)+5']
  expect(await resultsOf(formulas, cells, without(needTwoNumbers))).toEqual([5, 5, 5, 5])
})
