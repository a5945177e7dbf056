import { describe, expect, test } from 'vitest'
import { cellOf, column, goldenTests, refusal, table, value } from './golden'

goldenTests([
  {
    expected: 5,
    within: 1e-12,
    is: 'cubic yards of ingredients for four of mix at a shrink of 20 %',
    computed: () => total(4, 0.2),
    source: 'rootmaker-faq',
    seen: 'copy',
  },
  {
    expected: 4.25,
    within: 1e-12,
    is: 'cubic yards of mix from five of ingredients at a shrink of 15 %',
    computed: () => 5 / (total(1, 0.15) / 1),
    source: 'rootmaker-faq',
    seen: 'arithmetic',
  },
  // The gross-up is 18.5 %: losses divide, and adding the shrink would give 31.22.
  {
    expected: 32,
    within: 1e-9,
    is: 'cubic feet of ingredients for 27 of mix at a shrink of 5/32',
    computed: () => value('UNITS', total(value('UNITS', 27, 'ft3', 'L'), 0.15625), 'L', 'ft3'),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0.09375,
    within: 1e-15,
    is: 'cost of a litre of three parts at 0.05, one at 0.10 and one at 0.125, a fifth lost',
    computed: () => value('BLENDCOST', [3, 1, 1], [0.05, 0.1, 0.125], 0.2),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 0.10575,
    within: 1e-15,
    is: 'the same with 12.00 of additions in a cubic metre',
    computed: () => value('BLENDCOST', [3, 1, 1], [0.05, 0.1, 0.125], 0.2, 12),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1.65,
    within: 1e-12,
    is: 'kg in a litre of sand of 1,650 kg/m3',
    computed: () => value('BLENDWEIGHT', [1], [1650]),
    source: 'definition',
    seen: 'arithmetic',
  },
  // 5 lb to the cubic yard are 2.966 kg to the cubic metre, printed as 3.
  {
    expected: 3,
    within: 0.05,
    is: 'kg of lime in a load of a cubic metre of peat and vermiculite, at 5 lb to the cubic yard',
    computed: () => lime(1000, [0.5, 0.5], 1000, 0, ['5 lb/yd3']),
    source: 'acquaah-4-11',
    seen: 'copy',
  },
  {
    expected: 2.966382,
    within: 5e-7,
    is: 'the same to the gram',
    computed: () => lime(1000, [0.5, 0.5], 1000, 0, ['5 lb/yd3']),
    source: 'nist-sp-811',
    seen: 'arithmetic',
  },
  {
    expected: 0.111,
    within: 0.0005,
    is: 'kg of wetting agent in it, at 3 oz to the cubic yard',
    computed: () => cellOf('MIXLOADS', 'additive 2', 'full load', 1000, [1, 1], 1000, 0, ['5 lb/yd3', '3 oz/yd3']),
    source: 'acquaah-4-11',
    seen: 'copy',
  },
  {
    expected: 800,
    within: 0,
    is: 'litres of finished mix from a full mixer of 1,000 L whose filling loses a fifth',
    computed: () => cellOf('MIXLOADS', 'finished mix', 'full load', 5000, [1], 1000, 0.2),
    source: 'definition',
    seen: 'arithmetic',
  },
  // On the summed 5,000 L it would be 15 kg.
  {
    expected: 12,
    within: 1e-12,
    is: 'kg of lime for four cubic metres that five of bark, peat and sand make, at 3 kg to the finished one',
    computed: () => cellOf('MIXLOADS', 'additive 1', 'together', 4000, [3, 1, 1], 1000, 0.2, [3]),
    source: 'rootmaker-faq',
    seen: 'arithmetic',
  },
])

function lime(...args: readonly unknown[]): number {
  return cellOf('MIXLOADS', 'additive 1', 'full load', ...args)
}

describe('the loads of MIXLOADS', () => {
  test('are full ones alone where they come out even, binary dust or not', () => {
    expect(table('MIXLOADS', 0.1 + 0.2, [1], 0.1)[0]).toEqual(['component 1', 'L', 0.1, 3, 0, 0.3])
    // A third has only 15 digits in a cell, so that the loose litres come to 149.999999999999925 or 150.00000000000002.
    expect(table('MIXLOADS', 100, [1], 50, 1 / 3)[0]!.slice(2, 5)).toEqual([50, 3, 0])
    expect(table('MIXLOADS', 100, [1], 50, 0.333333333333334)[0]!.slice(2, 5)).toEqual([50, 3, 0])
    expect(table('MIXLOADS', '3 m3', [1], 1000)[0]).toEqual(['component 1', 'L', 1000, 3, 0, 3000])
  })

  test('are one smaller one where the need is less than a load, and none where nothing is needed', () => {
    expect(table('MIXLOADS', 200, [1], 1000)[0]).toEqual(['component 1', 'L', 1000, 0, 200, 200])
    expect(table('MIXLOADS', 0, [1], 1000)[0]).toEqual(['component 1', 'L', 1000, 0, 0, 0])
  })

  test('list components and additives by name, of which there may be different numbers, and a nameless one by number', () => {
    const items = (...args: readonly unknown[]) => table('MIXLOADS', 100, ...args).map(([item, unit]) => [item, unit])
    expect(items([3, 2], 100, 0, [3, 1, 0.5], ['peat', null], ['lime', null, 'wetting agent'])).toEqual([
      ['peat', 'L'],
      ['component 2', 'L'],
      ['lime', 'kg'],
      ['additive 2', 'kg'],
      ['wetting agent', 'kg'],
      ['finished mix', 'L'],
    ])
    expect(items([3], 100)).toEqual([
      ['component 1', 'L'],
      ['finished mix', 'L'],
    ])
  })

  test('have 0 kg of an additive that has a name and no weight', () => {
    expect(table('MIXLOADS', 100, [1], 100, 0, null, null, ['lime'])[1]).toEqual(['lime', 'kg', 0, 1, 0, 0])
  })

  test('are refused where names and amounts differ in number, each list by itself', () => {
    expect(refusal('MIXLOADS', 100, [1, 2], 100, 0, [3], ['peat', 'perlite', 'sand']).sentence).toBe(
      'partNames has 3 cells and parts has 2 cells. Point both at ranges of the same length.',
    )
    expect(refusal('MIXLOADS', 100, [1, 2], 100, 0, [3], null, ['lime', 'feed']).sentence).toBe(
      'additiveNames has 2 cells and additiveKgM3 has 1 cell. Point both at ranges of the same length.',
    )
  })

  test('are refused for a blend whose parts are all 0, and for a mixer that takes nothing', () => {
    expect(refusal('MIXLOADS', 100, [0, 0], 100).sentence).toContain('parts adds up to 0')
    expect(refusal('MIXLOADS', 100, [1], 0).sentence).toContain('mixerLitres is 0, or a blank cell')
  })
})

function total(finished: number, mixShrink: number): number {
  return column('BLENDPARTS', finished, [3, 1, 1], mixShrink).reduce((sum, part) => sum + part, 0)
}
