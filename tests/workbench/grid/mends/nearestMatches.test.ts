import fc from 'fast-check'
import { expect, it } from 'vitest'
import { findNearest } from '../../../../src/workbench/grid/mends/nearestMatches'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

// Microsoft's documentation of MATCH: 1 finds the largest value that is less than or equal to what is sought, in rising
// order, -1 the smallest that is greater than or equal, in falling order. LibreOffice 7.4 gives the same; XMATCH and
// XLOOKUP by their documentation: -1 the next smaller item, 1 the next larger.
const right = [
  ['=MATCH("c",{"a","b","d"},1)', 2],
  ['=MATCH("z",{"a";"b";"d"})', 3],
  ['=MATCH("B",{"a","b","d"},1)', 2],
  ['=MATCH("a",{"b","c"},1)', '#N/A'],
  ['=MATCH("b",{"a","b","b","d"},1)', 3],
  ['=MATCH("c",{"d","b","a"},-1)', 1],
  ['=MATCH(2,{1,2,2,3},1)', 3],
  ['=MATCH(2.5,A1:A4)', 2],
  ['=MATCH(B1,A1:A4,1)', 4],
  ['=MATCH(0.5,A1:A4,1)', '#N/A'],
  ['=MATCH(3.5,{5,4,3,1},-1)', 2],
  ['=MATCH(3.5,{1,2,3,4,5},-1)', '#N/A'],
  ['=MATCH(TRUE,{FALSE,TRUE,TRUE},1)', 3],
  ['=SUM(MATCH({1.5,9},A1:A4,1))', 5],
  ['=MATCH("x",A1:A4,1)', '#N/A'],
  ['=MATCH(1/0,A1:A4,1)', '#DIV/0!'],
  ['=MATCH(3,{1,2;3,4},1)', '#N/A'],
  ['=MATCH(3,A1:B4,1)', '#N/A'],
  ['=MATCH("d*",{"a","dill"},0)', 2],
  ['=MATCH(2,{3,2,2},0)', 2],
  ['=XMATCH("c",{"a","b","d"},-1)', 2],
  ['=XMATCH("c",{"d","a","b"},-1)', 3],
  ['=XMATCH("c",{"a","b","d"},1)', 3],
  ['=XLOOKUP("c",{"a","b","d"},{1,2,3},"none",-1)', 2],
  ['=XLOOKUP("c",{"e","d","a"},{1,2,3},"none",1)', 2],
  ['=XLOOKUP("z",{"a","b"},{1,2},"none",1)', 'none'],
  ['=XLOOKUP("B",{"a","b","b"},{1,2,3},"none",-1)', 2],
] as const

it('The nearest is found among texts and numbers.', () => expectResults(right, { A1: 1, A2: 2, A3: 4, A4: 8, B1: 100 }))

it('Without the mend the library takes the first smaller text, and the first of equal numbers.', async () => {
  const formulas = ['=MATCH("c",{"a","b","d"},1)', '=XMATCH("z",{"a","b"},-1)', '=MATCH(2,{1,2,2,3},1)']
  expect(await resultsOf(formulas, {}, without(findNearest))).toEqual([1, 1, 2])
})

it('Of random numbers and words in order MATCH finds the place that counting gives.', async () => {
  const numbers = fc.sample(fc.integer({ min: 0, max: 30 }), 20).sort((a, b) => a - b)
  const words = fc
    .sample(
      fc.constantFrom(...'abcdefgh').map((sign) => `${sign}x`),
      20,
    )
    .sort()
  const cells = Object.fromEntries(
    numbers.flatMap((number, row): [string, string | number][] => [
      [`A${row + 1}`, number],
      [`B${row + 1}`, words[row]!],
      [`C${row + 1}`, numbers.at(-1 - row)!],
    ]),
  )
  const placeOr = (count: number) => (count === 0 ? '#N/A' : count)
  const cases = [
    ...Array.from({ length: 33 }, (_, number): [string, string | number] => [
      `=MATCH(${number - 0.5},A1:A20,1)`,
      placeOr(numbers.filter((one) => one <= number - 0.5).length),
    ]),
    ...Array.from({ length: 33 }, (_, number): [string, string | number] => [
      `=MATCH(${number},C1:C20,-1)`,
      placeOr(numbers.filter((one) => one >= number).length),
    ]),
    ...[...'abcdefghi'].map((sign): [string, string | number] => [
      `=MATCH("${sign}y",B1:B20,1)`,
      placeOr(words.filter((one) => one <= `${sign}y`).length),
    ]),
  ]
  await expectResults(cases, cells)
})
