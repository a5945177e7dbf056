import fc from 'fast-check'
import { expect, it } from 'vitest'
import { truncateBelowZero } from '../../../../src/workbench/grid/mends/truncation'
import { without } from '../univerInNode'
import { resultsOf } from './openCells'

// Microsoft's documentation of TRUNC: -8.9 gives -8. The others by arithmetic.
const right = [
  ['=TRUNC(-1)', -1],
  ['=TRUNC(-8.9)', -8],
  ['=TRUNC(-8)', -8],
  ['=TRUNC(-0.45)', 0],
  ['=TRUNC(-2.345,2)', -2.34],
  ['=TRUNC(-1234,-2)', -1200],
  ['=TRUNC("x")', '#VALUE!'],
] as const

it('What is below 0 is cut off towards 0.', async () => {
  expect(await resultsOf(right.map(([formula]) => formula))).toEqual(right.map(([, result]) => result))
})

it('Any decimal fraction loses just what stands behind its digits.', () => {
  const decimal = fc.tuple(fc.boolean(), fc.nat(99999), fc.nat(9999), fc.integer({ min: 0, max: 4 }))
  return fc.assert(
    fc.asyncProperty(fc.array(decimal, { minLength: 100, maxLength: 100 }), async (decimals) => {
      const written = decimals.map(([isNegative, whole, part, digits]) => {
        const fraction = String(part).padStart(4, '0')
        const sign = isNegative ? '-' : ''
        return [
          `=TRUNC(${sign}${whole}.${fraction}1,${digits})`,
          Number(`${sign}${whole}.${fraction.slice(0, digits)}`),
        ] as const
      })
      const results = await resultsOf(written.map(([formula]) => formula))
      written.forEach(([formula, wanted], place) => expect(results[place], formula).toBe(wanted === 0 ? 0 : wanted))
    }),
    { numRuns: 5 },
  )
})

it('Without the mend the library gives 0 for -1.', async () => {
  expect(await resultsOf(['=TRUNC(-1)', '=TRUNC(-8)'], {}, without(truncateBelowZero))).toEqual([0, -7])
})
