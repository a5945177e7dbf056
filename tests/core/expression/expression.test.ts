import { expect, test } from 'vitest'
import { compile, type Environment } from '../../../src/core/expression/expression'
import { Decimal } from '../../../src/core/quantity/decimal'

const environment: Environment = {
  two: new Decimal(2),
  half: new Decimal('0.5'),
  line: [1, 2, 3].map((value) => new Decimal(value)),
  other: [4, 5, 6].map((value) => new Decimal(value)),
  short: [new Decimal(7)],
}
const known = new Set(Object.keys(environment))

function value(source: string): number | readonly number[] {
  const result = compile(source, known).evaluate(environment)
  return result instanceof Decimal ? result.toNumber() : result.map((one) => one.toNumber())
}

test('the operators bind as in Excel: a leading minus before the power', () => {
  expect(['1+2*3', '(1+2)*3', '7-2-1', '12/3/2', '2^3^2', '-2^2', '2^-1', '1.5+two'].map(value)).toEqual([
    7, 9, 4, 2, 64, 4, 0.5, 3.5,
  ])
})

test('a range and a number are combined cell by cell, on either side', () => {
  expect([value('line-1'), value('10-line'), value('line*other'), value('line/two'), value('-line')]).toEqual([
    [0, 1, 2],
    [9, 8, 7],
    [4, 10, 18],
    [0.5, 1, 1.5],
    [-1, -2, -3],
  ])
  // A cell that the other range does not have counts as 0.
  expect(value('line+short')).toEqual([8, 2, 3])
})

test('the functions give what those of Excel give', () => {
  expect(
    [
      'SUM(line)',
      'SUM(line,two,1)',
      'PRODUCT(line,two)',
      'SUMPRODUCT(line,other)',
      'SUMPRODUCT(line,short)',
      'MIN(line,half)',
      'MAX(line,two)',
      'ROUNDUP(two+half,0)',
      'roundup(2.0000000001,0)',
    ].map(value),
  ).toEqual([6, 9, 12, 32, 7, 0.5, 3, 3, 2])
  expect(value('PI()')).toBe(Math.PI)
})

test('every comparison decides an IF, at and beside the tie', () => {
  const choose = (comparison: string) => ['1', '2', '3'].map((left) => value(`IF(${left}${comparison}two,1,0)`))
  expect(
    Object.fromEntries(['=', '<>', '<', '<=', '>', '>='].map((comparison) => [comparison, choose(comparison)])),
  ).toEqual({
    '=': [0, 1, 0],
    '<>': [1, 0, 1],
    '<': [1, 0, 0],
    '<=': [1, 1, 0],
    '>': [0, 0, 1],
    '>=': [0, 1, 1],
  })
})

test('only the branch that is taken is computed', () => {
  const without = compile('IF(two>1,two,two/missing)', new Set(['two', 'missing']))
  expect(String(without.evaluate(environment))).toBe('2')
})

test.each([
  ['two+stranger', '"two+stranger" uses stranger, which is neither a parameter nor an earlier step'],
  ['"text"', 'is outside the subset of Excel that a step may use'],
  ['two&half', 'is outside the subset of Excel that a step may use'],
  ['two%', 'is outside the subset of Excel that a step may use'],
  ['+two', 'is outside the subset of Excel that a step may use'],
  ['SQRT(two)', 'is outside the subset of Excel that a step may use'],
  ['IF(two>1,two)', 'IF takes three arguments'],
  ['IF(two>1,two,two,two)', 'IF takes three arguments'],
  ['LAMBDA(x,x)(two)', 'is outside the subset of Excel that a step may use'],
  ['IF(two>1,,two)', 'an argument of IF is empty'],
  ['{1,2}', 'is outside the subset of Excel that a step may use'],
])('%s fails as soon as it is used', (source, message) => {
  expect(() => compile(source, known).tree).toThrow(message)
})

test.each([
  ['two>1', 'is a comparison, not a number'],
  ['SUM(line)+line>1', 'a step needs one number here'],
  ['ROUNDUP(line,0)', 'a step needs one number here'],
  ['SUMPRODUCT(line,two)', 'a step needs a range here'],
  ['two+(two>1)', 'a step needs one number here'],
  ['-(two>1)', 'a step needs one number here'],
])('%s fails as it is evaluated', (source, message) => {
  expect(() => compile(source, known).evaluate(environment)).toThrow(message)
})

test('a name without a value is a mistake of ours', () => {
  expect(() => compile('two', known).evaluate({})).toThrow('"two": two has no value')
})
