import { expect, test } from 'vitest'
import { parseFormula } from '../../../src/core/expression/expression'
import { compileInDoubles, power } from '../../../src/core/expression/inDoubles'

const slotOf = new Map([
  ['two', 0],
  ['line', 1],
  ['other', 2],
  ['short', 3],
])
const value = (source: string) => compileInDoubles(parseFormula(source), slotOf)([2, [1, 2, 3], [4, 5, 6], [7]])

test('expressions give in doubles what they give in decimals', () => {
  expect(
    [
      '1+2*3',
      '7-two-1',
      '12/3/two',
      '2^3',
      '-2^2',
      'SUM(line,two)',
      'PRODUCT(line,two)',
      'SUMPRODUCT(line,other)',
      'SUMPRODUCT(line,short)',
      'MIN(line,two)',
      'MAX(line,two)',
      'min(two,1)',
    ].map(value),
  ).toEqual([7, 4, 2, 8, 4, 8, 12, 32, 7, 1, 3, 1])
  expect(['line-1', '10-line', 'line*other', '-line', 'line+short'].map(value)).toEqual([
    [0, 1, 2],
    [9, 8, 7],
    [4, 10, 18],
    [-1, -2, -3],
    [8, 2, 3],
  ])
  expect(value('PI()')).toBe(Math.PI)
})

test('a count goes up but for dust, as in decimals', () => {
  expect(
    [
      '5',
      '5.2',
      '5.0000000004',
      '5.0000000006',
      '500000.0000004',
      '500000.0000006',
      '9000000.0000009',
      '9000000.000002',
      '-500000.9999994',
    ].map((count) => value(`ROUNDUP(${count},0)`)),
  ).toEqual([5, 6, 5, 6, 500_000, 500_001, 9_000_000, 9_000_001, -500_000])
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

test('what no step holds is a mistake of ours', () => {
  expect(() => value('stranger')).toThrow('stranger has no slot')
  expect(() => value('two>1')).toThrow('a step is a comparison, not a number')
  for (const source of ['two&1', 'SQRT(two)', 'LAMBDA(x,x)(two)', '{1,2}'])
    expect(() => value(source), source).toThrow('cannot be computed in doubles')
})

test('a whole power is exact where a double holds it, and its reciprocal with a negative exponent', () => {
  expect([power(2, 10), power(3, 5), power(-2, 3), power(7, 0), power(0, 0), power(0, 3), power(2, -3)]).toEqual([
    1024, 243, -8, 1, 1, 0, 0.125,
  ])
})

/** Math.pow differs between machines in the last digit alone. */
test.each([
  [1.25, 0.5],
  [0.8, 0.25],
  [2, 0.5],
  [2, 0.1],
  [0.5, 0.9],
  [1.0001, 0.3],
  [1000, 1 / 3],
  [1e-9, 0.75],
  [1e12, 0.01],
  [1.4142, 2.5],
  [0.7072, 2.5],
  [1.05, 1 / 12],
  [3, -0.5],
  [1.4143, 0.9],
  [0.7071, 0.9],
  [1e200, 0.9],
  [1e-200, 0.9],
])('%d to the power of %d is right to thirteen digits', (base, exponent) => {
  expect(Math.abs(power(base, exponent) / Math.pow(base, exponent) - 1)).toBeLessThan(1e-13)
})

test('the powers of 0, of a negative number and of infinity are those of IEEE 754', () => {
  expect([power(0, 0.5), power(0, -0.5), power(-1, 0.5), power(Infinity, 0.5), power(NaN, 0.5)]).toEqual([
    0,
    Infinity,
    NaN,
    NaN,
    NaN,
  ])
})
