import { goldenTests, step, value, type GoldenRow } from './golden'

/** The table's k means "more than k", so k + 1 liners are asked for. */
const table: readonly [moreThan: number, survival: number, byConfidence: readonly number[]][] = [
  [50, 0.9, [56, 58, 60, 61, 63]],
  [500, 0.9, [556, 562, 567, 570, 576]],
  [5, 0.6, [10, 11, 13, 15, 18]],
]
const confidences = [0.5, 0.75, 0.9, 0.95, 0.99]
/** The deviation that belongs to an intra-batch correlation of 0.02 at 85 %. */
const spread = Math.sqrt(0.02 * 0.85 * 0.15)

const rows: readonly GoldenRow[] = [
  ...table.flatMap(([moreThan, survival, numbers]) =>
    numbers.map((expected, index): GoldenRow => ({
      expected,
      within: 0,
      is: `cuttings for more than ${moreThan} at ${survival} with ${confidences[index]!}`,
      computed: () => value('CUTTINGS', moreThan + 1, [survival], confidences[index]),
      source: 'boost-negative-binomial',
      seen: 'copy',
    })),
  ),
  {
    expected: 1,
    within: 0,
    is: 'cuttings for one liner at 0.5 with 0.5 (an exact tie)',
    computed: () => value('CUTTINGS', 1, [0.5], 0.5),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 3,
    within: 0,
    is: 'cuttings for two liners at 0.5 with 0.5 (an exact tie)',
    computed: () => value('CUTTINGS', 2, [0.5], 0.5),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1177,
    within: 0,
    is: 'cuttings for 1,000 liners at 85 % on average',
    computed: () => value('CUTTINGS', 1000, [0.85]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0.535,
    within: 0.0005,
    is: 'the chance that 1,177 are enough',
    computed: () => step('chance', 'CUTTINGS', 1000, [0.85], 0.53),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1201,
    within: 0,
    is: 'cuttings for 1,000 liners at 85 % with 95 %',
    computed: () => value('CUTTINGS', 1000, [0.85], 0.95),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1320,
    within: 0,
    is: 'the same with an intra-batch correlation of 0.02',
    computed: () => value('CUTTINGS', 1000, [0.85], 0.95, spread),
    source: 'definition',
    seen: 'arithmetic',
  },
]

goldenTests(rows)
