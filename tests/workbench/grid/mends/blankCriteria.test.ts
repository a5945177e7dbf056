import { expect, it } from 'vitest'
import { findFilledCells } from '../../../../src/workbench/grid/mends/blankCriteria'
import { without } from '../univerInNode'
import { resultsOf } from './openCells'

/** A3 is blank. */
const cells = { A1: 1, A2: '=""', A4: 'x', A5: '=1/0', B1: 10, B2: 20, B3: 30, B4: 40, B5: 50 }

// In Excel "<>" finds what COUNTA counts, "=" only what is blank, and "" empty texts too (from memory); the sums by arithmetic.
const right = [
  ['=COUNTIF(A1:A5,"<>")', 4],
  ['=COUNTA(A1:A5)', 4],
  ['=COUNTIFS(A1:A5,"<>",B1:B5,">15")', 3],
  ['=SUMIF(A1:A4,"<>",B1:B4)', 70],
  ['=SUMIFS(B1:B4,A1:A4,"<>")', 70],
  ['=AVERAGEIF(A1:A4,"<>",B1:B4)', 70 / 3],
  ['=MAXIFS(B1:B4,A1:A4,"<>")', 40],
  ['=COUNTIF(A1:A4,"<>x")', 3],
  ['=COUNTIF(A1:A4,"")', 2],
  ['=COUNTIF(A1:A5,"=")', 1],
  ['=COUNTIFS(A1:A5,"=",B1:B5,">15")', 1],
  ['=COUNTIFS(A1:A5,"=",B1:B5,">35")', 0],
  ['=SUMIF(A1:A5,"=",B1:B5)', 30],
  ['=SUMIFS(B1:B5,A1:A5,"=")', 30],
  ['=COUNTIF(A1:A5,"=x")', 1],
  ['=COUNTIF(A1:A5,"="&A1)', 1],
  ['=SUM((A1:A4<>"")*1)', 2],
] as const

it('The criterion "<>" finds all cells that are not blank, "=" all that are, and no comparison does so.', async () => {
  const results = await resultsOf(
    right.map(([formula]) => formula),
    cells,
  )
  right.forEach(([formula, result], place) => expect(results[place], formula).toBeCloseTo(result, 9))
})

it('Without the mend the library leaves empty texts out, and takes them for blanks.', async () => {
  const formulas = ['=COUNTIF(A1:A4,"<>")', '=COUNTIF(A1:A4,"=")']
  expect(await resultsOf(formulas, cells, without(findFilledCells))).toEqual([2, 2])
})
