/** The ledger of reuse against a financial library. */
import { npv, PaymentDueTime, pmt } from 'financial'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { table } from '../golden/golden'

const cents = (most: number) => fc.integer({ min: 1, max: most * 100 }).map((one) => one / 100)
const permille = (most: number) => fc.integer({ min: 0, max: most }).map((one) => one / 1000)

function columnOf(rows: readonly (readonly (number | string)[])[], at: number): readonly number[] {
  return rows.map((row) => Number(row[at]))
}

test('the running present value is the net present value that the library gives for the outlays so far', () => {
  fc.assert(
    fc.property(
      cents(500),
      fc.integer({ min: 1, max: 40 }),
      cents(5),
      permille(300),
      permille(300),
      permille(300),
      (firstCost, rounds, wash, topUp, loss, interest) => {
        const rows = table('REUSELEDGER', firstCost, rounds, wash, topUp, loss, 0, interest)
        const outlays = columnOf(rows, 2)
        columnOf(rows, 4).forEach((running, index) =>
          expect(Math.abs(running - npv(interest, outlays.slice(0, index + 1)))).toBeLessThanOrEqual(
            1e-9 * Math.max(1, running),
          ),
        )
      },
    ),
    { numRuns: 200, seed: 21 },
  )
})

test('without upkeep and loss the level cost of each row is the payment of the library for a loan over the rounds so far', () => {
  fc.assert(
    fc.property(
      cents(500),
      fc.integer({ min: 1, max: 40 }),
      cents(50),
      permille(300),
      (firstCost, rounds, endValue, interest) => {
        columnOf(table('REUSELEDGER', firstCost, rounds, 0, 0, 0, endValue, interest), 5).forEach((level, index) => {
          expect(
            Math.abs(level + pmt(interest, index + 1, firstCost, -endValue, PaymentDueTime.Begin)),
          ).toBeLessThanOrEqual(1e-9 * (firstCost + endValue))
        })
      },
    ),
    { numRuns: 200, seed: 22 },
  )
})

test('the level cost paid for the units in use of every round has the present value of all outlays, less what comes back', () => {
  fc.assert(
    fc.property(
      cents(500),
      fc.integer({ min: 1, max: 40 }),
      cents(5),
      permille(300),
      permille(300),
      cents(50),
      permille(300),
      (firstCost, rounds, wash, topUp, loss, endValue, interest) => {
        const rows = table('REUSELEDGER', firstCost, rounds, wash, topUp, loss, endValue, interest)
        const [units, outlays] = [columnOf(rows, 1), columnOf(rows, 2)]
        const level = columnOf(rows, 5).at(-1)!
        const back = endValue * units.at(-1)! * (1 - loss)
        const flows = [...outlays, 0].map((outlay, round) => outlay - (round === rounds ? back : level * units[round]!))
        expect(Math.abs(npv(interest, flows))).toBeLessThanOrEqual(1e-9 * (firstCost + endValue + 10 * rounds))
      },
    ),
    { numRuns: 200, seed: 23 },
  )
})
