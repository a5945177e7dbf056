import { column, goldenTests, value, type GoldenRow } from './golden'

const litresPerCubicYard = 764.554857984

/** Square feet that one cubic yard covers at a depth in inches. */
const coverage: readonly [squareFeet: number, inches: number][] = [
  [324, 1],
  [162, 2],
  [108, 3],
  [81, 4],
]

const rows: readonly GoldenRow[] = [
  {
    expected: 5.168,
    within: 0.0005,
    is: 'litres in a tray of 72 cells of 4.38 in3',
    computed: () => value('FILL', 72, '4.38 in3'),
    source: 'north-creek-plug-sizes',
    seen: 'arithmetic',
  },
  {
    expected: 147.95,
    within: 0.005,
    is: 'such trays filled from a cubic yard',
    computed: () => value('UNITS', 1, 'yd3', 'L') / value('FILL', 72, '4.38 in3'),
    source: 'north-creek-plug-sizes',
    seen: 'arithmetic',
  },
  ...coverage.map(([squareFeet, inches]): GoldenRow => ({
    expected: litresPerCubicYard,
    within: 1e-9,
    is: `litres on ${squareFeet} square feet at ${inches} in (one cubic yard)`,
    computed: () => value('BEDFILL', `${squareFeet} ft`, '1 ft', `${inches} in`),
    source: 'garden-club-measurements',
    seen: 'copy',
  })),
  {
    expected: 755.1159,
    within: 5e-5,
    is: 'litres in a bed of 4 ft by 20 ft, 4 in deep',
    computed: () => value('BEDFILL', '20 ft', '4 ft', '4 in'),
    source: 'nist-sp-811',
    seen: 'arithmetic',
  },
  {
    expected: 0.98765,
    within: 5e-6,
    is: 'cubic yards in that bed',
    computed: () => value('UNITS', value('BEDFILL', '20 ft', '4 ft', '4 in'), 'L', 'yd3'),
    source: 'nist-sp-811',
    seen: 'arithmetic',
  },
  {
    expected: 6,
    within: 0,
    is: 'bags of 3 ft3 for 100 square feet at 2 in',
    computed: () => bagsFor(2),
    source: 'garden-club-measurements',
    seen: 'copy',
  },
  {
    expected: 9,
    within: 0,
    is: 'bags of 3 ft3 for 100 square feet at 3 in',
    computed: () => bagsFor(3),
    source: 'garden-club-measurements',
    seen: 'copy',
  },
  // A frustum is a third of the height times the two areas and their geometric mean (Euclid XII); a cone's volume is a third of its cylinder's.
  {
    expected: (((Math.PI * 30 * 30) / 4) * 60) / 1000,
    within: 1e-12,
    is: 'mL in a straight round cell of 30 by 60 mm',
    computed: () => value('ROUNDCELL', 30, 60),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: ((50 / 3) * (1600 + 784 + Math.sqrt(1600 * 784))) / 1000,
    within: 1e-12,
    is: 'mL in a square frustum of 40 to 28 mm, 50 mm deep',
    computed: () => value('CELLVOLUME', 40, 40, 50, 28, 28),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 118.5185185185185,
    within: 1e-9,
    is: 'loose litres of each of the two halves of 200 L at a shrink of 15.625 %',
    computed: () => column('BLENDPARTS', 200, [1, 1], 0.15625)[0]!,
    source: 'definition',
    seen: 'arithmetic',
  },
  // 98 * 0.7 * 25 = 1,715; in doubles 1715 / (98 * (1 - 0.3)) is a little above 25 and would take one more. Adding 30 % gives 22.75.
  {
    expected: 25,
    within: 0,
    is: 'sheets of 98 sites with 30 % of them left empty, for 1,715 cuttings',
    computed: () => value('BLOCKS', 1715, 98, 0.3),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 625,
    within: 0,
    is: 'litres of a tonne of dry sand of 1,600 kg/m3',
    computed: () => value('WEIGHTTOLITRES', '1 t', 1600),
    source: 'definition',
    seen: 'arithmetic',
  },
]

goldenTests(rows, [
  {
    printed: 11,
    expected: 12,
    within: 0,
    is: 'bags of 3 ft3 for 100 square feet at 4 in',
    computed: () => bagsFor(4),
    source: 'garden-club-measurements',
    seen: 'copy',
  },
])

function bagsFor(inches: number): number {
  return value('BAGS', value('BEDFILL', '10 ft', '10 ft', `${inches} in`), '3 ft3')
}
