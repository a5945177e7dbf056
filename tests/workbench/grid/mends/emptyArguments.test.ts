import { expect, it } from 'vitest'
import { countEmptyArguments } from '../../../../src/workbench/grid/mends/emptyArguments'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

// LibreOffice 7.4 gives the same, but 0 for GEOMEAN, which Microsoft's documentation has as #NUM! where a number is 0.
// The numbers by arithmetic, with a 0 more.
const right = [
  ['=AVERAGE(1,2,)', 1],
  ['=AVERAGE(1,,5)', 2],
  ['=AVERAGEA(1,2,)', 1],
  ['=COUNT(1,)', 2],
  ['=COUNT(,)', 2],
  ['=COUNTA(1,)', 2],
  ['=MAX(-1,)', 0],
  ['=MAXA(-1,)', 0],
  ['=MIN(1,)', 0],
  ['=MINA(1,)', 0],
  ['=PRODUCT(2,)', 0],
  ['=MEDIAN(1,2,)', 1],
  ['=MODE(0,)', 0],
  ['=MODE.SNGL(0,)', 0],
  ['=DEVSQ(1,2,)', 2],
  ['=ROUND(AVEDEV(3,0,)*3,9)', 4],
  ['=GEOMEAN(1,2,)', '#NUM!'],
  ['=SUM(1,2,)', 3],
  ['=STDEV(1,2,)', 1],
  ['=AVERAGE(1,2,IF(TRUE,))', 1],
] as const

it('An argument that is left empty counts as 0.', () => expectResults(right))

// Microsoft's documentation of AVERAGE, COUNT and MAX: empty cells of a reference are ignored.
const blankCells = [
  ['=AVERAGE(1,2,A1)', 1.5],
  ['=AVERAGE(1,2,A1:A3)', 1.5],
  ['=AVERAGE(1,2,IF(TRUE,A1))', 1.5],
  ['=AVERAGE(1,2,INDEX(A1:A3,1))', 1.5],
  ['=COUNT(1,A1)', 1],
  ['=COUNTA(1,A1)', 1],
  ['=COUNTA(1,INDEX(A1:A3,1))', 1],
  ['=MAX(-1,A1)', -1],
  ['=MAX(-1,OFFSET(A2,-1,0))', -1],
  ['=MIN(1,CHOOSE(1,A1))', 1],
  ['=PRODUCT(2,A1)', 2],
  ['=MEDIAN(1,2,A1)', 1.5],
] as const

it('A blank cell is left out.', () => expectResults(blankCells))

it('Without the mend the library leaves out the empty argument too.', async () => {
  const formulas = ['=AVERAGE(1,2,)', '=COUNT(1,)', '=MAX(-1,)', '=MEDIAN(1,2,)', '=PRODUCT(2,)']
  expect(await resultsOf(formulas, {}, without(countEmptyArguments))).toEqual([1.5, 1, -1, 1.5, 2])
})
