import { expect, it } from 'vitest'
import { takeBlankTexts } from '../../../../src/workbench/grid/mends/blankTexts'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** C1 and C2 are blank. */
const cells = { A1: 'two trays', A2: true }

// From memory of Excel, where a function that asks for a text takes a blank cell for an empty one, TRUE for "TRUE" and
// a number for its digits.
const right = [
  ['=PROPER(C1)', ''],
  ['=ISTEXT(PROPER(C1))', 1],
  ['=PROPER(A1)', 'Two Trays'],
  ['=PROPER(A2)', 'True'],
  ['=PROPER(FALSE)', 'False'],
  ['=PROPER(12)', '12'],
  ['=PROPER(1/0)', '#DIV/0!'],
  ['=ASC(C1)', ''],
  ['=ASC(TRUE)', 'TRUE'],
  ['=ASC(12)', '12'],
  ['=EXACT(C1,"")', 1],
  ['=EXACT(C1,C2)', 1],
  ['=EXACT("",C1)', 1],
  ['=EXACT(TRUE,"TRUE")', 1],
  ['=EXACT(1,"1")', 1],
  ['=EXACT(C1,0)', 0],
  ['=EXACT("a","A")', 0],
  ['=SUM(--EXACT(A1:C1,""))', 2],
  ['=UPPER(C1)', ''],
  ['=LOWER(C1)', ''],
  ['=TRIM(C1)', ''],
  ['=CLEAN(C1)', ''],
  ['=T(C1)', ''],
  ['=LEFT(C1,2)', ''],
  ['=RIGHT(C1)', ''],
  ['=MID(C1,1,2)', ''],
  ['=REPT(C1,3)', ''],
  ['=SUBSTITUTE(C1,"a","b")', ''],
  ['=REPLACE(C1,1,1,"b")', 'b'],
  ['=CONCATENATE(C1,"a")', 'a'],
  ['=LEN(C1)', 0],
] as const

it('A blank cell is an empty text to the functions of texts.', () => expectResults(right, cells))

it('Several blanks give several empty texts.', async () => {
  expect(await resultsOf(['=CONCAT("<",PROPER(A1:C1),">")'], cells)).toEqual(['<Two Trays>'])
})

it('Without the mend the library gives 0 for PROPER of a blank cell.', async () => {
  expect(await resultsOf(['=PROPER(C1)', '=EXACT(C1,"")'], cells, without(takeBlankTexts))).toEqual([0, 0])
})
