import fc from 'fast-check'
import { expect, it } from 'vitest'
import { findByWildcards } from '../../../../src/workbench/grid/mends/wildcards'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** Six texts, one of them the empty text of a formula, and a blank, a truth, an error and three numbers. */
const cells = {
  ...{ A2: '2026-01-31', A3: true, A4: 5, A5: '=""', A6: '12', A7: 'x', A8: 46053, A9: '=1/0', A10: 7 },
  ...{ A11: '46053', A12: 'a\nb', B2: 1, B6: 10, B7: 100, B8: 1000, B11: 10_000 },
}

// Microsoft's documentation of COUNTIF: wildcard characters match text. That Excel's "*" counts the empty texts of
// formulas, and no numbers, is from memory; LibreOffice 7.4 counts the same texts, and numbers too.
const right = [
  ['=COUNTIF(A1:A12,"*")', 6],
  ['=COUNTIF(A1:A12,"?*")', 5],
  ['=COUNTIF(A1:A12,"<>*")', 6],
  ['=COUNTIF(A1:A12,"46*")', 1],
  ['=COUNTIF(A1:A12,"=1?")', 1],
  ['=COUNTIF(A4,"5*")', 0],
  ['=COUNTIF(A1:A12,"X*")', 1],
  ['=COUNTIF(A1:A12,"a*b")', 1],
  ['=COUNTIF(A7,"~x*")', 0],
  ['=COUNTIFS(A1:A12,"?*",B1:B12,">5")', 3],
  ['=SUMIF(A1:A12,"46*",B1:B12)', 10_000],
  ['=SUMIFS(B1:B12,A1:A12,"*",A1:A12,"<>4*")', 111],
  ['=AVERAGEIF(A1:A12,"1*",B1:B12)', 10],
  ['=AVERAGEIFS(B1:B12,A1:A12,"2026*")', 1],
  ['=MAXIFS(B1:B12,A1:A12,"?*")', 10_000],
  ['=MINIFS(B1:B12,A1:A12,"?*")', 1],
  ['=MATCH("46*",A1:A12,0)', 11],
  ['=VLOOKUP("46*",A1:B12,2,FALSE)', 10_000],
  ['=XLOOKUP("1*",A1:A12,B1:B12,"none",2)', 10],
] as const

it('Wildcards find all texts that they describe, and nothing else.', () => expectResults(right, cells))

it('Without the mend the library passes by empty texts, and texts like numbers once it has met them.', async () => {
  const formulas = ['=COUNTIF(A5,"*")', '=COUNTIF(A6,"*")', '=COUNTIF(A6,"1*")', '=COUNTIF(A12,"a*b")']
  expect(await resultsOf(formulas, cells, without(findByWildcards))).toEqual([0, 1, 0, 0])
})

// Microsoft's documentation of SEARCH: * and ? in find_text, and a ~ before the sign itself. LibreOffice 7.4 gives the same.
it('SEARCH finds what wildcards describe, from a place on.', async () => {
  await expectResults(
    [
      ['=SEARCH("?l?i",B1)', 2],
      ['=SEARCH("l*a",B1)', 3],
      ['=SEARCH("l*A",B1,4)', '#VALUE!'],
      ['=SEARCH("~*",B2)', 2],
      ['=SEARCH("?*y",B2,2)', 2],
      ['=SEARCH("?*y",B2,9)', '#VALUE!'],
      ['=SEARCH("2?2",B3)', 2],
      ['=SEARCH(".",B1)', '#VALUE!'],
      ['=SEARCH("V",B1)', 4],
      ['=SUM(SEARCH("?v",B4:B5))', 4],
    ],
    { B1: 'Salvia', B2: 'x*y', B3: 123_212, B4: 'ivy', B5: 'olive' },
  )
  expect(await resultsOf(['=SEARCH("l*a",B1)'], { B1: 'Salvia' }, without(findByWildcards))).toEqual(['#VALUE!'])
})

/** As the rule says it: any signs for a *, one for a ?, the sign itself behind a ~. */
function describes(criterion: string, text: string): boolean {
  if (criterion === '') return text === ''
  const [first, next] = [criterion[0]!, criterion[1]]
  if (first === '*') return describes(criterion.slice(1), text) || (text !== '' && describes(criterion, text.slice(1)))
  const isSpelled = first === '~' && next !== undefined && '*?~'.includes(next)
  const sign = isSpelled ? next : first
  const isAny = first === '?'
  const isMet = text !== '' && (isAny || text[0]!.toLowerCase() === sign.toLowerCase())
  return isMet && describes(criterion.slice(isSpelled ? 2 : 1), text.slice(1))
}

it('Of random texts a random criterion counts those that the rule describes.', async () => {
  const signs = (all: string, most: number) =>
    fc.array(fc.constantFrom(...all), { minLength: 1, maxLength: most }).map((some) => some.join(''))
  const texts = fc.sample(signs('aB1.5$', 4), 60)
  const criteria = fc.sample(signs('aB1.5$**?~', 4), 120).filter((one) => /[*?]/.test(one))
  const typed = Object.fromEntries(texts.map((text, row) => [`A${row + 1}`, `="${text}"`]))
  const expected = criteria.map((one) => texts.filter((text) => describes(one, text)).length)
  const counted = await resultsOf(
    criteria.map((one) => `=COUNTIF(A1:A60,"${one}")`),
    typed,
  )
  criteria.forEach((one, place) => expect([one, counted[place]]).toEqual([one, expected[place]]))
})
