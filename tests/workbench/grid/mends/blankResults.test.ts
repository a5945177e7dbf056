import { expect, it } from 'vitest'
import { countBlankResults } from '../../../../src/workbench/grid/mends/blankResults'
import { without } from '../univerInNode'
import { withCells } from './openCells'

/** Each comes to a cell that is blank. */
const blank = [
  '=A1',
  '=IF(TRUE,A1,1)',
  '=IFERROR(A1,1)',
  '=INDEX(A1:A3,2)',
  '=VLOOKUP(1,B1:C1,2,FALSE)',
  '=XLOOKUP(1,B1:B1,C1:C1)',
  '=CHOOSE(1,A1)',
  '=OFFSET(B1,0,1)',
  '=INDIRECT("A1")',
  '=LET(x,A1,x)',
]
const places = blank.map((_formula, index) => `D${index + 1}`)
const asked = { E1: '=COUNT(D1:D20)', E2: '=AVERAGE(D1:D20,11)', E3: '=MIN(D1:D20,5)', E4: '=SUM(ISBLANK(D1:D10)*1)' }
const cells = { B1: 1, ...Object.fromEntries(blank.map((formula, index) => [places[index]!, formula])), ...asked }

// A formula always has a value in Excel, and that of a blank cell is 0: 10 zeros and one 11 have the average 1.
it('A formula that comes to a blank cell gives 0, when a workbook opens and after an edit.', () =>
  withCells(cells, async ({ values, type }) => {
    const right = [10, 1, 0, 0]
    expect(values(...places)).toEqual(places.map(() => 0))
    expect(values('E1', 'E2', 'E3', 'E4')).toEqual(right)
    await type('A1', 4)
    expect(values('E1', 'E3', 'D1')).toEqual([10, 0, 4])
    await type('A1', '')
    expect(values('E1', 'E2', 'E3', 'E4')).toEqual(right)
  }))

it('A blank among cells that are spilled is a 0 there, and all readers agree.', () =>
  withCells({ A1: 1, A3: 2, B1: '=A1:A3', C1: '=COUNT(B1:B3)', C2: '=AVERAGE(B1:B3)', C3: '=B2' }, ({ values }) =>
    expect(values('B2', 'C1', 'C2', 'C3')).toEqual([0, 3, 1, 0]),
  ))

it('Without the mend the library counts such results only after an edit.', () =>
  withCells(
    { B1: '=IF(TRUE,A1)', C1: '=COUNT(B1)', D1: 1 },
    async ({ value, type }) => {
      expect(value('C1')).toBe(0)
      await type('C1', '=COUNT(B1,B1)')
      expect(value('C1')).toBe(2)
    },
    without(countBlankResults),
  ))
