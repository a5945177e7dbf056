import { expect, it } from 'vitest'
import { readTruths } from '../../../../src/workbench/grid/mends/truths'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

const cells = { A1: 2, A2: 0, B1: 'x', B2: 'TRUE', B3: true, B4: '=""' }

// Microsoft's documentation of AND and OR: texts and blanks of a reference are ignored, and where nothing is left they
// give #VALUE!. From memory: a text that is given itself is TRUE, FALSE or #VALUE!, and NOT reads a cell so too.
// The grid gives TRUE as 1.
const right = [
  ['=AND("x")', '#VALUE!'],
  ['=OR("x",TRUE)', '#VALUE!'],
  ['=AND("TRUE")', 1],
  ['=OR("false")', 0],
  ['=AND(B1)', '#VALUE!'],
  ['=AND(B1,TRUE)', 1],
  ['=OR(B2)', '#VALUE!'],
  ['=OR(B1:B3)', 1],
  ['=AND(B4,A1)', 1],
  ['=AND(C1:C9)', '#VALUE!'],
  ['=XOR(B1:B3,TRUE)', 0],
  ['=AND(A1:A2)', 0],
  ['=OR(A1:A2>1)', 1],
  ['=AND(1/0,FALSE)', '#DIV/0!'],
  ['=OR(A1:A2,"x")', '#VALUE!'],
  ['=NOT("x")', '#VALUE!'],
  ['=NOT("TRUE")', 0],
  ['=NOT(B2)', 0],
  ['=NOT(A2)', 1],
  ['=NOT(C1)', 1],
  ['=NOT(1/0)', '#DIV/0!'],
  ['=IF(OR(A1>1,A2>1),"one","none")', 'one'],
] as const

it('AND, OR, XOR and NOT take texts as Excel does.', () => expectResults(right, cells))

it('Without the mend the library leaves a given text out.', async () => {
  const [or, not] = await resultsOf(['=OR("x",TRUE)', '=NOT("TRUE")'], cells, without(readTruths))
  expect([or, not]).toEqual([1, '#VALUE!'])
})
