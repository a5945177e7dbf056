import fc from 'fast-check'
import { expect, it } from 'vitest'
import { spellNumbers } from '../../../../src/workbench/grid/mends/numberTexts'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** Excel has 15 digits of a number (its specifications and limits); a half is rounded up (TEXT, FIXED and DOLLAR). */
const right = [
  ['=1/3&""', '0.333333333333333'],
  ['=-2/3&""', '-0.666666666666667'],
  ['=CONCATENATE(100/7)', '14.2857142857143'],
  ['=TEXTJOIN(",",TRUE,1/3,2)', '0.333333333333333,2'],
  ['=LEN(1/3)', 17],
  ['=LEFT(1/3,20)', '0.333333333333333'],
  ['=MID(1/3,16,9)', '33'],
  ['=RIGHT(2/3,2)', '67'],
  ['=0.1+0.2&""', '0.3'],
  ['=EXACT(0.1+0.2,"0.3")', 1],
  ['=LEN(DATE(2026,1,31))', 5],
  ['=SUBSTITUTE(1/3,"3","")', '0.'],
  ['=FIND("7",2/3)', 17],
  ['=TRUE&1', 'TRUE1'],
  ['=A1&"x"', 'x'],
  ['=TEXT(1.005,"0.00")', '1.01'],
  ['=TEXT(-1.005,"0.00")', '-1.01'],
  ['=TEXT(1234.565,"#,##0.00")', '1,234.57'],
  ['=TEXT(0.285,"0%")', '29%'],
  ['=FIXED(2.675,2)', '2.68'],
  ['=TRIM(DOLLAR(1.005,2))', '$1.01'],
  ['=TEXT(1.004999,"0.00")', '1.00'],
  ['=TEXT("x","0.00")', 'x'],
] as const

it('A number that becomes a text has 15 digits, and its halves are rounded up.', () => expectResults(right))

it('Any amount with three decimals is shown in cents as a person rounds it.', () => {
  const amount = fc.tuple(fc.nat(999999), fc.nat(999))
  return fc.assert(
    fc.asyncProperty(fc.array(amount, { minLength: 100, maxLength: 100 }), async (amounts) => {
      const written = amounts.map(([whole, part]) => {
        const cents = BigInt(whole) * 100n + BigInt(Math.floor((part + 5) / 10))
        const shown = `${cents / 100n}.${String(cents % 100n).padStart(2, '0')}`
        return [`${whole}.${String(part).padStart(3, '0')}`, shown] as const
      })
      const results = await resultsOf(written.map(([number]) => `=TEXT(${number},"0.00")&" "&FIXED(${number},2,TRUE)`))
      expect(results).toEqual(written.map(([, shown]) => `${shown} ${shown}`))
    }),
    { numRuns: 20 },
  )
})

it('Without the mend the library has other digits, and shows a cent too few.', async () => {
  const formulas = ['=1/3&""', '=LEN(1/3)', '=TEXT(1.005,"0.00")']
  expect(await resultsOf(formulas, {}, without(spellNumbers))).toEqual(['0.3333333333333333', 14, '1.00'])
})
