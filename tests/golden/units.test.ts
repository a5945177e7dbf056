import { expect, test } from 'vitest'
import type { SourceKey } from '../../src/sources/bibliography'
import { goldenTests, refusal, value, type GoldenRow, type Seen } from './golden'

/** SP 811 prints what is not exact with seven digits. The exact factors follow by arithmetic from the inch and the pound, and from whole numbers of them. */
const factors: readonly [expected: number, from: string, to: string, source: SourceKey, seen: Seen][] = [
  [25.4, 'in', 'mm', 'nist-sp-811', 'copy'],
  [0.3048, 'ft', 'm', 'nist-sp-811', 'copy'],
  [0.9144, 'yd', 'm', 'nist-sp-811', 'copy'],
  [16.387064, 'in3', 'mL', 'nist-sp-811', 'copy'],
  [28.316846592, 'ft3', 'L', 'nist-sp-811', 'arithmetic'],
  [764.554857984, 'yd3', 'L', 'nist-sp-811', 'arithmetic'],
  [1728, 'ft3', 'in3', 'nist-handbook-44', 'copy'],
  [27, 'yd3', 'ft3', 'definition', 'arithmetic'],
  [4.54609, 'imp gal', 'L', 'nist-sp-811', 'copy'],
  [231, 'US gal', 'in3', 'nist-handbook-44', 'copy'],
  [3.785411784, 'US gal', 'L', 'nist-handbook-44', 'arithmetic'],
  [2150.42, 'US bushel', 'in3', 'nist-handbook-44', 'copy'],
  [35.23907016688, 'US bushel', 'L', 'nist-handbook-44', 'arithmetic'],
  // A thirty-second of a bushel.
  [67.200625, 'US dry qt', 'in3', 'nist-handbook-44', 'arithmetic'],
  [1.101220942715, 'US dry qt', 'L', 'nist-handbook-44', 'arithmetic'],
  [0.45359237, 'lb', 'kg', 'nist-sp-811', 'copy'],
  [16, 'lb', 'oz', 'nist-handbook-44', 'arithmetic'],
  [2000, 'short ton', 'lb', 'nist-sp-811', 'copy'],
  [907.18474, 'short ton', 'kg', 'nist-handbook-44', 'copy'],
]

const rows: readonly GoldenRow[] = [
  ...factors.map(([expected, from, to, source, seen]): GoldenRow => ({
    expected,
    within: expected * 1e-15,
    is: `1 ${from} in ${to}`,
    computed: () => value('UNITS', 1, from, to),
    source,
    seen,
  })),
  {
    expected: 35.239,
    within: 0.0005,
    is: '1 US bushel in L, as rounded there',
    computed: () => value('UNITS', 1, 'US bushel', 'L'),
    source: 'nist-handbook-44',
    seen: 'copy',
  },
  {
    expected: 0.45359237 / 0.764554857984,
    within: 1e-15,
    is: '1 lb/yd3 in kg/m3',
    computed: () => value('UNITS', 1, 'lb/yd3', 'kg/m3'),
    source: 'nist-sp-811',
    seen: 'arithmetic',
  },
  {
    expected: 1728 / 67.200625,
    within: 1e-13,
    is: 'US dry quarts in a cubic foot (a liquid quart would give 29.92)',
    computed: () => value('UNITS', 1, 'ft3', 'US dry qt'),
    source: 'nist-handbook-44',
    seen: 'arithmetic',
  },
  // The table rounds to whole kilograms and to grams.
  {
    expected: 3,
    within: 0.05,
    is: '5 lb per cubic yard in kg per m3',
    computed: () => value('UNITS', 5, 'lb/yd3', 'kg/m3'),
    source: 'acquaah-4-11',
    seen: 'copy',
  },
  {
    expected: 74,
    within: 0.5,
    is: '2 oz per cubic yard in g per m3',
    computed: () => value('UNITS', 2, 'oz/yd3', 'g/m3'),
    source: 'acquaah-4-11',
    seen: 'copy',
  },
  {
    expected: 111,
    within: 0.5,
    is: '3 oz per cubic yard in g per m3',
    computed: () => value('UNITS', 3, 'oz/yd3', 'g/m3'),
    source: 'acquaah-4-11',
    seen: 'copy',
  },
  ...(
    [
      [6.14, 100.6],
      [18.7, 306.4],
      [11.05, 181.1],
      [11.9, 195],
    ] as const
  ).map(([inches, expected]): GoldenRow => ({
    expected,
    within: 0.05,
    is: `a cell of ${inches} in3 in mL`,
    computed: () => value('UNITS', inches, 'in3', 'mL'),
    source: 'north-creek-plug-sizes',
    seen: 'copy',
  })),
]

goldenTests(rows, [
  {
    printed: 77.8,
    expected: 71.78,
    within: 0.005,
    is: 'a cell of 4.38 in3 in mL',
    computed: () => value('UNITS', 4.38, 'in3', 'mL'),
    source: 'north-creek-plug-sizes',
    seen: 'copy',
  },
])

test('gal alone is refused, and both spellings are offered', () => {
  expect(refusal('UNITS', 1, 'gal', 'L').sentence).toBe(
    'fromUnit has "gal", which means two different units. Type "US gal" or "imp gal".',
  )
})

test('the unit that is wanted is refused like the one that is given', () => {
  expect(refusal('UNITS', 1, 'L', 'gal').sentence).toBe(
    'toUnit has "gal", which means two different units. Type "US gal" or "imp gal".',
  )
})

test.each(['quart', 'qt', 'bushel', 'bu', 'ton', 'gallon', 'Gallons'])(
  '%s alone is refused, since it names two units',
  (unit) => {
    expect(refusal('UNITS', 1, unit, 'L').sentence).toContain('means two different units')
  },
)

test.each([
  ['cu ft', 28.316846592],
  ['cu. ft.', 28.316846592],
  ['ft³', 28.316846592],
  ['FT3', 28.316846592],
  ['cubic feet', 28.316846592],
  ['dry quarts', 1.101220942715],
  ['UK gal', 4.54609],
  ['Cu Yd', 764.554857984],
])('the spelling %s is read', (spelling, litres) => {
  expect(value('UNITS', 1, spelling, 'L')).toBe(litres)
})

test('two units of different kinds are refused with both kinds named', () => {
  expect(refusal('UNITS', 1, 'ft3', 'kg').sentence).toBe(
    '"ft3" is a volume and "kg" is a mass. Type two units of the same kind, such as "ft3" and "L".',
  )
})
