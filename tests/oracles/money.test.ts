/** The money formulas against a financial library, and against money that is moved round by round. */
import { PaymentDueTime, pmt } from 'financial'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { refusal, value } from '../golden/golden'

const cents = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((amount) => amount / 100)
const share = (most: number) => fc.integer({ min: 0, max: most * 1000 }).map((permille) => permille / 1000)

test('without washing, topping up and loss the level cost is the loan payment of the library, due at the beginning', () => {
  fc.assert(
    fc.property(
      cents(5000),
      fc.integer({ min: 1, max: 60 }),
      cents(500),
      share(0.3),
      (firstCost, rounds, endValue, interest) => {
        const expected = -pmt(interest, rounds, firstCost, -endValue, PaymentDueTime.Begin)
        expect(close(value('REUSECOST', firstCost, rounds, 0, 0, 0, endValue, interest), expected, firstCost)).toBe(
          true,
        )
      },
    ),
    { numRuns: 500, seed: 4 },
  )
})

interface Reuse {
  firstCost: number
  washCost: number
  topUpShare: number
  lossShare: number
  endValue: number
  interest: number
  roundsPerYear: number
}

/** The contract's formula, term by term: what one unit bought costs today, over what it is used. */
function levelCost(
  rounds: number,
  { firstCost, washCost, topUpShare, lossShare, endValue, interest, roundsPerYear }: Reuse,
): number {
  const kept = (1 - lossShare) / (1 + interest) ** (1 / roundsPerYear)
  let [cost, uses] = [firstCost, 1]
  for (let round = 1; round < rounds; round++) {
    cost += (washCost + topUpShare * firstCost) * kept ** round
    uses += kept ** round
  }
  return (cost - endValue * kept ** rounds) / uses
}

const reuse = fc.record<Reuse>({
  firstCost: cents(100),
  washCost: cents(5),
  topUpShare: share(0.3),
  lossShare: share(0.3),
  endValue: cents(40).map((amount) => amount - 10),
  interest: share(0.2),
  roundsPerYear: fc.constantFrom(1, 2, 4, 12),
})
const given = (r: Reuse) => [r.washCost, r.topUpShare, r.lossShare, r.endValue, r.interest, r.roundsPerYear]

test('the level cost is that of the money flows, added up round by round', () => {
  fc.assert(
    fc.property(reuse, fc.integer({ min: 1, max: 80 }), (r, rounds) => {
      expect(close(value('REUSECOST', r.firstCost, rounds, ...given(r)), levelCost(rounds, r), r.firstCost + 1)).toBe(
        true,
      )
    }),
    { numRuns: 500, seed: 5 },
  )
})

test('the break-even is the first round, tried one by one, whose level cost is within single use', () => {
  let [found, none] = [0, 0]
  fc.assert(
    fc.property(reuse, cents(60), share(1), share(1), (r, singleUse, more, less) => {
      const [singleUseYield, reusableYield] = [1 - more / 2, 1 - less / 2]
      const allowed = singleUse / singleUseYield
      const gap = (rounds: number) => levelCost(rounds, r) / reusableYield - allowed
      const expected = Array.from({ length: 200 }, (_, index) => index + 1).find((rounds) => gap(rounds) <= 0)
      // Where the two lie within rounding of each other, this plain sum in doubles is no judge.
      fc.pre(
        expected === undefined
          ? gap(200) > 1e-6
          : [expected, expected - 1].every((rounds) => rounds < 1 || Math.abs(gap(rounds)) > 1e-9),
      )
      const args = [singleUse, r.firstCost, ...given(r), 200, singleUseYield, reusableYield]
      if (expected === undefined) {
        none++
        expect(refusal('BREAKEVEN', ...args).code).toBe('#N/A')
      } else {
        found++
        expect(value('BREAKEVEN', ...args)).toBe(expected)
      }
    }),
    { numRuns: 1000, seed: 6 },
  )
  expect(Math.min(found, none), 'both cases were met').toBeGreaterThan(100)
})

function close(got: number, expected: number, scale: number): boolean {
  return Math.abs(got - expected) <= 1e-9 * Math.max(1, Math.abs(expected), scale)
}
