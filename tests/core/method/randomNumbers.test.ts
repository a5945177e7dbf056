import { expect, test } from 'vitest'
import { randomNumbers, randomWords } from '../../../src/core/method/randomNumbers'

function numbersFrom(next: () => number, howMany: number): readonly number[] {
  return Array.from({ length: howMany }, next)
}

test('the words of the standard seed 5489 are the published ones', () => {
  const words = numbersFrom(randomWords(5489), 10_000)
  // The first five as widely printed, from memory; the 10,000th is required by ISO C++, [rand.predef].
  expect(words.slice(0, 5)).toEqual([3499211612, 581869302, 3890346734, 3586334585, 545404204])
  expect(words[9999]).toBe(4123659995)
})

test('the words of the seed 0 are those of other implementations', () => {
  // As NumPy's RandomState(0) gives them, from memory.
  expect(numbersFrom(randomWords(0), 5)).toEqual([2357136044, 2546248239, 3071714933, 3626093760, 2588848963])
})

test('a number is made of the upper 27 bits of one word and the upper 26 of the next', () => {
  // NumPy's manual prints 0.3745401188 and 0.9507143064 for seed 42.
  const [first, second] = numbersFrom(randomNumbers(42), 2)
  expect(first).toBeCloseTo(0.3745401188, 10)
  expect(second).toBeCloseTo(0.9507143064, 10)
  const words = numbersFrom(randomWords(42), 2000).map(BigInt)
  numbersFrom(randomNumbers(42), 1000).forEach((number, index) => {
    const [high, low] = [words[2 * index]! >> 5n, words[2 * index + 1]! >> 6n]
    expect(BigInt(number * 2 ** 53)).toBe((high << 26n) + low)
  })
})
