import { expect, it } from 'vitest'
import { mindSizes } from '../../../../src/workbench/grid/mends/sizes'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

const cells = { A1: 1, A2: 2, A3: 3, B1: 10, B2: 20, B3: 30 }

// Microsoft's documentation of SUMPRODUCT: unequal sizes give #VALUE!. A sheet of Excel has 1,048,576 rows.
const right = [
  ['=SUMPRODUCT(A1:A2,B1:B3)', '#VALUE!'],
  ['=SUMPRODUCT(A1:A3,B1:B1)', '#VALUE!'],
  ['=SUMPRODUCT(A1:A3,2)', '#VALUE!'],
  ['=SUMPRODUCT(A1:A3,B1:B3)', 140],
  ['=SUMPRODUCT(A1:A3*2)', 12],
  ['=SUMPRODUCT((A1:A3>1)*(B1:B3))', 50],
  ['=SUMPRODUCT(1/0,A1:A3)', '#DIV/0!'],
  ['=ROWS(C:C)', 1_048_576],
  ['=COLUMNS(1:1)', 16_384],
  ['=COLUMNS(A:C)', 3],
  ['=ROWS(1:3)', 3],
  ['=ROWS(A1:B3)', 3],
  ['=COLUMNS(A1:B3)', 2],
  ['=ROWS({1,2;3,4})', 2],
  ['=COLUMNS(SEQUENCE(2,5))', 5],
  ['=ROWS(OFFSET(A1,0,0,5,2))', 5],
  ['=ROWS(A3:A1)', 3],
  ['=ROWS(7)', 1],
] as const

it('Blocks are as large as they are.', () => expectResults(right, cells))

it('Without the mend the library leaves out what is too long, and counts the rows of the grid.', async () => {
  const [product, rows] = await resultsOf(['=SUMPRODUCT(A1:A2,B1:B3)', '=ROWS(C:C)'], cells, without(mindSizes))
  expect(product).toBe(50)
  expect(rows).not.toBe(1_048_576)
})
