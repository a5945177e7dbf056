import { expect, test } from 'vitest'
import { goldenTests, refusal, step, value } from './golden'

/** A year's interest that gives `rate` for each of twelve rounds. */
const yearly = (rate: number) => (1 + rate) ** 12 - 1

goldenTests(
  [
    // Direct cost of 4,847 and overhead of 1,763 for 10,000 started, of which 11,400 / 1.20 are sold. Multiplying leaves 4,806.50.
    {
      expected: 4790,
      within: 0.5,
      is: 'what is left of 11,400 for 9,500 geraniums at 0.661 a started plant, 5 % of them unsold',
      computed: () => 11_400 - 9500 * value('PERLINER', 0.661, [0.95]),
      source: 'rutgers-geranium',
      seen: 'copy',
    },
    // Ours is paid at the start of a round, so the end-of-round payments are one period's interest more.
    {
      expected: 112.8254100208,
      within: 5e-11,
      is: 'PMT(5%;12;1000), paid at the end',
      computed: () => value('REUSECOST', 1000, 12, 0, 0, 0, 0, 0.05) * 1.05,
      source: 'openformula',
      seen: 'copy',
    },
    {
      expected: 113.4361438313,
      within: 5e-11,
      is: 'PMT(5%;12;1000;100;1)',
      computed: () => value('REUSECOST', 1000, 12, 0, 0, 0, -100, 0.05),
      source: 'openformula',
      seen: 'copy',
    },
    {
      expected: 100,
      within: 0,
      is: 'PMT(0;10;1000)',
      computed: () => value('REUSECOST', 1000, 10),
      source: 'openformula',
      seen: 'copy',
    },
    {
      expected: 875,
      within: 0,
      is: 'SLN(4000;500;4), the plain average',
      computed: () => value('REUSECOST', 4000, 4, 0, 0, 0, 500),
      source: 'openformula',
      seen: 'copy',
    },
    // Paid at the end of each year: the price less what its end value is worth today, spread over the sum of 1.1^-1 to 1.1^-5.
    {
      expected: ((50_000 - 5000 / 1.1 ** 5) * 0.1) / (1 - 1 / 1.1 ** 5),
      within: 1e-9,
      is: 'capital recovery of 50,000 with a salvage of 5,000 over 5 years at 10 %, by the annuity formula',
      computed: () => value('REUSECOST', 50000, 5, 0, 0, 0, 5000, 0.1) * 1.1,
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 1854.0247200054619,
      within: 1e-9,
      is: 'pmt(0.075/12, 180, 200000)',
      computed: () => value('REUSECOST', 200000, 180, 0, 0, 0, 0, yearly(0.075 / 12), 12) * (1 + 0.075 / 12),
      source: 'numpy-financial',
      seen: 'copy',
    },
    {
      expected: 1 + 0.0525 / 4,
      within: 5e-7,
      is: 'growth a quarter at an effective 5.3543 % a year (EFFECT(5.25%;4))',
      computed: () => step('growth', 'REUSECOST', 1, 4, 0, 0, 0, 0, 0.053543, 4),
      source: 'openformula',
      seen: 'arithmetic',
    },
    {
      expected: 8.0253,
      within: 5e-5,
      is: 'fillings per container of at most 10 uses, 5 % lost each: the sum of 0.95^0 to 0.95^9',
      computed: () => 1 / value('REUSECOST', 1, 10, 0, 0, 0.05),
      source: 'bojkow-trippage',
      seen: 'arithmetic',
    },
    {
      expected: 200,
      within: 0,
      is: 'level cost of 1,000 over 9 rounds, washing 50, 5 % topped up',
      computed: () => value('REUSECOST', 1000, 9, 50, 0.05),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 9,
      within: 0,
      is: 'the round from which that beats single use at 200, an exact tie',
      computed: () => value('BREAKEVEN', 200, 1000, 50, 0.05),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 7,
      within: 0,
      is: 'the round from which 2.40 and washing 0.12 beat 0.45',
      computed: () => value('BREAKEVEN', 0.45, 2.4, 0.12),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 23,
      within: 0,
      is: 'the same with 14 % lost each round',
      computed: () => value('BREAKEVEN', 0.45, 2.4, 0.12, 0, 0.14),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 5,
      within: 0,
      is: 'bags of 60 L for 0.1 m3 + 0.2 m3 as a cell adds them',
      computed: () => value('BAGS', (0.1 + 0.2) * 1000, 60),
      source: 'definition',
      seen: 'arithmetic',
    },
    {
      expected: 5,
      within: 0,
      is: 'bags of 0.06 m3 for 0.1 m3 + 0.2 m3 as text',
      computed: () => value('BAGS', `${0.1 + 0.2} m3`, '0.06 m3'),
      source: 'definition',
      seen: 'arithmetic',
    },
  ],
  [
    {
      printed: 0.55,
      expected: 0.5556,
      within: 5e-5,
      is: 'an overhead of 0.50 a square foot and week, for what is sold of it where 10 % is not',
      computed: () => value('PERLINER', 0.5, [0.9]),
      source: 'growertalks-shrinkage',
      seen: 'copy',
    },
  ],
)

test('with 20 % lost each round reuse never catches up, and the sentence says what it keeps costing', () => {
  const { code, sentence } = refusal('BREAKEVEN', 0.45, 2.4, 0.12, 0, 0.2)
  expect(code).toBe('#N/A')
  // 0.12 of washing and the loss of a fifth of what 2.40 buys beyond it: 0.12 + 0.2 x (2.40 - 0.12) = 0.576.
  expect(sentence).toContain('at 0.576 a round or more, and single use costs 0.45')
})

test('reuse that pays, but later than it can last, says the last round and both costs', () => {
  const { code, sentence } = refusal('BREAKEVEN', 0.45, 2.4, 0.12, 0, 0, 0, 0, 1, 6)
  expect(code).toBe('#N/A')
  // (2.40 + 5 x 0.12) / 6 = 0.50
  expect(sentence).toContain('within 6 rounds: by then it costs 0.5 a round, and single use 0.45')
})

test('where the yields differ, the sentence says that single use is counted for as many liners', () => {
  // 0.10 at a yield of 0.5 is 0.20 for what the reusable brings at a yield of 1.
  expect(refusal('BREAKEVEN', 0.1, 2.4, 0.12, 0, 0.14, 0, 0, 1, 200, 0.5, 1).sentence).toContain(
    'and single use costs 0.2 for as many liners.',
  )
  expect(refusal('BREAKEVEN', 0.1, 2.4, 0.12, 0, 0, 0, 0, 1, 6, 0.5, 1).sentence).toContain(
    'and single use 0.2 for as many liners.',
  )
})
