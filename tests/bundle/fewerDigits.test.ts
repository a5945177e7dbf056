import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type DecimalJs from 'decimal.js'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { Decimal } from '../../src/core/quantity/decimal'
import fewerDigits from '../../src/start/ballast/fewerDigits.mjs'

const source = readFileSync(fileURLToPath(import.meta.resolve('decimal.js')), 'utf8')
const shortened = `data:text/javascript,${encodeURIComponent(fewerDigits(source))}`
const { default: bundled } = (await import(/* @vite-ignore */ shortened)) as { default: typeof DecimalJs }
const { precision, rounding, toExpNeg, toExpPos } = Decimal
const Bundled = bundled.clone({ precision, rounding, toExpNeg, toExpPos })

it('The digits left out are more than a thousandth of the package.', () => {
  expect(fewerDigits(source).length).toBeLessThan(source.length - 1600)
})

// Powers are all that steps need the logarithm of 10 for, pi stands in some of them, and cells hold these numbers.
it('With fewer digits of pi and of the logarithm of 10 the decimals come to the same results, digit by digit.', () => {
  const power = fc.integer({ min: -307, max: 307 })
  const digits = fc.bigInt({ min: 1n, max: 10n ** 34n })
  const written = fc.tuple(digits, power).map(([all, by]) => `${all}e${by - 17}`)
  const exponent = fc.oneof(fc.double({ min: -40, max: 40, noNaN: true }), fc.double({ min: -1e-9, max: 1e-9 }))
  fc.assert(
    fc.property(written, exponent, (base, by) => {
      expect(new Bundled(base).pow(by).toString()).toBe(new Decimal(base).pow(by).toString())
      expect(new Bundled(base).ln().toString()).toBe(new Decimal(base).ln().toString())
      expect(new Bundled(by).exp().toString()).toBe(new Decimal(by).exp().toString())
    }),
    { numRuns: 500 },
  )
  expect(Bundled.acos(-1).toString()).toBe(Decimal.acos(-1).toString())
})

it('Another spelling of these digits is told when the pages are built.', () => {
  expect(() => fewerDigits(source.replace("PI = '3.", 'PI = "3.'))).toThrow('another way')
})
