import { expect, test } from 'vitest'
import { asShown, Decimal, fitsCell, fromText, toCell } from '../../../src/core/quantity/decimal'

test('halves round away from zero, as invoices do, and 34 digits are kept', () => {
  expect([new Decimal('0.125'), new Decimal('-0.125')].map((value) => value.toDecimalPlaces(2).toString())).toEqual([
    '0.13',
    '-0.13',
  ])
  expect(new Decimal(1).div(3).toString()).toBe('0.3333333333333333333333333333333333')
})

test('a number is read with the 15 digits that a spreadsheet shows, and a short one as it is', () => {
  expect(asShown(0.1 + 0.2)).toBe(0.3)
  expect(asShown(1 / 3)).toBe(0.333333333333333)
  expect(asShown(123456.789)).toBe(123456.789)
  expect(asShown(1e20 / 3)).toBe(33_333_333_333_333_300_000)
  expect(fromText('0.30000000000000004').toString()).toBe('0.3')
})

test('a cell holds 0 and whatever lies between its least and largest power of ten', () => {
  for (const held of ['0', '1e-307', '9.99e307', '-1e307']) expect(fitsCell(new Decimal(held)), held).toBe(true)
  for (const notHeld of ['1e-308', '1e308', '-1e308', 'Infinity', 'NaN'])
    expect(fitsCell(new Decimal(notHeld)), notHeld).toBe(false)
})

test('a cell never gets minus zero', () => {
  expect(toCell(new Decimal(-0))).toBe(0)
  expect(toCell(new Decimal('-0.5'))).toBe(-0.5)
})
