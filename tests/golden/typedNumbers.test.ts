/** Numbers and units as people type them, read by the one argument reader. */
import { expect, test } from 'vitest'
import { refusal, value } from './golden'

/** Litres to buy as a need, in bags of one litre; what is read shows in the count. */
const litres = (typed: string) => value('WATER', typed, 1, 1, 1)

test.each([
  ['1.500 L', 1.5],
  ['3.785 L', 3.785],
  ['0.125 m3', 125],
  ['1500 L', 1500],
  ['1,5 L', 1.5],
  ['0,125 L', 0.125],
  ['1,2345 L', 1.2345],
  ['.5 L', 0.5],
  ['1.5e3 L', 1500],
])('%s is read as %d litres: a point is the decimal point', (typed, expected) => {
  expect(litres(typed)).toBe(expected)
})

test('a comma before three digits is never guessed', () => {
  expect(refusal('WATER', '1,500 L', 1, 1, 1).sentence).toBe(
    'vesselLitres is "1,500 L", and the comma may mean 1500 L or 1.500 L. Type the one you mean without a comma.',
  )
})

test.each(['1.500.000', '1.500.000 L', '1,500,000', '1,500.25 L', '-1.500,25'])(
  '%s is refused, since it has several marks',
  (typed) => {
    expect(refusal('WATER', typed, 1, 1, 1).sentence).toBe(
      `vesselLitres is "${typed}", which has more than one point or comma. Type it with a point before the decimals and no mark between thousands, such as 1500.25.`,
    )
  },
)

test.each(['½', '½ L', '2½ L', '1 ½ L', '1/2 L', '1 1/2 L', '１２ L', '٣ L', '⅓'])(
  '%s is refused with what to type',
  (typed) => {
    expect(refusal('WATER', typed, 1, 1, 1).sentence).toBe(
      `vesselLitres is "${typed}"; a number is read from the digits 0 to 9 and a decimal point, not from fractions or other digits. Type 0.5 for a half.`,
    )
  },
)

test('a unit with a small three is no fraction', () => {
  expect(litres('2 m³')).toBe(2000)
})

test.each([
  ['lb/gal', 'Type "lb/US gal" or "lb/imp gal".'],
  ['ton/yd3', 'Type "t/yd3" or "short ton/yd3".'],
  ['ton per gal', 'Type "t/US gal" or "t/imp gal" or "short ton/US gal" or "short ton/imp gal".'],
  ['gal', 'Type "US gal" or "imp gal".'],
])('the ambiguous %s is refused, and whole units are offered', (unit, offered) => {
  expect(refusal('UNITS', 1, unit, 'kg/m3').sentence).toBe(
    `fromUnit has "${unit}", which means two different units. ${offered}`,
  )
})

test.each(['lb/US gal', 'lb/imp gal', 'short ton/yd3', 't/US gal'])('%s, as it is offered, is read', (unit) => {
  expect(value('UNITS', 1, unit, 'kg/m3')).toBeGreaterThan(0)
})

test.each(['lb/parsec', 'parsec/gal'])('%s is no unit, ambiguous or not', (unit) => {
  expect(refusal('UNITS', 1, unit, 'kg/m3').sentence).toContain('is not a unit that is read here')
})
