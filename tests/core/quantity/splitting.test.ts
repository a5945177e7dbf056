import { expect, test } from 'vitest'
import { Decimal } from '../../../src/core/quantity/decimal'
import { splitByWeights } from '../../../src/core/quantity/splitting'

const parts = (amount: string, weights: readonly number[]) =>
  splitByWeights(
    new Decimal(amount),
    weights.map((weight) => new Decimal(weight)),
  ).map(String)

test('the cents that are left go to the largest remainders, the earlier part first where they tie', () => {
  expect(parts('10', [1, 1, 1])).toEqual(['3.34', '3.33', '3.33'])
  expect(parts('0.05', [1, 1])).toEqual(['0.03', '0.02'])
  // 1.428…, 2.857…, 5.714…: the two largest remainders are the second and the third.
  expect(parts('10', [1, 2, 4])).toEqual(['1.43', '2.86', '5.71'])
  expect(parts('100', [5, 1, 3])).toEqual(['55.56', '11.11', '33.33'])
})

test('a part without weight gets nothing, and an amount with finer decimals is split in its own last one', () => {
  expect(parts('7', [0, 2])).toEqual(['0', '7'])
  expect(parts('0.005', [1, 1])).toEqual(['0.003', '0.002'])
  expect(parts('0', [1, 2])).toEqual(['0', '0'])
})
