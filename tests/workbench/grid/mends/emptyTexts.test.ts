import fc from 'fast-check'
import { expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { keepEmptyTexts } from '../../../../src/workbench/grid/mends/emptyTexts'
import { without } from '../univerInNode'
import { withCells } from './openCells'

/** What formulas say of A1, which a formula leaves empty: a text is more than a number, no blank, and no number. */
const ofEmptyText = [
  ['=A1>1', 1],
  ['=ISBLANK(A1)', 0],
  ['=ISTEXT(A1)', 1],
  ['=COUNTA(A1)', 1],
  ['=COUNT(A1)', 0],
  ['=COUNTBLANK(A1)', 1],
  ['=A1*5', '#VALUE!'],
  ['=A1=""', 1],
  ['=LEN(A1)', 0],
  ['=SUM(A1,1)', 1],
] as const

const cells = Object.fromEntries([
  ['A1', '=IF(ISBLANK(B1),"",B1)'],
  ...ofEmptyText.map(([formula], index) => [`C${index + 1}`, formula] as const),
])
const places = ofEmptyText.map((_formula, index) => `C${index + 1}`)

// Microsoft's documentation of ISBLANK, COUNTA, COUNTBLANK and ISTEXT, from memory; a text is more than any number.
it('The empty text of a formula is a text, when a workbook opens and after an edit.', () =>
  withCells(cells, async ({ values, type }) => {
    const right = ofEmptyText.map(([, result]) => result)
    expect(values(...places)).toEqual(right)
    await type('B1', 7)
    expect(values('C1', 'C7')).toEqual([1, 35])
    await type('B1', '=1/1')
    await type('B1', '=""')
    expect(values(...places)).toEqual(right)
  }))

it('An empty text that is spilled is a text too, and a cell that was emptied is blank.', () =>
  withCells(
    { A1: 1, A3: 3, A4: 'gone', B1: '=IF(A1:A3="","",A1:A3)', C1: '=COUNTA(B1:B3)', C2: '=B2>1', C3: '=ISBLANK(A4)' },
    async ({ values, type }) => {
      expect(values('C1', 'C2', 'C3')).toEqual([3, 1, 0])
      await type('A4', '')
      expect(values('C1', 'C2', 'C3')).toEqual([3, 1, 1])
    },
  ))

it('Whatever cells hold, what is counted in results is what is counted in the same cells once they are stored.', () =>
  fc.assert(
    fc.asyncProperty(fc.array(fc.constantFrom(1, 'x', true), { minLength: 3, maxLength: 6 }), async (contents) => {
      const typed = contents.map((content, index) => [`A${index + 1}`, content === 'x' ? '=""' : content] as const)
      const empty = contents.filter((content) => content === 'x').length
      const ask = { B1: '=COUNTA(A1:A9)', B2: '=COUNTBLANK(A1:A9)', B3: '=COUNT(A1:A9)', B4: '=SUM((A1:A9="")*1)' }
      await withCells({ ...Object.fromEntries(typed), ...ask }, ({ values }) =>
        expect(values('B1', 'B2', 'B3', 'B4')).toEqual([
          contents.length,
          empty + 9 - contents.length,
          contents.filter((content) => content === 1).length,
          empty + 9 - contents.length,
        ]),
      )
    }),
    { numRuns: 20 },
  ))

it('Without the mend the library takes it for a blank, until it is stored.', () =>
  withCells(
    cells,
    async ({ values, type }) => {
      expect(values('C1', 'C2', 'C4', 'C7')).toEqual([0, 1, 0, 0])
      await type('C1', '=A1>=1')
      expect(values('C1')).toEqual([1])
    },
    without(keepEmptyTexts),
  ))

it('What is repaired for one engine is as it was once the last engine that needs it is gone.', async () => {
  const alone = without(keepEmptyTexts)
  await withCells({ A1: '=""', B1: '=ISBLANK(A1)' }, async (one) => {
    await withCells({ A1: '=""', B1: '=ISBLANK(A1)' }, (two) => expect(two.value('B1')).toBe(0), engineMends)
    await one.type('A1', '=""&""')
    expect(one.value('B1')).toBe(0)
  })
  await withCells({ A1: '=""', B1: '=ISBLANK(A1)' }, ({ value }) => expect(value('B1')).toBe(1), alone)
})
