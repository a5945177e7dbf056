/** STANDING and PEAK against a calendar in which every container is moved week by week, and the days against Date. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { table, value } from '../golden/golden'

const millisecondsOfDay = 86_400_000

/** The number that Excel has for a day, by the one that it is known to have for 1 January 2000. */
const serialOf = (date: Date) => 36_526 + Math.round((date.getTime() - Date.UTC(2000, 0, 1)) / millisecondsOfDay)

function mondayOf(date: Date): Date {
  const monday = new Date(date)
  while (monday.getUTCDay() !== 1) monday.setUTCDate(monday.getUTCDate() - 1)
  return monday
}

function weekAfter(monday: Date): Date {
  const next = new Date(monday)
  next.setUTCDate(next.getUTCDate() + 7)
  return next
}

const start = fc.record({
  date: fc
    .tuple(fc.integer({ min: 1900, max: 2100 }), fc.integer({ min: 2, max: 380 }))
    .map(([year, day]) => new Date(Date.UTC(year, 1, day))),
  tenths: fc.integer({ min: 0, max: 120 }),
  amount: fc.integer({ min: 0, max: 300 }),
})

test('STANDING and PEAK are those of containers that are moved week by week', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1901, max: 2100 }),
      fc.array(start, { minLength: 1, maxLength: 8 }),
      fc.integer({ min: 0, max: 30 }),
      (year, all, turnround) => {
        const starts = all.map((one) => {
          const date = new Date(one.date)
          date.setUTCFullYear(year)
          return { ...one, date }
        })
        const standing = new Map<number, number>()
        for (const { date, tenths, amount } of starts) {
          if (tenths === 0 || amount === 0) continue
          let monday = mondayOf(date)
          for (let used = 0; used < tenths + turnround; used += 10, monday = weekAfter(monday))
            standing.set(serialOf(monday), (standing.get(serialOf(monday)) ?? 0) + amount)
        }
        const mondays = [...standing.keys()].sort((a, b) => a - b)
        const first = mondays[0] ?? Math.min(...starts.map(({ date }) => serialOf(mondayOf(date))))
        const expected: (readonly [number, number])[] = []
        for (let monday = first; monday <= (mondays.at(-1) ?? first); monday += 7)
          expected.push([monday, standing.get(monday) ?? 0])
        const ranges = [
          starts.map(({ date }) => serialOf(date)),
          starts.map(({ tenths }) => tenths / 10),
          starts.map(({ amount }) => amount),
        ]
        expect(table('STANDING', ...ranges, turnround / 10)).toEqual(expected)
        expect(value('PEAK', ...ranges, turnround / 10)).toBe(Math.max(0, ...standing.values()))
      },
    ),
    { numRuns: 500 },
  )
})

test('a day typed as 2027-03-01 is the day of the calendar, and STICKDAY counts back from it as Date does', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1950-01-01'), max: new Date('9999-12-31'), noInvalidDate: true }),
      fc.integer({ min: 0, max: 2000 }),
      (moment, weeks) => {
        const typed = moment.toISOString().slice(0, 10)
        const before = new Date(`${typed}T00:00:00Z`)
        before.setUTCDate(before.getUTCDate() - 7 * weeks)
        expect(value('STICKDAY', typed, [weeks])).toBe(serialOf(before))
      },
    ),
    { numRuns: 300 },
  )
})
