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

// Microsoft's documentation of NPV, IRR, MIRR, MODE, AVEDEV, CORREL, SLOPE and COVARIANCE.P: if an array or reference
// argument contains text, logical values, or empty cells, those values are ignored; of NPV: logical values and text
// representations of numbers that are typed into the list are counted. LibreOffice 7.4 gives the same but for truths,
// which are numbers to it. The numbers by arithmetic: 1/1.25 + 2/1.25^2 + 4/1.25^3 is 4.128.
const ofMoneyAndPairs = [
  ['=ROUND(NPV(0.25,A1:A3),9)', 4.128],
  ['=ROUND(NPV(0.25,A1:A2,B1:B6,A3),9)', 4.128],
  ['=ROUND(NPV(0.25,A1,B1,A2,B3,A3,A4),9)', 4.128],
  ['=NPV(0.25,B1)', 0],
  ['=NPV(0.25,C1)', 0],
  ['=NPV(0.25,"5")', 4],
  ['=NPV(0.25,TRUE)', 0.8],
  ['=ROUND(IRR(D1:D5),9)', 0.1],
  ['=ROUND(MIRR(D1:D5,0.1,0.1),9)', 0.1],
  ['=MODE(A2,B1:B6,D1:D5,2)', 2],
  ['=MODE(TRUE,TRUE,2)', 1],
  ['=MODE.SNGL(E1:E5)', 3],
  ['=AVEDEV(E1:E5)', 0.75],
  ['=CORREL(E1:E5,F1:F5)', 1],
  ['=PEARSON(E1:E5,F1:F5)', 1],
  ['=RSQ(E1:E5,F1:F5)', 1],
  ['=SLOPE(F1:F5,E1:E5)', 2],
  ['=INTERCEPT(F1:F5,E1:E5)', 1],
  ['=STEYX(F1:F5,E1:E5)', 0],
  ['=FORECAST(10,F1:F5,E1:E5)', 21],
  ['=FORECAST.LINEAR(10,F1:F5,E1:E5)', 21],
  ['=COVAR(E1:E5,F1:F5)', 1.5],
  ['=COVARIANCE.P(E1:E5,F1:F5)', 1.5],
  ['=COVARIANCE.S(E1:E5,F1:F5)', 2],
  ['=CORREL(B1:B5,E1:E5)', '#DIV/0!'],
] as const

/** Money with a text between, 10 % a year; and pairs on the line 2x + 1, of which the second has a text. */
const besideNumbers = {
  ...cells,
  ...{ D1: -100, D2: '60', D3: 'x', D4: 110, E1: 1, E2: '9', E3: 3, E4: 3, E5: 3, F1: 3, F2: 1, F3: 7, F4: 7, F5: 7 },
}

it('Texts among payments and in pairs are left out.', () => expectResults(ofMoneyAndPairs, besideNumbers))

it('Without the mend the library takes a text for a payment, and for a number of a pair.', async () => {
  const formulas = ['=NPV(0.25,B1)', '=ROUND(CORREL(E1:E5,F1:F5),2)', '=MODE(TRUE,TRUE,2)']
  expect(await resultsOf(formulas, besideNumbers, without(countNoTexts))).toEqual([4, -0.58, '#N/A'])
})

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
