import { expect, test } from 'vitest'
import { Decimal } from '../../../src/core/quantity/decimal'
import { isAtMost, roundDownToWhole, roundUpToWhole } from '../../../src/core/quantity/rounding'

const up = (value: string) => roundUpToWhole(new Decimal(value)).toNumber() + 0
const down = (value: string) => roundDownToWhole(new Decimal(value)).toNumber()

test('a count goes up to the next whole number, but not for dust', () => {
  expect([up('5'), up('5.2'), up('0.1'), up('0')]).toEqual([5, 6, 1, 0])
  // Half a billionth is dust of any count, and one part in 10^12 of a large one, but never more than a millionth.
  expect([up('5.0000000005'), up('5.0000000006')]).toEqual([5, 6])
  expect([up('500000.0000005'), up('500000.0000006')]).toEqual([500_000, 500_001])
  expect([up('9000000.000001'), up('9000000.000002')]).toEqual([9_000_000, 9_000_001])
})

test('a negative number goes up too, and its dust is that of its size', () => {
  expect([up('-5.5'), up('-500000.9999996')]).toEqual([-5, -500_001])
})

test('the largest whole number below ignores the same dust', () => {
  expect([down('59.9999999999'), down('59.99'), down('60'), down('-0.5')]).toEqual([60, 59, 60, -1])
})

test('an amount is at most another one if it exceeds it by dust alone', () => {
  const atMost = (amount: string, other: string) => isAtMost(new Decimal(amount), new Decimal(other))
  expect([
    atMost('1', '1'),
    atMost('1.000000000001', '1'),
    atMost('1.0000000000011', '1'),
    atMost('2', '1'),
    atMost('-1', '1'),
  ]).toEqual([true, true, false, false, true])
  expect([atMost('-0.999999999999', '-1'), atMost('-0.9999999999', '-1')]).toEqual([true, false])
  expect([atMost('9000000.000001', '9000000'), atMost('9000000.0000011', '9000000')]).toEqual([true, false])
})
