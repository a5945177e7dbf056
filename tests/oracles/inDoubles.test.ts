/** The steps in doubles against the very same steps in decimals, for every function that is defined by steps. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import { evaluate } from '../../src/core/definition/evaluate'
import type { Parameter } from '../../src/core/definition/parameter'
import { stepsInDoubles } from '../../src/core/definition/stepsInDoubles'
import { power } from '../../src/core/expression/inDoubles'
import { Decimal } from '../../src/core/quantity/decimal'
import { catalogue } from '../../src/functions/catalogue'

const cellsOfRange = 3

/** A plausible value: short decimals, as people type them. */
function inputOf({ atLeast, above, atMost, below, whole, share }: Parameter): fc.Arbitrary<number> {
  if (share === true)
    return fc
      .integer({ min: above === undefined ? 0 : 50, max: below === 1 || atMost === 1 ? 950 : 400 })
      .map((permille) => permille / 1000)
  const least = Math.max(atLeast ?? 0, above === undefined ? 0 : 1)
  if (whole === true) return fc.integer({ min: least, max: Math.min(atMost ?? 150, 150) })
  return fc
    .integer({ min: above === undefined ? 0 : 10, max: Math.min((atMost ?? 500) * 100, 50_000) })
    .map((hundredths) => hundredths / 100)
}

function callOf(definition: Definition): fc.Arbitrary<readonly unknown[]> {
  return fc.tuple(
    ...Object.values(definition.parameters).map((parameter) => {
      const filled: fc.Arbitrary<unknown> =
        parameter.shape === 'line'
          ? fc.array(
              inputOf(parameter).map((value) => [value]),
              { minLength: cellsOfRange, maxLength: cellsOfRange },
            )
          : inputOf(parameter)
      return parameter.optional ? fc.option(filled, { freq: 3 }) : filled
    }),
  )
}

const bySteps = catalogue.filter(({ body }) => 'steps' in body)

describe.each(bySteps.map((definition) => [definition.id, definition] as const))('STICK.%s', (_, definition) => {
  test('computed in doubles is what it is in decimals, to eleven digits', () => {
    if (!('steps' in definition.body)) throw new Error('no steps')
    const names = Object.keys(definition.parameters)
    const run = stepsInDoubles(definition.body.steps, names)
    let compared = 0
    fc.assert(
      fc.property(callOf(definition), (given) => {
        const exact = evaluate(definition, given)
        if (!('result' in exact)) return
        compared++
        const last = exact.working().at(-1)!.value as Decimal | readonly Decimal[]
        const slots = names.map((name) => {
          const value = exact.args[name]
          return Array.isArray(value) ? value.map(Number) : Number(value)
        })
        // Where much is taken from much, such as 1 - kept, the dust is that of the larger.
        const largest = Math.max(...slots.flat().map(Math.abs).filter(Number.isFinite))
        const [got, wanted] = [[run(slots)].flat(), [last].flat() as Decimal[]]
        expect(got).toHaveLength(wanted.length)
        got.forEach((value, index) => {
          const expected = wanted[index]!.toNumber()
          expect(Math.abs(value - expected), JSON.stringify(given)).toBeLessThanOrEqual(
            1e-11 * Math.abs(expected) + 1e-12 * largest,
          )
        })
      }),
      { numRuns: 2000, seed: 11 },
    )
    expect(compared).toBeGreaterThan(500)
  })
})

test('a power is that of decimals to thirteen digits, for whole exponents and others', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 3, noNaN: true }),
      fc.oneof(fc.integer({ min: -40, max: 40 }), fc.double({ min: -20, max: 20, noNaN: true })),
      (base, exponent) => {
        const expected = new Decimal(base).pow(exponent).toNumber()
        expect(Math.abs(power(base, exponent) - expected), `${base} ^ ${exponent}`).toBeLessThanOrEqual(
          1e-13 * expected,
        )
      },
    ),
    { numRuns: 3000, seed: 12 },
  )
})

test.each([
  [0, 0, 1],
  [0, 2.5, 0],
  [0, -1, Infinity],
  [2, 0.5, Math.SQRT2],
  [-2, 3, -8],
  [-2, 0.5, NaN],
  [1e-300, 0.5, 1e-150],
  [1e300, 1.5, Infinity],
  [1e300, -1.5, 0],
])('%d ^ %d is %d', (base, exponent, expected) => {
  if (Number.isFinite(expected) && expected !== 0) expect(power(base, exponent) / expected).toBeCloseTo(1, 13)
  else expect(power(base, exponent)).toBe(expected)
})
