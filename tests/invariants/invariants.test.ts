/** What a grower takes for granted, over the whole range of the inputs. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { column, definition, value } from '../golden/golden'

const permille = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one / 1000)
const cents = (most: number) => fc.integer({ min: 1, max: most * 100 }).map((one) => one / 100)
const litres = fc.integer({ min: 0, max: 5_000_000 }).map((one) => one / 100)

describe('buying', () => {
  test('the bags cover the need, and one order unit less would not', () => {
    fc.assert(
      fc.property(
        litres,
        cents(300),
        permille(500, 3000),
        litres,
        fc.integer({ min: 1, max: 12 }),
        (need, bag, expansion, stock, multiple) => {
          const bags = value('BAGS', need, bag, expansion, stock, multiple)
          // In hundredths of a litre and thousandths of expansion everything is a whole number, so this check is exact.
          const covered = (count: number) =>
            Math.round(stock * 100) * 1000 + count * Math.round(bag * 100) * Math.round(expansion * 1000) >=
            Math.round(need * 100) * 1000
          expect(bags % multiple).toBe(0)
          expect(covered(bags)).toBe(true)
          if (bags > 0) expect(covered(bags - multiple)).toBe(false)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('more need never takes fewer bags, and more stock never more', () => {
    fc.assert(
      fc.property(litres, litres, litres, cents(300), (need, more, stock, bag) => {
        expect(value('BAGS', need + more, bag, 1, stock)).toBeGreaterThanOrEqual(value('BAGS', need, bag, 1, stock))
        expect(value('BAGS', need, bag, 1, stock + more)).toBeLessThanOrEqual(value('BAGS', need, bag, 1, stock))
      }),
      { numRuns: 400 },
    )
  })

  test('a need of exactly so many bags, added up in binary, takes so many bags', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 999 }), (count, tenths) => {
        let need = 0
        for (let bag = 0; bag < count; bag++) need += tenths / 10
        expect(value('BAGS', need, tenths / 10)).toBe(count)
      }),
      { numRuns: 400 },
    )
  })

  test('a stock of exactly the need, or of all but one bag, is not short by the dust of a sum in binary', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 10, max: 999 }), (count, tenths) => {
        let need = 0
        for (let bag = 0; bag < count; bag++) need += tenths / 10
        expect(value('BAGS', need, tenths / 10, 1, (count * tenths) / 10)).toBe(0)
        expect(value('BAGS', need, tenths / 10, 1, ((count - 1) * tenths) / 10)).toBe(1)
      }),
      { numRuns: 400 },
    )
  })

  test('waste, delivery and a smaller expansion never make a litre cheaper', () => {
    fc.assert(
      fc.property(
        cents(100),
        cents(300),
        permille(1000, 3000),
        cents(10),
        permille(0, 900),
        (price, volume, expansion, delivery, waste) => {
          const plain = value('PACKPRICE', price, volume, expansion)
          expect(value('PACKPRICE', price, volume, expansion, delivery, waste)).toBeGreaterThan(plain)
          expect(value('PACKPRICE', price, volume)).toBeGreaterThanOrEqual(plain)
        },
      ),
      { numRuns: 400 },
    )
  })
})

describe('counting', () => {
  test('more liners, a lower rate or a higher confidence never take fewer cuttings', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 500 }),
        permille(100, 990),
        permille(500, 990),
        (liners, more, rate, confidence) => {
          const stuck = value('CUTTINGS', liners, [rate], confidence)
          expect(value('CUTTINGS', liners + more, [rate], confidence)).toBeGreaterThanOrEqual(stuck)
          expect(value('CUTTINGS', liners, [rate, 0.9], confidence)).toBeGreaterThanOrEqual(stuck)
          expect(value('CUTTINGS', liners, [rate], Math.min(0.999, confidence + 0.005))).toBeGreaterThanOrEqual(stuck)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('the order of the stages does not matter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        permille(100, 1000),
        permille(100, 1000),
        permille(100, 1000),
        (liners, a, b, c) => {
          expect(value('CUTTINGS', liners, [a, b, c])).toBe(value('CUTTINGS', liners, [c, a, b]))
        },
      ),
      { numRuns: 400 },
    )
  })

  test('the trays hold the cuttings, and one tray less would not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), fc.integer({ min: 1, max: 512 }), (cuttings, cells) => {
        const trays = value('TRAYS', cuttings, cells)
        expect(trays * cells).toBeGreaterThanOrEqual(cuttings)
        expect((trays - 1) * cells).toBeLessThan(cuttings)
        expect(value('BLOCKS', cuttings, cells)).toBe(trays)
      }),
      { numRuns: 400 },
    )
  })
})

describe('volumes and blends', () => {
  test('the filled vessels hold what was filled in, less what settled and was spilt', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        cents(500),
        permille(0, 900),
        permille(0, 900),
        (vessels, volume, settle, spill) => {
          const kept = value('FILL', vessels, volume, settle, spill) * (1 - settle) * (1 - spill)
          expect(kept).toBeCloseTo((vessels * volume) / 1000, 6)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('the parts of a blend add up to the finished mix and what vanishes, each in proportion', () => {
    fc.assert(
      fc.property(
        cents(10_000),
        fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 }),
        permille(0, 500),
        (finished, parts, shrink) => {
          const each = column('BLENDPARTS', finished, parts, shrink)
          expect(each.reduce((sum, one) => sum + one, 0) * (1 - shrink)).toBeCloseTo(finished, 6)
          each.forEach((one, index) => expect(one * parts[0]!).toBeCloseTo(each[0]! * parts[index]!, 4))
        },
      ),
      { numRuns: 400 },
    )
  })

  test('a blend without shrink costs no less than its cheapest part and no more than its dearest', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), cents(3)), { minLength: 1, maxLength: 6 }),
        permille(1, 500),
        (rows, shrink) => {
          const prices = rows.map(([, price]) => price)
          const cost = value(
            'BLENDCOST',
            rows.map(([part]) => part),
            prices,
          )
          expect(cost).toBeGreaterThanOrEqual(Math.min(...prices) - 1e-12)
          expect(cost).toBeLessThanOrEqual(Math.max(...prices) + 1e-12)
          expect(
            value(
              'BLENDCOST',
              rows.map(([part]) => part),
              prices,
              shrink,
            ),
          ).toBeGreaterThan(cost)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('a quantity converted there and back is the same', () => {
    const volumes = fc.constantFrom(
      'mL',
      'L',
      'm3',
      'in3',
      'ft3',
      'yd3',
      'US dry qt',
      'US bushel',
      'imp bushel',
      'US gal',
      'imp gal',
    )
    fc.assert(
      fc.property(cents(1000), volumes, volumes, (amount, from, to) => {
        expect(value('UNITS', value('UNITS', amount, from, to), to, from)).toBeCloseTo(amount, 9)
      }),
      { numRuns: 400 },
    )
  })

  test('a blank row of both ranges changes nothing, and one that is blank in one range only is refused with its number', () => {
    const parts = [[3], [null], [1]]
    expect(call(definition('BLENDCOST'), [parts, [[0.05], [''], [0.1]]])).toEqual(
      call(definition('BLENDCOST'), [
        [[3], [1]],
        [[0.05], [0.1]],
      ]),
    )
    expect(call(definition('BLENDCOST'), [parts, [[0.05], [0.2], [0.1]]])).toMatchObject({
      sentence: expect.stringMatching(/^parts, row 2, is blank, while other ranges have a value there\./) as unknown,
    })
  })

  test('a spilled column keeps its blank places as 0', () => {
    expect(column('BLENDPARTS', 100, [3, null, 1])).toEqual([75, 0, 25])
  })
})

describe('reuse and cost', () => {
  test('the level cost of one round without an end value is the first cost', () => {
    fc.assert(
      fc.property(
        cents(500),
        cents(5),
        permille(0, 300),
        permille(0, 300),
        permille(0, 200),
        (first, wash, topUp, loss, interest) => {
          expect(value('REUSECOST', first, 1, wash, topUp, loss, 0, interest)).toBe(first)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('more washing, topping up or loss never costs less', () => {
    fc.assert(
      fc.property(
        cents(500),
        fc.integer({ min: 1, max: 40 }),
        cents(5),
        permille(0, 300),
        permille(0, 300),
        permille(1, 200),
        (first, rounds, wash, topUp, loss, more) => {
          // A loss is dearer only where a new unit costs more than its upkeep.
          fc.pre(first > wash + topUp * first)
          const cost = value('REUSECOST', first, rounds, wash, topUp, loss)
          expect(value('REUSECOST', first, rounds, wash + more, topUp, loss)).toBeGreaterThanOrEqual(cost)
          expect(value('REUSECOST', first, rounds, wash, topUp + more, loss)).toBeGreaterThanOrEqual(cost)
          expect(value('REUSECOST', first, rounds, wash, topUp, loss + more)).toBeGreaterThanOrEqual(cost - 1e-12)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('the medium cost over several rounds is the level cost of its first cost', () => {
    fc.assert(
      fc.property(
        cents(300),
        cents(2),
        fc.integer({ min: 1, max: 40 }),
        cents(1),
        permille(0, 300),
        permille(0, 300),
        (volume, price, rounds, wash, topUp, loss) => {
          const first = value('MEDIUMCOST', volume, price)
          expect(value('MEDIUMCOST', volume, price, 0, 0, rounds, wash, topUp, loss)).toBeCloseTo(
            value('REUSECOST', first, rounds, wash, topUp, loss),
            12,
          )
        },
      ),
      { numRuns: 400 },
    )
  })

  test('from the break-even on reuse is no dearer, and one round earlier it is', () => {
    fc.assert(
      fc.property(cents(5), cents(50), cents(1), permille(0, 300), (single, first, wash, loss) => {
        const outcome = call(definition('BREAKEVEN'), [single, first, wash, 0, loss])
        fc.pre(outcome.kind === 'value')
        const rounds = outcome.kind === 'value' ? (outcome.value as number) : 0
        expect(value('REUSECOST', first, rounds, wash, 0, loss)).toBeLessThanOrEqual(single + 1e-12)
        if (rounds > 1) expect(value('REUSECOST', first, rounds - 1, wash, 0, loss)).toBeGreaterThan(single)
      }),
      { numRuns: 400 },
    )
  })

  test('stage by stage or at once, the losses divide to the same cost', () => {
    fc.assert(
      fc.property(cents(10), permille(100, 1000), permille(100, 1000), (cost, strike, potting) => {
        expect(value('PERLINER', value('PERLINER', cost, [strike]), [potting])).toBeCloseTo(
          value('PERLINER', cost, [strike, potting]),
          9,
        )
      }),
      { numRuns: 400 },
    )
  })
})
