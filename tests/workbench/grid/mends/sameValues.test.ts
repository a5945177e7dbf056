import fc from 'fast-check'
import { expect, it } from 'vitest'
import { findSameValues } from '../../../../src/workbench/grid/mends/sameValues'
import { without } from '../univerInNode'
import { type Content, expectResults, resultsOf, withCells } from './openCells'

/** A2 and C1 are blank. */
const cells = { A1: 'b', A3: 0, A4: '=""', A5: 'B', B1: 1, B2: 2, B3: 3, B4: 4, B5: 5 }

// Microsoft's documentation of VLOOKUP, from memory. A blank cell is 0 there, and no blank cell is equal to it.
const right = [
  ['=VLOOKUP(C1,A1:B5,2,FALSE)', 3],
  ['=VLOOKUP(0,A1:B5,2,FALSE)', 3],
  ['=VLOOKUP("",A1:B5,2,FALSE)', 4],
  ['=VLOOKUP(C1,A1:B2,2,FALSE)', '#N/A'],
  ['=VLOOKUP("",A1:B2,2,FALSE)', '#N/A'],
  ['=VLOOKUP(FALSE,A1:B5,2,FALSE)', '#N/A'],
  ['=VLOOKUP("B",A1:B5,2,FALSE)', 1],
  ['=VLOOKUP("?",A1:B5,2,FALSE)', 1],
  ['=HLOOKUP(C1,A2:B3,2,FALSE)', '#N/A'],
  ['=MATCH(C1,A1:A2,0)', '#N/A'],
  ['=MATCH(C1,A1:A5,0)', 3],
  // Capitals make no difference to Excel where texts are compared.
  ['=COUNTA(UNIQUE({"a";"A";"b"}))', 2],
  ['=INDEX(UNIQUE({"a";"A";"b"}),2)', 'b'],
  ['=ROWS(UNIQUE({1;"1"}))', 2],
  ['=UNIQUE({"a","b";"A","B";"a","c"},FALSE,TRUE)', 'a'],
  ['=COLUMNS(UNIQUE({"a","A","b"},TRUE))', 2],
] as const

it('A lookup finds no blank key, and capitals make no second value.', async () => {
  // The last but one spills, so each stands in a workbook of its own.
  for (const [formula, result] of right) expect(await resultsOf([formula], cells), formula).toEqual([result])
})

it('What a lookup finds is the first that is the same, and blank to nothing.', () => {
  const content = fc.constantFrom<Content | undefined>(undefined, 0, 1, '=""', 'a', 'A', '=FALSE', true, '=1=1')
  const rows = fc.array(content, { minLength: 4, maxLength: 4 })
  const meant = (one: Content | undefined) =>
    one === '=""'
      ? ''
      : one === '=FALSE'
        ? false
        : one === '=1=1'
          ? true
          : typeof one === 'string'
            ? one.toLowerCase()
            : one
  return fc.assert(
    fc.asyncProperty(rows, content, async (keys, sought) => {
      const typed = keys.flatMap((key, row) => {
        const result = [`B${row + 1}`, row + 10] as const
        return key === undefined ? [result] : [[`A${row + 1}`, key] as const, result]
      })
      const place = keys.findIndex((key) => key !== undefined && meant(key) === (meant(sought) ?? 0))
      const all = { ...Object.fromEntries(typed), ...(sought !== undefined && { C1: sought }) }
      const results = await resultsOf(['=VLOOKUP(C1,A1:B4,2,FALSE)', '=MATCH(C1,A1:A4,0)'], all)
      expect(results).toEqual(place < 0 ? ['#N/A', '#N/A'] : [place + 10, place + 1])
    }),
    { numRuns: 60 },
  )
})

it('Without the mend the library finds a blank key, and two values where there is one.', () =>
  withCells(
    { ...cells, D1: '=VLOOKUP(C1,A1:B5,2,FALSE)', D2: '=COUNTA(UNIQUE({"a";"A";"b"}))' },
    ({ values }) => expect(values('D1', 'D2')).toEqual([2, 3]),
    without(findSameValues),
  ))

// Microsoft's documentation of VLOOKUP: numbers or dates stored as text may cause an incorrect or unexpected value; that
// Excel finds none is from memory, and LibreOffice 7.4 gives the same. A criterion finds both: 12 counts the text too.
it('A lookup of a number finds no text, and one of a text no number.', async () => {
  const cells = { A1: '12', A2: 5, A3: true, A4: 'x', B1: 100, B2: 200, B3: 300, B4: 400, B5: 500, A5: 12 }
  const right = [
    ['=VLOOKUP(12,A1:B4,2,FALSE)', '#N/A'],
    ['=VLOOKUP(12,A1:B5,2,FALSE)', 500],
    ['=VLOOKUP("5",A1:B4,2,FALSE)', '#N/A'],
    ['=VLOOKUP("12",A1:B5,2,FALSE)', 100],
    ['=VLOOKUP(TRUE,A1:B5,2,FALSE)', 300],
    ['=VLOOKUP("X",A1:B5,2,FALSE)', 400],
    ['=XLOOKUP(12,A1:A4,B1:B4,"none")', 'none'],
    ['=XLOOKUP("5",A1:A4,B1:B4,"none")', 'none'],
    ['=XMATCH(12,A1:A5)', 5],
    ['=MATCH(12,A1:A5,0)', 5],
    ['=COUNTIF(A1:A5,12)', 2],
    ['=SUMIF(A1:A5,"12",B1:B5)', 600],
  ] as const
  await expectResults(right, cells)
  const formulas = right.slice(0, 3).map(([formula]) => formula)
  expect(await resultsOf(formulas, cells, without(findSameValues))).toEqual(['#N/A', 100, 200])
})
