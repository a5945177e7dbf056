import type { AstExpression } from '@borgar/fx'
import { expect, test } from 'vitest'
import { parseFormula } from '../../../src/core/expression/expression'
import { substitute } from '../../../src/core/expression/substitute'
import { writeFormula } from '../../../src/core/expression/write'

const written = (source: string) => writeFormula(parseFormula(source))

test.each([
  '1+2*3',
  '(1+2)*3',
  '7-(2-1)',
  '7-2-1',
  '12/(3/2)',
  '2^3^2',
  '2^(3^2)',
  '-A1^2',
  '-(A1^2)',
  '-(A1+B1)',
  '2^-A1',
  'A1%',
  '(A1+B1)%',
  '(-A1)%',
  'A1=B1',
  'A1=(B1<>C1)',
  'A1&"x"&B1',
  'A1&(B1&C1)',
  '(A1>B1)*1',
  'A1+B1>=C1*2',
  'A1<=B1',
  'A1<B1',
  'A1#',
  'SUM(A1#)',
  '@A1',
  '+A1',
  'A1:INDEX(B1:B3,2)',
  'A1:B2 B1:C3',
  'SUM((A1,B2),3)',
  'A1:INDEX(B1:B3,2) B1:C3',
  '(A1:B2 B1:C3):D4',
  '-A1:INDEX(B1:B3,2)',
  'IFERROR(A1,#N/A)',
  'IF(A1,,2)',
  'LET(x,,1)',
  'LAMBDA(x,x+1)(3)',
  'SUM(A1:B2,3)',
  'IF(A1>0,"a, b",TRUE)',
  'LET(x,A1+1,y,x*2,x/y)',
  'MAP(A1:A3,LAMBDA(x,LET(y,x+1,y*y)))',
  '{1,2;3,4}',
  "'My sheet'!A1+1",
  'PI()',
])('%s is written as it was read, with the brackets that it needs and no others', (formula) => {
  expect(written(formula)).toBe(formula)
})

test('brackets that change nothing are left out', () => {
  expect([
    written('(A1=B1)=C1'),
    written('(1*2)+3'),
    written('((A1))'),
    written('(2^3)^2'),
    written('SUM((A1))'),
  ]).toEqual(['A1=B1=C1', '1*2+3', 'A1', '2^3^2', 'SUM(A1)'])
})

test('a negative number that is put in is bracketed as a leading minus would be', () => {
  const negative: AstExpression = { type: 'Literal', value: -2, raw: '-2' }
  const put = (source: string) => writeFormula(substitute(parseFormula(source), new Map([['x', negative]])))
  expect([put('x%'), put('x^2'), put('3-x')]).toEqual(['(-2)%', '-2^2', '3--2'])
})

/** The formula with numbers or cells in the places of x, y and z. */
const put = (source: string, texts: Readonly<Record<string, string>>) =>
  writeFormula(
    substitute(parseFormula(source), new Map(Object.entries(texts).map(([name, text]) => [name, parseFormula(text)]))),
  )

test('a name is replaced wherever it stands, and what is put in is not searched again', () => {
  expect(put('-x+SUM(x,y)*LET(t,x,t+x)', { x: 'y', y: 'A1' })).toBe('-y+SUM(y,A1)*LET(t,y,t+y)')
  expect(put('IF(x,,LET(t,,LAMBDA(one,one)(y)))', { x: 'A1', y: 'B1' })).toBe('IF(A1,,LET(t,,LAMBDA(one,one)(B1)))')
  expect(put('MAP(x,LAMBDA(one,one*y))', { x: 'A1:A3', y: 'B1' })).toBe('MAP(A1:A3,LAMBDA(one,one*B1))')
})

test.each([
  ['0+x', 'A1'],
  ['x+0', 'A1'],
  ['1+x', '1+A1'],
  ['x+1', 'A1+1'],
  ['x-0', 'A1'],
  ['0-x', '0-A1'],
  ['1-1', '0'],
  ['2-1', '2-1'],
  ['1-2', '1-2'],
  ['x-1', 'A1-1'],
  ['0*x', '0'],
  ['x*0', '0'],
  ['1*x', 'A1'],
  ['x*1', 'A1'],
  ['2*x', '2*A1'],
  ['0/x', '0'],
  ['x/1', 'A1'],
  ['1/x', '1/A1'],
  ['x/2', 'A1/2'],
  ['x^1', 'A1'],
  ['1^x', '1'],
  ['x^2', 'A1^2'],
  ['2^x', '2^A1'],
  ['0^x', '0^A1'],
  ['x&""', 'A1&""'],
  ['"0"+x', '"0"+A1'],
])('%s loses what is idle in it and becomes %s', (source, expected) => {
  expect(put(source, { x: 'A1' })).toBe(expected)
})

test.each([
  ['IF(1<2,x,y)', 'A1'],
  ['IF(2<1,x,y)', 'B1'],
  ['IF(1<1,x,y)', 'B1'],
  ['IF(x<1,x,y)', 'IF(A1<1,A1,B1)'],
  ['IF(1<x,x,y)', 'IF(1<A1,A1,B1)'],
  ['IF()', 'IF()'],
  ['IF("a"<"b",x,y)', 'IF("a"<"b",A1,B1)'],
  ['IF(TRUE<FALSE,x,y)', 'IF(TRUE<FALSE,A1,B1)'],
  ['IF(-1,x,y)', 'IF(-1,A1,B1)'],
  ['IF(1>2,x,y)', 'IF(1>2,A1,B1)'],
  ['MAX(1<2,x,y)', 'MAX(1<2,A1,B1)'],
  ['IF(x,y,1)', 'IF(A1,B1,1)'],
])('%s becomes %s: a choice between known numbers is made', (source, expected) => {
  expect(put(source, { x: 'A1', y: 'B1' })).toBe(expected)
})

test('a count that is rounded up is first rounded to nine decimals, and nothing else is', () => {
  expect([put('ROUNDUP(x/y,0)', { x: 'A1', y: 'B1' }), put('ROUNDDOWN(x,0)', { x: 'A1' })]).toEqual([
    'ROUNDUP(ROUND(A1/B1,9),0)',
    'ROUNDDOWN(A1,0)',
  ])
})
