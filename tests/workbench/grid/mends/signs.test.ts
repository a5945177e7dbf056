import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSigns, withPlainSigns } from '../../../../src/workbench/grid/mends/signs'
import { without } from '../univerInNode'
import { resultsOf } from './openCells'

const cells = { A1: 3, A2: 4, B1: 'x', B2: 'y' }
const names = [
  { name: 'Rate', refersTo: 'S!$A$1' },
  { name: 'Loss', refersTo: '-S!$A$1' },
]

/** By arithmetic: A1 and Rate are 3. A minus binds before a power, as in Excel. */
const formulas = [
  ['=5+--A1', 8],
  ['=2*--A1', 6],
  ['=6/--A1', 2],
  ['=4>--A1', 1],
  ['=2^-A1', 0.125],
  ['=5-+-A1', 8],
  ['=5---A1', 2],
  ['=5 - - -A1', 2],
  ['=--"4"+1', 5],
  ['=5+-"4"', 1],
  ['=SUMPRODUCT(A1:A2*--(B1:B2="x"))', 3],
  ['=SUMPRODUCT(--(B1:B2="x"),A1:A2)', 3],
  ['=-LET(x,2,x)*3', -6],
  ['=5*--LET(x,2,-x)', -10],
  ['=--A1%', 0.03],
  ['=2*-A1^2', 18],
  ['=-SUM(A1:A2)^2', 49],
  ['=5+--A1:INDEX(A1:A2,1)', 8],
  ['=SUM({1,-2})', -1],
  ['=Rate * 2', 6],
  ['=( Rate )', 3],
  ['=Rate -1', 2],
  ['=SUM(Rate , 1)', 4],
  ['=IF(Rate >2,"more","less")', 'more'],
  ['=10-Rate - 1', 6],
  ['=-Rate', -3],
  ['=- 3', -3],
  ['=A1 - 3', 0],
  ['=2*-Rate', -6],
  ['=Loss+1', -2],
  ['="5"" pot"&Rate', '5" pot3'],
  ['=IF(Rate>2,"say ""yes""","4"" pot")', 'say "yes"'],
  ['="("""&Rate&""")"', '("3")'],
  ['=SUBSTITUTE("a""b","""",Rate)', 'a3b'],
  ['=LEN("""")+Rate', 4],
  ['=- Rate *2', -6],
  ['=LET(x ,2,x * 3)', 6],
  ['="a -- b"&Rate &" ""c"" "', 'a -- b3 "c" '],
] as const

it('Signs before cells, calls, texts and brackets, and spaces after names, are read as in Excel.', async () => {
  const results = await resultsOf(
    formulas.map(([formula]) => formula),
    cells,
    undefined,
    names,
  )
  expect(Object.fromEntries(formulas.map(([formula], place) => [formula, results[place]]))).toEqual(
    Object.fromEntries(formulas),
  )
})

it('Any sum of signed numbers is what JavaScript makes of it.', () => {
  const signs = fc.array(fc.constantFrom('-', '+', ' '), { maxLength: 3 }).map((all) => all.join(''))
  const operand = fc.constantFrom('A1', '(A1)', 'SUM(A1)', 'Rate', '3', 'LET(x,3,x)', '(1+2)')
  const term = fc.tuple(fc.constantFrom('+', '-', '*', '/'), signs, operand)
  const sum = fc.tuple(signs, operand, fc.array(term, { maxLength: 3 }))
  return fc.assert(
    fc.asyncProperty(fc.array(sum, { minLength: 10, maxLength: 10 }), async (sums) => {
      const texts = sums.map(([sign, first, terms]) => sign + first + terms.flat().join(''))
      // A space keeps JavaScript from reading two signs as one.
      const right = texts.map((text) =>
        (
          new Function(
            `return ${text.replace(/LET\(x,3,x\)|SUM\(A1\)|A1|Rate/g, '3').replace(/([-+])/g, ' $1 ')}`,
          ) as () => number
        )(),
      )
      const results = await resultsOf(
        texts.map((text) => `=${text}`),
        cells,
        undefined,
        names,
      )
      texts.forEach((text, place) => expect(results[place], text).toBeCloseTo(right[place]!, 9))
    }),
    { numRuns: 15 },
  )
})

describe('A formula without such signs is handed on as it is', () => {
  it.each(['=A1-B1', '=A1:B2 C1', '=Rate Other', '=IF(A1>1,"a - -b",2)', '={-1,2}'])('%s', (formula) => {
    expect(withPlainSigns(formula)).toBe(formula)
  })
})

it('Without the mend the library takes 5+--A1 for a difference, and gives errors for the others.', async () => {
  const faulty = ['=5+--A1', '=2*--A1', '=Rate * 2', '=-Rate', '=-LET(x,2,x)', '="5"""&Rate']
  expect(await resultsOf(faulty, cells, without(readSigns), names)).toEqual([
    2,
    '#VALUE!',
    '#NAME?',
    '#NAME?',
    '#VALUE!',
    '#VALUE!',
  ])
})
