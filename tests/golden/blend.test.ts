import { column, goldenTests, value } from './golden'

goldenTests([
  {
    expected: 5,
    within: 1e-12,
    is: 'cubic yards of ingredients for four of mix at a shrink of 20 %',
    computed: () => total(4, 0.2),
    source: 'rootmaker-faq',
    standing: 'printed',
  },
  {
    expected: 4.25,
    within: 1e-12,
    is: 'cubic yards of mix from five of ingredients at a shrink of 15 %',
    computed: () => 5 / (total(1, 0.15) / 1),
    source: 'rootmaker-faq',
    standing: 'derived',
  },
  // The gross-up is 18.5 %: losses divide, and adding the shrink would give 31.22.
  {
    expected: 32,
    within: 1e-9,
    is: 'cubic feet of ingredients for 27 of mix at a shrink of 5/32',
    computed: () => value('UNITS', total(value('UNITS', 27, 'ft3', 'L'), 0.15625), 'L', 'ft3'),
    source: 'definition',
    standing: 'derived',
  },
  {
    expected: 0.09375,
    within: 1e-15,
    is: 'cost of a litre of three parts at 0.05, one at 0.10 and one at 0.125, a fifth lost',
    computed: () => value('BLENDCOST', [3, 1, 1], [0.05, 0.1, 0.125], 0.2),
    source: 'definition',
    standing: 'derived',
  },
  {
    expected: 0.10575,
    within: 1e-15,
    is: 'the same with 12.00 of additions in a cubic metre',
    computed: () => value('BLENDCOST', [3, 1, 1], [0.05, 0.1, 0.125], 0.2, 12),
    source: 'definition',
    standing: 'derived',
  },
  {
    expected: 1.65,
    within: 1e-12,
    is: 'kg in a litre of sand of 1,650 kg/m3',
    computed: () => value('BLENDWEIGHT', [1], [1650]),
    source: 'definition',
    standing: 'derived',
  },
])

function total(finished: number, mixShrink: number): number {
  return column('BLENDPARTS', finished, [3, 1, 1], mixShrink).reduce((sum, part) => sum + part, 0)
}
