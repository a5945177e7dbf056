/** Rooting, pricing and quoting against a financial library, and against plants and orders that are followed one by one. */
import { npv } from 'financial'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { table, value } from '../golden/golden'

const cents = (least: number, most: number) => fc.integer({ min: least, max: most * 100 }).map((amount) => amount / 100)
const permille = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 1000)

const way = fc.record({
  firstCost: cents(0, 500),
  rounds: fc.integer({ min: 1, max: 40 }),
  cuttings: fc.integer({ min: 1, max: 5000 }),
  saleable: permille(50, 1000),
  wash: cents(0, 20),
  topUp: permille(0, 300),
  loss: permille(0, 300),
  other: cents(0, 2),
  endValue: cents(0, 100).map((amount) => amount - 50),
  interest: permille(0, 200),
})

test("liners sold at their cost pay back just what the rooting method costs, in the library's present value of all its money", () => {
  fc.assert(
    fc.property(way, (w) => {
      const cost = value(
        'ROOTINGCOST',
        w.firstCost,
        w.rounds,
        w.cuttings,
        w.saleable,
        w.wash,
        w.topUp,
        w.loss,
        w.other,
        w.endValue,
        w.interest,
        1,
      )
      const flows = Array.from({ length: w.rounds + 1 }, (_, round) => {
        const inUse = (1 - w.loss) ** round
        if (round === w.rounds) return w.endValue * inUse
        const stuck = w.cuttings * inUse
        const paid = round === 0 ? w.firstCost : (w.wash + w.topUp * w.firstCost) * inUse
        return stuck * w.saleable * cost - stuck * w.other - paid
      })
      const turnover = w.rounds * w.cuttings * w.saleable * Math.abs(cost) + w.firstCost + 100
      expect(Math.abs(npv(w.interest, flows))).toBeLessThanOrEqual(1e-10 * turnover)
    }),
    { numRuns: 500, seed: 11 },
  )
})

test('liners followed stage by stage cost in all what LINERCOST says of one', () => {
  const stages = fc.array(fc.tuple(cents(0, 5), permille(50, 1000)), { minLength: 1, maxLength: 8 })
  fc.assert(
    fc.property(stages, (all) => {
      let [living, spent] = [1_000_000, 0]
      for (const [cost, rate] of all) {
        spent += living * cost
        living *= rate
      }
      const expected = spent / living
      expect(
        Math.abs(
          value(
            'LINERCOST',
            all.map(([cost]) => cost),
            all.map(([, rate]) => rate),
          ) - expected,
        ),
      ).toBeLessThanOrEqual(1e-11 * Math.max(1, expected))
    }),
    { numRuns: 500, seed: 12 },
  )
})

test('the margin kept and the floor price of a quote give back the profit of each order as it is billed', () => {
  fc.assert(
    fc.property(
      cents(1, 5),
      permille(0, 700),
      cents(0, 50),
      fc.uniqueArray(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 5 }),
      (cost, margin, setup, quantities) => {
        for (const [quantity, , total, kept, markup, floor] of table(
          'QUOTE',
          cost,
          quantities,
          quantities.map(() => margin),
          setup,
          0.01,
        )) {
          const spent = cost * Number(quantity) + setup
          const profit = Number(total) - spent
          expect(Math.abs(Number(kept) * Number(total) - profit)).toBeLessThanOrEqual(1e-10 * Number(total))
          expect(Math.abs(Number(markup) * spent - profit)).toBeLessThanOrEqual(1e-10 * Number(total))
          expect(Math.abs(Number(floor) * Number(quantity) - spent)).toBeLessThanOrEqual(1e-10 * spent)
        }
      },
    ),
    { numRuns: 300, seed: 13 },
  )
})
