/** STICKDAY, STANDING and PEAK against the calendar and published benches, and what they refuse. */
import { describe, expect, test } from 'vitest'
import { cellOf, goldenTests, refusal, step, table, value, type GoldenRow } from './golden'

/** Of a day in the calendar that everybody has, without Excel's count. */
const day = (text: string) => Math.round(Date.parse(`${text}T00:00:00Z`) / 86_400_000) + 25_569
const firstMonday = (startDay: string) => Number(table('STANDING', [startDay], [1], [1])[0]![0])

const rows: readonly GoldenRow[] = [
  {
    expected: day('2019-12-30'),
    within: 0,
    is: 'the Monday of the week of 1 January 2020',
    computed: () => firstMonday('2020-01-01'),
    source: 'iso-8601',
    seen: 'arithmetic',
  },
  {
    expected: day('2019-12-30'),
    within: 0,
    is: 'the Monday of the week of that Monday itself',
    computed: () => firstMonday('2019-12-30'),
    source: 'iso-8601',
    seen: 'copy',
  },
  {
    expected: day('2006-12-25'),
    within: 0,
    is: 'the Monday of the week of Sunday 31 December 2006',
    computed: () => firstMonday('2006-12-31'),
    source: 'iso-8601',
    seen: 'copy',
  },
  // 2026 begins on a Thursday, so it has a week 53, and 1 January 2027 lies in it.
  {
    expected: day('2026-12-28'),
    within: 0,
    is: 'the Monday of week 53 of 2026, from 1 January 2027',
    computed: () => firstMonday('2027-01-01'),
    source: 'iso-8601',
    seen: 'arithmetic',
  },
  // The first day that is taken, 1 March 1900, was a Thursday.
  {
    expected: 58,
    within: 0,
    is: 'the Monday before 1 March 1900',
    computed: () => Number(table('STANDING', [61], [1], [1])[0]![0]),
    source: 'iso-8601',
    seen: 'arithmetic',
  },
  {
    expected: day('2026-12-07'),
    within: 0,
    is: 'the day to stick on for a delivery on 1 March 2027 that takes 12 weeks, over the end of the year',
    computed: () => value('STICKDAY', '2027-03-01', [4, 8]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: day('2028-02-22'),
    within: 0,
    is: 'the day to stick on a week before 29 February 2028',
    computed: () => value('STICKDAY', '2028-02-29', [1]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: day('2027-03-01'),
    within: 0,
    is: 'the day to stick on where nothing takes any time, whatever the time of day',
    computed: () => value('STICKDAY', day('2027-03-01') + 0.75, [0]),
    source: 'definition',
    seen: 'arithmetic',
  },
  // 7 x (1/3 + 1/3 + 1/3) days are 7, and 6 x 1/6 too, though cells show their sums as 0.999999999999999 and 1.000000000000002.
  {
    expected: day('2027-02-22'),
    within: 0,
    is: 'the day to stick on where three thirds of a week are one week',
    computed: () => value('STICKDAY', '2027-03-01', [1 / 3, 1 / 3, 1 / 3]),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: day('2027-02-22'),
    within: 0,
    is: 'the day to stick on where six sixths of a week are one week',
    computed: () => value('STICKDAY', '2027-03-01', Array(6).fill(1 / 6)),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: 1140,
    within: 0,
    is: 'square feet of bench that two kinds of bench give together',
    computed: () => value('PEAK', ['2027-01-04', '2027-01-08'], [4, 4], [240, 900]),
    source: 'uark-benches',
    seen: 'copy',
  },
  {
    expected: 50,
    within: 0,
    is: 'per cent of a house of 2,280 square feet that stand under plants in that week',
    computed: () =>
      (cellOf('STANDING', day('2027-01-04'), 'standing', ['2027-01-04', '2027-01-08'], [4, 4], [240, 900]) / 2280) *
      100,
    source: 'uark-benches',
    seen: 'copy',
  },
  {
    expected: 0,
    within: 0,
    is: 'the peak of what is held for no week, though it would have to be washed',
    computed: () => value('PEAK', ['2027-01-04'], [0], [240], 2),
    source: 'definition',
    seen: 'arithmetic',
  },
  {
    expected: day('2027-01-11'),
    within: 0,
    is: 'the Monday of the peak in the working',
    computed: () => step('monday', 'PEAK', ['2027-01-04', '2027-01-13'], [2, 1], [3, 4]),
    source: 'definition',
    seen: 'arithmetic',
  },
]

goldenTests(rows)

describe('the table of STANDING', () => {
  const standing = (...args: readonly unknown[]) => table('STANDING', ...args).map(([, amount]) => amount)

  test('takes a part of a week for a week, and adds the turn-round before it rounds', () => {
    expect(standing(['2027-01-07'], [2.2], [5])).toEqual([5, 5, 5])
    expect(standing(['2027-01-07'], [2.2], [5], 0.8)).toEqual([5, 5, 5])
    expect(standing(['2027-01-07'], [2.2], [5], 0.9)).toEqual([5, 5, 5, 5])
  })

  test('has the weeks in between in which nothing stands', () => {
    expect(standing(['2027-01-04', '2027-01-25'], [1, 1], [5, 6])).toEqual([5, 0, 0, 6])
  })

  test('is cut to the weeks asked for, and what began before them counts', () => {
    const starts = [
      ['2026-11-02', '2027-01-11'],
      [11, 1],
      [7, 2],
    ]
    expect(table('STANDING', ...starts, 0, '2027-01-08', 3)).toEqual([
      [day('2027-01-04'), 7],
      [day('2027-01-11'), 9],
      [day('2027-01-18'), 0],
    ])
    expect(table('STANDING', ...starts, 0, '2027-01-08')).toEqual([
      [day('2027-01-04'), 7],
      [day('2027-01-11'), 9],
    ])
    expect(table('STANDING', ...starts, 0, null, 1)).toEqual([[day('2026-11-02'), 7]])
  })

  test('has one week with 0 where nothing stands, or nothing any more', () => {
    expect(table('STANDING', ['2027-01-13', '2027-01-06'], [0, 3], [5, 0])).toEqual([[day('2027-01-04'), 0]])
    expect(table('STANDING', ['2027-01-13'], [1], [5], 0, '2027-03-03')).toEqual([[day('2027-03-01'), 0]])
  })

  test('skips the starts that are not planned yet, whose rows are blank', () => {
    expect(standing(['2027-01-04', null, '2027-01-04'], [1, null, 1], [5, null, 6])).toEqual([11])
  })

  test('takes a start at the last minute of a Sunday for the week of that Sunday', () => {
    expect(table('STANDING', [day('2027-01-10') + 0.9993], [1], [5])).toEqual([[day('2027-01-04'), 5]])
  })
})

describe('what is refused', () => {
  test('the number of a week that was typed for a day', () => {
    expect(refusal('STANDING', [14], [6], [40]).sentence).toBe(
      'startDays, row 1, must be 61 or more; it is 14. Type a date, such as 2026-03-02.',
    )
    expect(refusal('STICKDAY', 14, [6]).sentence).toContain('deliveryDay must be 61 or more; it is 14.')
  })

  test('a date that came as a text which may be read in two ways, and one that no calendar has', () => {
    expect(refusal('STICKDAY', '02.03.2027', [6]).sentence).toBe(
      'deliveryDay takes a date; it is the text "02.03.2027". Type a date, such as 2026-03-02.',
    )
    expect(refusal('STICKDAY', '2027-02-29', [6]).sentence).toContain('it is the text "2027-02-29"')
  })

  test('a day that was typed for a number of weeks', () => {
    expect(refusal('PEAK', ['2027-01-04'], [46_400], [40]).sentence).toContain('weeksHeld, row 1, must be at most 1040')
  })

  test('stages that take so long that the days do not reach back to the sticking', () => {
    expect(refusal('STICKDAY', 100, [5, 1]).sentence).toBe(
      'stageWeeks comes to 42 days, and so long before deliveryDay lies no day that is counted here. Check both.',
    )
    expect(value('STICKDAY', 103, [5, 1])).toBe(61)
  })

  test('a table of more than 2,000 weeks, as a year typed wrongly gives it', () => {
    expect(refusal('STANDING', ['2027-01-04', '2072-01-04'], [4, 4], [40, 25]).sentence).toBe(
      'The table would have 2352 weeks; it takes at most 2000. Check the years in startDays, or give firstDay and weeks.',
    )
    expect(table('STANDING', ['2027-01-04', '2072-01-04'], [4, 4], [40, 25], 0, '2072-01-04', 5)).toHaveLength(5)
  })
})
