/** What a nursery takes for granted of costs and prices, over the whole range of the inputs. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { table, value } from '../golden/golden'

const permille = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 1000)
const cents = (least: number, most: number) => fc.integer({ min: least, max: most * 100 }).map((one) => one / 100)
const runs = { numRuns: 400 }

const close = (got: number, expected: number) =>
  expect(Math.abs(got - expected), `${got} beside ${expected}`).toBeLessThanOrEqual(
    1e-12 * Math.max(1, Math.abs(expected)),
  )

describe('bench and labour', () => {
  test('more weeks, a dearer bench and an emptier one never make a cutting cheaper, and a denser one never dearer', () => {
    fc.assert(
      fc.property(
        cents(1, 52),
        cents(100, 2000),
        cents(1, 20),
        permille(100, 1000),
        permille(0, 900),
        (weeks, density, rate, used, more) => {
          const cost = value('BENCHCOST', weeks, density, rate, used)
          expect(value('BENCHCOST', weeks + more, density, rate, used)).toBeGreaterThanOrEqual(cost)
          expect(value('BENCHCOST', weeks, density, rate + more, used)).toBeGreaterThanOrEqual(cost)
          expect(value('BENCHCOST', weeks, density + more, rate, used)).toBeLessThanOrEqual(cost)
          expect(value('BENCHCOST', weeks, density, rate)).toBeLessThanOrEqual(cost)
        },
      ),
      runs,
    )
  })

  test('all cuttings on a bench together pay for just the bench, its empty part included', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 52 }),
        fc.integer({ min: 1, max: 2000 }),
        cents(1, 20),
        permille(100, 1000),
        (weeks, density, rate, used) => {
          close(value('BENCHCOST', weeks, density, rate, used) * density * used, weeks * rate)
        },
      ),
      runs,
    )
  })

  test('the units of an hour together cost the wage and what comes on top', () => {
    fc.assert(
      fc.property(cents(1, 5000), cents(0, 80), permille(0, 1000), (pace, wage, onCost) => {
        close(value('LABOURCOST', pace, wage, onCost) * pace, wage * (1 + onCost))
      }),
      runs,
    )
  })
})

const stage = fc.tuple(cents(0, 5), permille(50, 1000))
const stages = fc.array(stage, { minLength: 1, maxLength: 6 })
const costsOf = (of: readonly (readonly [number, number])[]) => of.map(([cost]) => cost)
const ratesOf = (of: readonly (readonly [number, number])[]) => of.map(([, rate]) => rate)

describe('a liner by its stages', () => {
  test('one stage costs what PERLINER says', () => {
    fc.assert(
      fc.property(stage, ([cost, rate]) => {
        expect(value('LINERCOST', [cost], [rate])).toBe(value('PERLINER', cost, [rate]))
      }),
      runs,
    )
  })

  test('where all is spent in the first stage, the staged cost is the lumped one of PERLINER', () => {
    fc.assert(
      fc.property(stages, (all) => {
        const [first = 0] = costsOf(all)
        expect(
          value(
            'LINERCOST',
            all.map((_, index) => (index === 0 ? first : 0)),
            ratesOf(all),
          ),
        ).toBe(value('PERLINER', first, ratesOf(all)))
      }),
      runs,
    )
  })

  test('each further stage adds its cost to what the liner cost before and divides by its rate', () => {
    fc.assert(
      fc.property(stages, stage, (all, [cost, rate]) => {
        close(
          value('LINERCOST', [...costsOf(all), cost], [...ratesOf(all), rate]),
          (value('LINERCOST', costsOf(all), ratesOf(all)) + cost) / rate,
        )
      }),
      runs,
    )
  })

  test('a higher loss in any stage never costs less, and the same loss late never less than early', () => {
    fc.assert(
      fc.property(stages, fc.nat(5), permille(500, 1000), (all, place, survives) => {
        const at = place % all.length
        const rates = ratesOf(all)
        const lossAt = (index: number) => rates.map((rate, one) => (one === index ? rate * survives : rate))
        const cost = value('LINERCOST', costsOf(all), rates)
        expect(value('LINERCOST', costsOf(all), lossAt(at))).toBeGreaterThanOrEqual(cost)
        const [early, late] = [
          value('LINERCOST', costsOf(all), lossAt(0)),
          value('LINERCOST', costsOf(all), lossAt(all.length - 1)),
        ]
        expect(late).toBeGreaterThanOrEqual(early - 1e-12 * early)
      }),
      runs,
    )
  })
})

const way = fc.record({
  firstCost: cents(0, 500),
  rounds: fc.integer({ min: 1, max: 60 }),
  cuttings: fc.integer({ min: 1, max: 5000 }),
  saleable: permille(50, 1000),
  wash: cents(0, 20),
  topUp: permille(0, 300),
  loss: permille(0, 300),
  other: cents(0, 2),
  endValue: cents(0, 100).map((amount) => amount - 50),
  interest: permille(0, 200),
  perYear: fc.integer({ min: 1, max: 12 }),
})

describe('a rooting method', () => {
  test('costs the level cost of REUSECOST shared by its cuttings, and all else, over the yield', () => {
    fc.assert(
      fc.property(way, (w) => {
        const level = value(
          'REUSECOST',
          w.firstCost,
          w.rounds,
          w.wash,
          w.topUp,
          w.loss,
          w.endValue,
          w.interest,
          w.perYear,
        )
        const expected = (level / w.cuttings + w.other) / w.saleable
        close(
          value(
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
            w.perYear,
          ),
          expected,
        )
      }),
      runs,
    )
  })

  test('over one round without an end value it costs its first cost, whatever washing, topping up, loss and interest', () => {
    fc.assert(
      fc.property(way, (w) => {
        const cost = value(
          'ROOTINGCOST',
          w.firstCost,
          1,
          w.cuttings,
          w.saleable,
          w.wash,
          w.topUp,
          w.loss,
          w.other,
          0,
          w.interest,
          w.perYear,
        )
        close(cost, (w.firstCost / w.cuttings + w.other) / w.saleable)
      }),
      runs,
    )
  })

  test('a lower yield, a dearer wash and more topping up never cost less', () => {
    fc.assert(
      fc.property(way, permille(100, 1000), (w, part) => {
        const cost = (saleable: number, wash: number, topUp: number) =>
          value(
            'ROOTINGCOST',
            w.firstCost,
            w.rounds,
            w.cuttings,
            saleable,
            wash,
            topUp,
            w.loss,
            w.other,
            0,
            w.interest,
            w.perYear,
          )
        const asGiven = cost(w.saleable, w.wash, w.topUp)
        expect(cost(w.saleable * part, w.wash, w.topUp)).toBeGreaterThanOrEqual(asGiven)
        expect(cost(w.saleable, w.wash + part, w.topUp)).toBeGreaterThanOrEqual(asGiven)
        expect(cost(w.saleable, w.wash, w.topUp + part / 2)).toBeGreaterThanOrEqual(asGiven)
      }),
      runs,
    )
  })

  test('more units lost in each round never cost less where nothing is washed, topped up or given back', () => {
    fc.assert(
      fc.property(way, permille(0, 600), (w, more) => {
        const cost = (loss: number) =>
          value(
            'ROOTINGCOST',
            w.firstCost,
            w.rounds,
            w.cuttings,
            w.saleable,
            0,
            0,
            loss,
            w.other,
            0,
            w.interest,
            w.perYear,
          )
        expect(cost(w.loss + more)).toBeGreaterThanOrEqual(cost(w.loss))
      }),
      runs,
    )
  })
})

describe('the price of a liner', () => {
  test('margin and markup invert: the price less the margin is the cost, and the markup on the cost is the price', () => {
    fc.assert(
      fc.property(cents(1, 50), permille(0, 990), (cost, margin) => {
        const price = value('LINERPRICE', cost, margin)
        close(price * (1 - margin), cost)
        close(cost * (1 + margin / (1 - margin)), price)
      }),
      runs,
    )
  })

  test('with a step it is a whole multiple of the step, never below the exact price, and less than one step above it', () => {
    // Cost in cents, margin in thousandths and step in cents are whole numbers, so that the comparison is exact.
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 990 }),
        fc.integer({ min: 1, max: 100 }),
        (cost, margin, step) => {
          const priced = Math.round(value('LINERPRICE', cost / 100, margin / 1000, step / 100) * 100)
          expect(priced % step).toBe(0)
          expect(priced * (1000 - margin)).toBeGreaterThanOrEqual(cost * 1000)
          expect((priced - step) * (1000 - margin)).toBeLessThan(cost * 1000)
        },
      ),
      { numRuns: 1000 },
    )
  })

  test('a cost that is added up in binary to a whole number of steps gains no step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 99 }), (count, tenths) => {
        let cost = 0
        for (let one = 0; one < count; one++) cost += tenths / 10
        expect(value('LINERPRICE', cost, 0, tenths / 10)).toBe((count * tenths) / 10)
      }),
      runs,
    )
  })
})

interface Offer {
  readonly quantities: number[]
  readonly margins: number[]
  readonly cost: number
  readonly setup: number
  readonly step: number
}

/** Cost, setup and step in whole cents, quantities small enough to try every order one by one. */
const offer: fc.Arbitrary<Offer> = fc
  .uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 6 })
  .chain((quantities) =>
    fc.record({
      quantities: fc.constant(quantities),
      margins: fc.array(
        fc.integer({ min: 0, max: 60 }).map((one) => one / 100),
        { minLength: quantities.length, maxLength: quantities.length },
      ),
      cost: fc.integer({ min: 1, max: 400 }),
      setup: fc.constantFrom(0, 0, 500, 2500),
      step: fc.constantFrom(1, 5, 10),
    }),
  )
const quoted = ({ quantities, margins, cost, setup, step }: Offer) =>
  table('QUOTE', cost / 100, quantities, margins, setup / 100, step / 100)

describe('a quote', () => {
  test('prices each quantity as LINERPRICE does, with its part of the setup, and its total is the quantity times the price', () => {
    fc.assert(
      fc.property(offer, (o) => {
        quoted(o).forEach(([quantity, price, total, kept, markup, floor], index) => {
          expect(quantity).toBe(o.quantities[index])
          close(Number(floor), (o.cost + o.setup / Number(quantity)) / 100)
          close(Number(price), value('LINERPRICE', floor, o.margins[index], o.step / 100))
          expect(Math.round(Number(price) * 100) % o.step).toBe(0)
          expect(Math.round(Number(total) * 100)).toBe(Math.round(Number(price) * 100) * Number(quantity))
          expect(Number(price)).toBeGreaterThanOrEqual(Number(floor) - 1e-9)
          expect(Number(kept)).toBeGreaterThanOrEqual(o.margins[index]! - 1e-9)
          close(Number(price) * (1 - Number(kept)), Number(floor))
          close((1 + Number(markup)) * (1 - Number(kept)), 1)
        })
      }),
      { numRuns: 300 },
    )
  })

  test('warns of just the orders that, tried one by one, cost more than a larger quantity', () => {
    let warned = 0
    fc.assert(
      fc.property(offer, (o) => {
        const rows = quoted(o)
        const inCents = rows.map(([quantity, price]) => ({
          quantity: Number(quantity),
          price: Math.round(Number(price) * 100),
        }))
        rows.forEach((row, index) => {
          const { quantity, price } = inCents[index]!
          const larger = inCents.filter((other) => other.quantity > quantity)
          const next = Math.min(...larger.map((other) => other.quantity))
          const dear: number[] = []
          if (larger.length > 0)
            for (let order = quantity; order < next; order++)
              if (larger.some((other) => order * price > other.quantity * other.price)) dear.push(order)
          const text = String(row.at(-1))
            .split('; ')
            .find((part) => part.includes('more than'))
          if (dear.length === 0) {
            expect(text).toBeUndefined()
            return
          }
          warned++
          const [, first, last = first, than] = /^(\d+)(?: to (\d+))? costs? more than (\d+)$/.exec(text!)!
          expect([Number(first), Number(last)]).toEqual([dear[0], dear.at(-1)])
          expect(dear).toHaveLength(Number(last) - Number(first) + 1)
          const broken = inCents.find((other) => other.quantity === Number(than))!
          expect(Number(first) * price).toBeGreaterThan(broken.quantity * broken.price)
        })
      }),
      { numRuns: 600, seed: 31 },
    )
    expect(warned, 'zones that were met').toBeGreaterThan(100)
  })

  test('a quantity is called dearer each just where some smaller one is cheaper each', () => {
    fc.assert(
      fc.property(offer, (o) => {
        const rows = quoted(o)
        for (const [quantity, price, , , , , warning] of rows) {
          const cheaper = rows
            .filter(
              ([other, otherPrice]) => Number(other) < Number(quantity) && Number(otherPrice) < Number(price) - 1e-9,
            )
            .map(([other]) => Number(other))
          const said = /dearer each than (\d+)/.exec(String(warning))?.[1]
          expect(said).toBe(cheaper.length === 0 ? undefined : String(Math.max(...cheaper)))
        }
      }),
      { numRuns: 300 },
    )
  })
})
