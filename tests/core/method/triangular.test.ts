import { expect, test } from 'vitest'
import { quantileOf } from '../../../src/core/method/triangular'

/**
 * The distribution function of the triangular distribution. Below the likeliest value the area under the straight
 * density is that of a triangle, and above it what a triangle leaves of 1.
 */
function shareBelow(value: number, low: number, likely: number, high: number): number {
  return value < likely
    ? (value - low) ** 2 / ((high - low) * (likely - low))
    : 1 - (high - value) ** 2 / ((high - low) * (high - likely))
}

test.each([
  [2, 5, 12],
  [0, 1, 2],
  [0, 0, 3],
  [5, 9, 9],
  [-4, -1, 7],
  [0.001, 500, 1000],
])('below the quantile of %d, %d and %d lies just the share that was asked for', (low, likely, high) => {
  for (let percent = 1; percent < 100; percent++) {
    const value = quantileOf({ low, likely, high }, percent / 100)
    expect(shareBelow(value, low, likely, high)).toBeCloseTo(percent / 100, 12)
    expect(value).toBeGreaterThanOrEqual(low)
    expect(value).toBeLessThanOrEqual(high)
  }
})

test('quantiles whose roots are whole are exact', () => {
  const triangular = { low: 2, likely: 6, high: 18 }
  // Of the area, (4 / 16) lies below the likeliest value: a quarter of that below the middle of the rising side.
  expect([0, 1 / 16, 1 / 4, 13 / 16, 1].map((share) => quantileOf(triangular, share))).toEqual([2, 4, 6, 12, 18])
})

test('an amount without doubt is itself, whatever the share', () => {
  expect([0, 0.5, 1].map((share) => quantileOf({ low: 3.7, likely: 3.7, high: 3.7 }, share))).toEqual([3.7, 3.7, 3.7])
})

test('where the last digit would round beyond an end, the quantile is that end', () => {
  // 0.936 - (0.936 - 0.308) is 0.30799999999999994 in doubles.
  expect(quantileOf({ low: 0.308, likely: 0.308, high: 0.936 }, 0)).toBe(0.308)
})
