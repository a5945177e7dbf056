import { expect, it } from 'vitest'
import { countNoTexts } from '../../../../src/workbench/grid/mends/countedTexts'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** Three numbers beside texts and truths; A4 and B6 are blank. */
const cells = { A1: 1, A2: 2, A3: 4, B1: '5', B2: '=TRUE', B3: 'x', B4: '="7"', B5: '=""', C1: true }

// Microsoft's documentation of MEDIAN, GEOMEAN, HARMEAN, DEVSQ, SKEW and KURT: texts, logical values and empty cells of
// a reference are ignored, and those that are typed into the list of arguments are counted; of RANK.EQ: nonnumeric
// values in Ref are ignored. That TRIMMEAN and PERCENTRANK ignore them too is from memory. The numbers by arithmetic.
const right = [
  ['=MEDIAN(A1:B6)', 2],
  ['=MEDIAN(B1:B6)', '#NUM!'],
  ['=MEDIAN(A1:A3,B1)', 2],
  ['=MEDIAN({1,2,"5",TRUE,4})', 2],
  ['=MEDIAN(A1:A3,"5")', 3],
  ['=MEDIAN(A1:A3,TRUE)', 1.5],
  ['=MEDIAN(A1:A3,"x")', '#VALUE!'],
  ['=MEDIAN(A1:A3,1/0)', '#DIV/0!'],
  ['=GEOMEAN(A1:B6)', 2],
  ['=ROUND(GEOMEAN(A1:A3,TRUE)^4,9)', 8],
  ['=ROUND(HARMEAN(A1:B6)*7,9)', 12],
  ['=ROUND(DEVSQ(A1:B6)*3,9)', 14],
  ['=DEVSQ(A1:A3,"x")', '#VALUE!'],
  ['=SKEW(A1:B6)=SKEW(A1:A3)', 1],
  ['=SKEW.P(A1:B6)=SKEW.P(A1:A3)', 1],
  ['=KURT(A1:B6,7)=KURT(1,2,4,7)', 1],
  ['=ROUND(TRIMMEAN(A1:B6,0.1)*3,9)', 7],
  ['=PERCENTRANK(A1:B6,2)', 0.5],
  ['=PERCENTRANK.INC(A1:B6,2)', 0.5],
  ['=PERCENTRANK.EXC(A1:B6,2)', 0.5],
  ['=RANK(1,A1:B6)', 3],
  ['=RANK(5,A1:B6)', '#N/A'],
  ['=RANK.EQ(4,A1:B6,1)', 3],
  ['=RANK.AVG(4,A1:B6,1)', 3],
  ['=RANK(A2,A1:A3)', 2],
] as const

it('Texts and truths in cells are no numbers to the statistics, and given ones are.', () => expectResults(right, cells))

// Microsoft's documentation of AVERAGEA, STDEVA, STDEVPA, VARA and VARPA: text in a reference evaluates as 0, an empty
// text too, and TRUE as 1.
const withTexts = [
  ['=AVERAGEA(A1:B6)', 1],
  ['=AVERAGEA(B1:B6)', 0.2],
  ['=AVERAGEA(A1:A3,B1)', 1.75],
  ['=AVERAGEA(A1:A3,C1)', 2],
  ['=AVERAGEA(A1:A3,"5")', 3],
  ['=AVERAGEA(A4:A6)', '#DIV/0!'],
  ['=VARA(A1:B6)', 2],
  ['=VARPA(A1:A3,B1)', 2.1875],
  ['=ROUND(STDEVA(A1:B6)^2,9)', 2],
  ['=ROUND(STDEVPA(A1:A3,B1)^2,9)', 2.1875],
  ['=MAXA(B1:B6)', 1],
  ['=MINA(A1:A3,B1)', 0],
] as const

it('Any text in a cell is 0 to AVERAGEA and its like, and TRUE is 1.', () => expectResults(withTexts, cells))

// Microsoft's documentation of these: in a reference, only numbers are used.
const alreadyRight = [
  ['=MAX(B1:B6)', 0],
  ['=MIN(A1:B6)', 1],
  ['=LARGE(A1:B6,1)', 4],
  ['=SMALL(A1:B6,4)', '#NUM!'],
  ['=MODE(A1:B6,5,4)', 4],
  ['=PERCENTILE(A1:B6,1)', 4],
  ['=QUARTILE(A1:B6,2)', 2],
  ['=SUMSQ(A1:B6)', 21],
  ['=PRODUCT(A1:B6)', 8],
  ['=ROUND(VAR(A1:B6)*3,9)', 7],
  ['=ROUND(STDEV.P(A1:B6)^2*9,9)', 14],
  ['=SUBTOTAL(9,A1:B6)', 7],
  ['=SUBTOTAL(6,A1:B6)', 8],
] as const

it('The other statistics take only numbers of cells.', () => expectResults(alreadyRight, cells))

it('Without the mend the library counts texts that look like numbers, and leaves a given TRUE out.', async () => {
  const formulas = ['=MEDIAN(A1:B6)', '=RANK(1,A1:B6)', '=AVERAGEA(B1:B6)', '=MEDIAN(A1:A3,TRUE)']
  expect(await resultsOf(formulas, cells, without(countNoTexts))).toEqual([4, 5, 2.6, 2])
})
