/** Small sums counted by hand: by arithmetic from the definition of the binomial distribution. */
import { describe, expect, it } from 'vitest'
import { chancesOfSum, leastFurther, tailOf } from '../../../src/core/method/sumOfBatches'

const batch = (size: number, mean: number, batchSpread = 0) => ({ size, survival: { mean, batchSpread } })
const chances = (...batches: ReturnType<typeof batch>[]) => {
  const { from, of } = chancesOfSum(batches)
  return { from, of: [...of].map((one) => Number(one.toFixed(12))) }
}

describe('The chances of batches together', () => {
  it('are those of each number, no fewer and no more', () => {
    expect(chances(batch(2, 0.5))).toEqual({ from: 0, of: [0.25, 0.5, 0.25] })
    expect(chances(batch(1, 0.5), batch(1, 0.5))).toEqual({ from: 0, of: [0.25, 0.5, 0.25] })
    expect(chances(batch(1, 0.25), batch(2, 0.5))).toEqual({ from: 0, of: [0.1875, 0.4375, 0.3125, 0.0625] })
    // 1 2 1 folded with itself is 1 4 6 4 1, and again 1 8 28 56 70 ... of 256.
    expect(chances(batch(2, 0.5), batch(2, 0.5), batch(2, 0.5), batch(2, 0.5)).of.slice(0, 5)).toEqual(
      [1, 8, 28, 56, 70].map((count) => count / 256),
    )
  })

  it('are certain where none, all or nothing lives', () => {
    expect(chances(batch(3, 1))).toEqual({ from: 3, of: [1] })
    expect(chances(batch(3, 0))).toEqual({ from: 0, of: [1] })
    expect(chances(batch(0, 0.5))).toEqual({ from: 0, of: [1] })
    expect(chances(batch(3, 1, 0.1), batch(0, 0.5, 0.1), batch(3, 0, 0.1))).toEqual({ from: 3, of: [1] })
    expect(chances(batch(3, 1), batch(2, 0.5))).toEqual({ from: 3, of: [0.25, 0.5, 0.25] })
  })

  it('end where they are too small to count', () => {
    // The standard deviation of a million at 1/2 is 500, and ten of them hold all but 1e-23.
    const { from, of } = chancesOfSum([batch(1_000_000, 0.5)])
    expect(from).toBeGreaterThan(500_000 - 6_000)
    expect(of.length).toBeLessThan(12_000)
    expect(of.length).toBeGreaterThan(8_000)
  })
})

describe('The chance of at least so many', () => {
  const tail = tailOf(chancesOfSum([batch(3, 1), batch(2, 0.5)]))
  it.each([
    [-1, 1],
    [3, 1],
    [4, 0.75],
    [5, 0.25],
    [6, 0],
  ])('%s is %s', (least, chance) => expect(tail(least)).toBeCloseTo(chance, 12))
})

describe('Further cuttings', () => {
  const nothing = chancesOfSum([batch(0, 0.5)])
  const further = (need: number, confidence: number, most: number, growing = nothing) =>
    leastFurther(need, confidence, growing, { mean: 0.5, batchSpread: 0 }, most)

  it('are the least that reach the confidence, a tie included', () => {
    // One of n lives with 1 - 0.5 ^ n.
    expect(further(1, 0.5, 100)).toBe(1)
    expect(further(1, 0.75, 100)).toBe(2)
    expect(further(1, 0.76, 100)).toBe(3)
    expect(further(1, 0.999, 100)).toBe(10)
  })

  it('are none where what grows is enough, and unknown where the most are too few', () => {
    expect(further(3, 0.9, 100, chancesOfSum([batch(3, 1)]))).toBe(0)
    expect(further(4, 0.5, 100, chancesOfSum([batch(3, 1)]))).toBe(1)
    expect(further(1, 0.75, 2)).toBe(2)
    expect(further(1, 0.76, 2)).toBeUndefined()
    expect(further(1, 0.5, 0)).toBeUndefined()
    expect(further(0, 0.5, 0)).toBe(0)
  })
})
