import { describe, expect, test } from 'vitest'
import { randomNumbers, randomWords } from '../../src/core/method/randomNumbers'
import { quantileOf } from '../../src/core/method/triangular'
import { cellOf, goldenTests, refusal, step, table } from './golden'

/** The number that the generator gives at this place, counted from 1. */
function word(seed: number, place: number): number {
  const next = randomWords(seed)
  for (let before = 1; before < place; before++) next()
  return next()
}

function random(seed: number, place: number): number {
  const next = randomNumbers(seed)
  for (let before = 1; before < place; before++) next()
  return next()
}

/** With rates of 1 the cost of a liner is that of the cutting. */
const ofCutting = (low: number, likely: number, high: number, draws = 100_000, seed = 1) =>
  ['PERLINER', ['costPerCutting', 'stageRates'], [low, 1], [likely, 1], [high, 1], draws, seed] as const
const medium = [
  'MEDIUMCOST',
  ['cuttingVolumeMl', 'costPerLitre', 'settle', 'spill', 'rounds', 'washCostPerCutting', 'topUpShare', 'lossShare'],
  [50, 0.1, 0.05, 0, 1, 0.002, 0, 0],
  [65, 0.15, 0.1, 0.03, 4, 0.004, 0.05, 0.02],
  [80, 0.2, 0.2, 0.05, 9, 0.01, 0.1, 0.1],
  100_000,
  2026,
] as const

goldenTests([
  {
    expected: 4123659995,
    within: 0,
    is: 'the 10,000th number of the generator with its standard seed',
    computed: () => word(5489, 10_000),
    source: 'iso-cpp-random',
    seen: 'copy',
  },
  ...[0.3745401188473625, 0.9507143064099162, 0.7319939418114051, 0.5986584841970366].map(
    (expected, index) =>
      ({
        expected,
        within: 0,
        is: `random number ${index + 1} of seed 42`,
        computed: () => random(42, index + 1),
        source: 'numpy-random',
        seen: 'print',
      }) as const,
  ),
  {
    expected: 0.6,
    within: 0.003,
    is: 'the mean of 0, 0.8 and 1',
    computed: () => cellOf('ODDS', 'mean', 'result', ...ofCutting(0, 0.8, 1)),
    source: 'stdlib-triangular',
    seen: 'copy',
  },
  {
    expected: 5,
    within: 0.02,
    is: 'the mean of 2, 5 and 8',
    computed: () => cellOf('ODDS', 'mean', 'result', ...ofCutting(2, 5, 8)),
    source: 'stdlib-triangular',
    seen: 'copy',
  },
  {
    expected: 6.708,
    within: 5e-4,
    is: 'the median of 4, 5 and 12',
    computed: () => quantileOf({ low: 4, likely: 5, high: 12 }, 0.5),
    source: 'stdlib-triangular',
    seen: 'copy',
  },
  {
    expected: 6.708,
    within: 0.03,
    is: 'half of 100,000 draws of 4, 5 and 12',
    computed: () => cellOf('ODDS', 0.5, 'result', ...ofCutting(4, 5, 12)),
    source: 'stdlib-triangular',
    seen: 'copy',
  },
  // 10 significant digits of what percentile() gives for the same formula over the same draws.
  ...(
    [
      [0, 0.003000532237],
      [0.01, 0.004346984776],
      [0.05, 0.005018936137],
      [0.1, 0.00541859725],
      [0.25, 0.006198152918],
      [0.5, 0.007242039597],
      [0.75, 0.008414467933],
      [0.9, 0.009467394612],
      [0.95, 0.01004503632],
      [0.99, 0.0112307682],
      [1, 0.01869091751],
      ['mean', 0.007363428171],
    ] as const
  ).map(
    ([row, expected]) =>
      ({
        expected,
        within: 1e-15,
        is: `${row} of 100,000 draws of a medium cost with eight arguments`,
        computed: () => cellOf('ODDS', row, 'result', ...medium),
        source: 'numpy-random',
        seen: 'arithmetic',
      }) as const,
  ),
  ...(
    [
      [0, 0.08251944206],
      [0.5, 0.1068078448],
      [1, 0.143428435],
      ['mean', 0.1077351332],
    ] as const
  ).map(
    ([row, expected]) =>
      ({
        expected,
        within: 1e-15,
        is: `${row} of 2,500 draws with the largest seed`,
        computed: () =>
          cellOf(
            'ODDS',
            row,
            'result',
            'PERLINER',
            ['costPerCutting', 'stageRates', 'stageRates'],
            [0.07, 0.7, 0.9],
            [0.08, 0.85, 0.95],
            [0.1, 0.9, 1],
            2500,
            2 ** 32 - 1,
          ),
        source: 'numpy-random',
        seen: 'arithmetic',
      }) as const,
  ),
  {
    expected: 0.00975,
    within: 1e-17,
    is: 'the middle of the chart of 65 mL at 0.15 a litre',
    computed: () =>
      step('allLikely', 'SWINGS', 'MEDIUMCOST', ['cuttingVolumeMl', 'costPerLitre'], [50, 0.1], [65, 0.15], [80, 0.2]),
    source: 'definition',
    seen: 'arithmetic',
  },
])

const [two, lows, likelies, highs] = [
  ['cuttingVolumeMl', 'costPerLitre'],
  [50, 0.1],
  [65, 0.15],
  [80, 0.2],
]

test.each(['MEDIUMCOST', 'mediumcost', 'STICK.MEDIUMCOST', ' stick.MediumCost '])(
  'a function is found as %s',
  (name) => {
    expect(table('SWINGS', name, ['CUTTINGVOLUMEML', 'costperlitre'], lows, likelies, highs)).toEqual(
      table('SWINGS', 'MEDIUMCOST', two, lows, likelies, highs),
    )
  },
)

test('equal swings keep the order of the rows, though their last binary digits differ', () => {
  const rows = table(
    'SWINGS',
    'PERLINER',
    ['costPerCutting', 'stageRates', 'stageRates', 'stageRates'],
    [0.1, 0.7, 0.7, 0.7],
    [0.1, 0.9, 0.9, 0.9],
    [0.1, 1, 1, 1],
  )
  expect(rows.map(([label]) => label)).toEqual(['stageRates 1', 'stageRates 2', 'stageRates 3', 'costPerCutting'])
})

describe('refused with a sentence', () => {
  for (const id of ['SWINGS', 'ODDS']) {
    test(`${id}: a function that is none, gives a table or needs a text, with the list of those that can be asked for`, () => {
      for (const name of ['HELP', 'UNITS', 'BLENDPARTS', 'ODDS', 'SWINGS', 'constructor', 'STICK.']) {
        const { sentence } = refusal(id, name, two, lows, likelies, highs)
        expect(sentence).toContain(
          `functionName is "${name}", which is not a function that can be asked for here. Type one of `,
        )
        const offered = sentence.slice(sentence.indexOf('Type one of '))
        for (const known of ['CUTTINGS', 'TRAYS', 'MEDIUMCOST', 'PERLINER', 'BREAKEVEN'])
          expect(offered).toContain(known)
        expect(offered).not.toMatch(/\b(UNITS|BLENDPARTS|SWINGS|ODDS)\b/)
      }
    })

    test(`${id}: an argument that the function does not have, with its row and the list of those that it has`, () => {
      expect(refusal(id, 'PERLINER', ['costPerCutting', 'strike'], lows, likelies, highs).sentence).toBe(
        'argumentNames, row 2, is "strike", which is no argument of PERLINER that takes numbers. Type one of costPerCutting, stageRates.',
      )
    })

    test(`${id}: a required argument that is missing`, () => {
      expect(refusal(id, 'PERLINER', ['costPerCutting'], [1], [1], [1]).sentence).toBe(
        'argumentNames lacks stageRates, which PERLINER needs. Add a row for it.',
      )
    })

    test(`${id}: a single cell that is named twice`, () => {
      expect(refusal(id, 'PERLINER', ['costPerCutting', 'costpercutting'], [1, 1], [1, 1], [1, 1]).sentence).toBe(
        'argumentNames, row 2, is "costPerCutting" again, which is a single cell of PERLINER. Clear one of the two rows.',
      )
    })

    test(`${id}: a low above its likely value, and a likely value above its high`, () => {
      expect(refusal(id, 'MEDIUMCOST', two, [50, 0.16], likelies, highs).sentence).toBe(
        'lows, row 2, is 0.16 and likelies beside it is 0.15; it may not be above it. Check both cells.',
      )
      expect(refusal(id, 'MEDIUMCOST', two, lows, [90, 0.15], highs).sentence).toBe(
        'likelies, row 1, is 90 and highs beside it is 80; it may not be above it. Check both cells.',
      )
    })

    test(`${id}: what the function itself refuses, in its words and with the place`, () => {
      const withSettle = ['cuttingVolumeMl', 'costPerLitre', 'settle']
      expect(refusal(id, 'MEDIUMCOST', withSettle, [...lows, 0], [...likelies, 0.1], [...highs, 1.5]).sentence).toBe(
        'MEDIUMCOST refuses highs, row 3: settle must be below 1 (100 %); it is 1.5. For 1.5 per cent type 1.5% or 0.015.',
      )
      expect(
        refusal(id, 'MEDIUMCOST', withSettle, [...lows, -0.1], [...likelies, 0.1], [...highs, 0.2]).sentence,
      ).toMatch(/^MEDIUMCOST refuses lows, row 3: settle must be 0 or more; it is -0\.1/)
      expect(refusal(id, 'MEDIUMCOST', withSettle, [...lows, 0], [...likelies, 2], [...highs, 2]).sentence).toMatch(
        /^MEDIUMCOST refuses likelies: settle must be below 1 \(100 %\); it is 2\./,
      )
    })

    test(`${id}: the row is that of the range, blank rows counted`, () => {
      expect(
        refusal(id, 'PERLINER', ['costPerCutting', '', 'strike'], [1, '', 1], [1, '', 1], [1, '', 1]).sentence,
      ).toMatch(/^argumentNames, row 3, is "strike"/)
      expect(
        refusal(id, 'PERLINER', ['costPerCutting', '', 'stageRates'], [1, '', 1], [1, '', 1], [1, '', 5]).sentence,
      ).toMatch(/^PERLINER refuses highs, row 3: stageRates, row 1, must be at most 1/)
    })
  }

  test('SWINGS gives no table where an end has no answer, and says which and why', () => {
    const { code, sentence } = refusal(
      'SWINGS',
      'BREAKEVEN',
      ['singleUseCost', 'firstCost', 'washCost'],
      [0.1, 2, 0.05],
      [0.45, 2.4, 0.12],
      [0.5, 3, 0.2],
    )
    expect(code).toBe('#N/A')
    expect(sentence).toMatch(/^BREAKEVEN has no answer with lows, row 1: Reuse never catches up: /)
  })

  test('ODDS gives no table where the likely values have no answer', () => {
    const { code, sentence } = refusal(
      'ODDS',
      'BREAKEVEN',
      ['singleUseCost', 'firstCost', 'washCost'],
      [0.1, 2, 0.05],
      [0.1, 2.4, 0.12],
      [0.5, 3, 0.2],
      100,
    )
    expect(code).toBe('#N/A')
    expect(sentence).toMatch(/^BREAKEVEN has no answer with the likelies: Reuse never catches up: /)
  })

  test('ODDS refuses more draws of a function that searches than a cell can wait for', () => {
    expect(refusal('ODDS', 'BREAKEVEN', ['singleUseCost', 'firstCost'], [1, 2], [1, 2], [1, 2]).sentence).toBe(
      'draws must be at most 1000 for BREAKEVEN, which searches for its answer and takes longer; it is 10000. Type 1000 or less.',
    )
    expect(table('ODDS', 'BREAKEVEN', ['singleUseCost', 'firstCost'], [1, 2], [1, 2], [1, 2], 1000)[0]).toEqual([0, 2])
  })
})

test('a draw without an answer is counted, and percentiles are those of the others', () => {
  // Washing costs at least as much as single use in a part of the draws, and then no number of rounds pays.
  const rows = table(
    'ODDS',
    'BREAKEVEN',
    ['singleUseCost', 'firstCost', 'washCost', 'mostRounds'],
    [1, 2, 0, 1e6],
    [1, 2, 0.5, 1e6],
    [1, 2, 2, 1e6],
    1000,
    3,
  )
  const without = Number(rows.at(-1)![1])
  // The chance of washing above 1 is (2 - 1)^2 / (2 x 1.5) = 1/3; 1,000 draws lie within 6 standard deviations, 0.09.
  expect(Math.abs(without / 1000 - 1 / 3)).toBeLessThan(0.09)
  expect(rows[0]![1]).toBeGreaterThanOrEqual(2)
})
