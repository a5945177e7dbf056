import { expect, it } from 'vitest'
import { withMark } from '../../../src/core/quantity/decimalMark'

// Unicode CLDR, from memory: English parts thousands by commas and decimals by a point, German the other way round.
it('A number is written with the mark that people expect, and thousands are parted by the other one.', () => {
  expect(withMark('1,234,567.5', '.')).toBe('1,234,567.5')
  expect(withMark('1,234,567.5', ',')).toBe('1.234.567,5')
  expect(withMark('-12', ',')).toBe('-12')
})
