import { expect, it } from 'vitest'
import { takeTextNumbers } from '../../../../src/workbench/grid/mends/textNumbers'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** Texts but for A3, which is a truth; C1 is blank. */
const cells = { A1: '12', A2: '="3"', A3: true, A4: '=""', A5: 'x', A6: '="0x10"' }

// From memory of Excel, where a function that asks for one number takes a text that is one, TRUE for 1 and a blank cell
// for 0, and gives #VALUE! for any other text; the operators do the same.
const right = [
  ['=ABS(A1)', 12],
  ['=ABS("-12")', 12],
  ['=ABS(A3)', 1],
  ['=ABS(A4)', '#VALUE!'],
  ['=ABS("")', '#VALUE!'],
  ['=ABS(A5)', '#VALUE!'],
  ['=ABS(C1)', 0],
  ['=ABS(1/0)', '#DIV/0!'],
  ['=SUM(ABS(A1:A3))', 16],
  ['=POWER(A1,2)', 144],
  ['=POWER(2,A2)', 8],
  ['=A1^2', 144],
  ['=2^A2', 8],
  ['="12"^"2"', 144],
  ['=A3^2', 1],
  ['=A4^2', '#VALUE!'],
  ['=SUM(A1:A3^2)', 154],
  ['=SUM({"3",4}^2)', 25],
  ['=SQRT("144")', 12],
  ['=SQRT(A1*A2)', 6],
  ['=ROUND(SQRT(A1)^2,9)', 12],
  ['=ROUND(A1,0)', 12],
  ['=ROUND(1.23456,A2)', 1.235],
  ['=ROUND(A4,0)', '#VALUE!'],
  ['=ROUNDUP(A2,0)', 3],
  ['=ROUNDDOWN(1.23456,A2)', 1.234],
  ['=INT(A1)', 12],
  ['=MOD(A1,5)', 2],
  ['=MOD(14,A1)', 2],
  ['=EXP(A2)=EXP(3)', 1],
  ['=LN(A1)=LN(12)', 1],
  ['=LOG10(A1)=LOG10(12)', 1],
  ['=ATAN2(A1,A2)=ATAN2(12,3)', 1],
  ['=ACOSH(A1)=ACOSH(12)', 1],
  ['=QUOTIENT(A1,5)', 2],
  ['=QUOTIENT(A4,5)', '#VALUE!'],
  ['=MROUND(A4,5)', '#VALUE!'],
  ['=DELTA("",0)', '#VALUE!'],
  ['=GESTEP(A4,0)', '#VALUE!'],
  ['=ISEVEN("")', '#VALUE!'],
  ['=ISODD(A2)', 1],
  ['=A1+A2', 15],
  ['=A1-A3', 11],
  ['=A1*A2', 36],
  ['=A1/A2', 4],
  ['=-A1', -12],
  ['=A1%', 0.12],
  ['=A4+1', '#VALUE!'],
  ['=A5*2', '#VALUE!'],
  ['=A6+1', '#VALUE!'],
  ['=2*A6', '#VALUE!'],
  ['=SUM("0x10")', '#VALUE!'],
  ['=VALUE("0b11")', '#VALUE!'],
  ['=VALUE("0o17")', '#VALUE!'],
  ['=VALUE("Infinity")', '#VALUE!'],
  ['=ABS("-Infinity")', '#VALUE!'],
  ['=HEX2DEC("10")', 16],
  ['=COUNTIF(A1:A6,"0x10")', 1],
  ['=VALUE("1e3")', 1000],
  ['=VALUE(" 12% ")', 0.12],
  ['="1,200"+1', 1201],
] as const

it('A text that is a number is this number where one number is asked for.', () => expectResults(right, cells))

it.each(
  // Those of one number that its sine or the like is taken of.
  ['SIN', 'COS', 'TAN', 'ASIN', 'ACOS', 'ATAN', 'SINH', 'COSH', 'TANH', 'ASINH', 'ATANH'],
)('%s takes a text in a cell for its number.', (name) =>
  expectResults([[`=${name}(B1)=${name}(0.5)`, 1]], { B1: '=LEFT("0.5kg",3)' }),
)

it('Without the mend the library takes no text of a cell for a number, and an empty one for 0.', async () => {
  const refused = await resultsOf(['=ABS(A1)', '=A1^2', '=ROUND(A1,0)'], cells, without(takeTextNumbers))
  expect(refused).toEqual(['#VALUE!', '#VALUE!', '#VALUE!'])
  const taken = await resultsOf(['=QUOTIENT(A4,5)', '=A6+1'], cells, without(takeTextNumbers))
  expect(taken).toEqual([0, 17])
})
