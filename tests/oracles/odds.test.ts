/** Percentiles of draws against the exact distribution of what is drawn. */
import { expect, test } from 'vitest'
import { table } from '../golden/golden'

const draws = 100_000
/**
 * By Dvoretzky, Kiefer and Wolfowitz with the constant of Massart (1990) the share of the draws below any value lies
 * further off its probability than this with a chance of 2 exp(-2 x 100,000 x 0.01^2) = 4e-9.
 */
const within = 0.01

interface Triangle {
  readonly low: number
  readonly likely: number
  readonly high: number
}

function density(value: number, { low, likely, high }: Triangle): number {
  if (value < low || value > high) return 0
  if (value < likely) return (2 * (value - low)) / ((high - low) * (likely - low))
  return value > likely ? (2 * (high - value)) / ((high - low) * (high - likely)) : 2 / (high - low)
}

function shareBelow(value: number, { low, likely, high }: Triangle): number {
  if (value <= low) return 0
  if (value >= high) return 1
  return value < likely
    ? (value - low) ** 2 / ((high - low) * (likely - low))
    : 1 - (high - value) ** 2 / ((high - low) * (high - likely))
}

function percentilesOf(...given: readonly unknown[]): readonly (readonly [share: number, result: number])[] {
  return table('ODDS', ...given)
    .filter(([share]) => typeof share === 'number')
    .map(([share, result]) => [Number(share), Number(result)])
}

const triangles: readonly Triangle[] = [
  { low: 1, likely: 2, high: 4 },
  { low: 0, likely: 0, high: 3 },
  { low: 5, likely: 9, high: 9 },
  { low: 0.001, likely: 500, high: 1000 },
]

test.each(triangles)(
  'what is in proportion to one argument is distributed as that argument: $low, $likely, $high',
  (triangle) => {
    const percentiles = percentilesOf(
      'PERLINER',
      ['costPerCutting', 'stageRates'],
      [triangle.low, 0.5],
      [triangle.likely, 0.5],
      [triangle.high, 0.5],
      draws,
      31,
    )
    expect(percentiles).toHaveLength(11)
    for (const [share, result] of percentiles)
      expect(Math.abs(shareBelow(result / 2, triangle) - share)).toBeLessThan(within)
  },
)

test('the mean of two prices is distributed as the convolution of their two distributions', () => {
  const [first, second] = [
    { low: 1, likely: 2, high: 4 },
    { low: 0.5, likely: 3, high: 3.5 },
  ] as const
  const names = ['parts', 'parts', 'pricesPerLitre', 'pricesPerLitre']
  const odds = percentilesOf(
    'BLENDCOST',
    names,
    [1, 1, first.low, second.low],
    [1, 1, first.likely, second.likely],
    [1, 1, first.high, second.high],
    draws,
    32,
  )
  for (const [share, result] of odds) {
    // The integral of density(x) x shareBelow(2 result - x), by the midpoints of 20,000 strips.
    const [strips, width] = [20_000, (first.high - first.low) / 20_000]
    let below = 0
    for (let strip = 0; strip < strips; strip++) {
      const value = first.low + (strip + 0.5) * width
      below += density(value, first) * shareBelow(2 * result - value, second) * width
    }
    expect(Math.abs(below - share)).toBeLessThan(within)
  }
})

test('the draws of two arguments do not hang together: the variance of their sum is the sum of their variances', () => {
  const names = ['parts', 'parts', 'pricesPerLitre', 'pricesPerLitre']
  const spread = (low: number, likely: number, high: number) =>
    (low ** 2 + likely ** 2 + high ** 2 - low * likely - low * high - likely * high) / 18
  // For a symmetric sum the deviation of the mean of two is near that of the normal: half of it lies within 0.674 of them.
  const odds = new Map(percentilesOf('BLENDCOST', names, [1, 1, 1, 1], [1, 1, 2, 2], [1, 1, 3, 3], draws, 33))
  const deviation = Math.sqrt((2 * spread(1, 2, 3)) / 4)
  expect(Math.abs((odds.get(0.75)! - odds.get(0.25)!) / (2 * 0.674 * deviation) - 1)).toBeLessThan(0.04)
})
