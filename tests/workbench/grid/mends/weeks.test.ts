import { expect, it } from 'vitest'
import { countWeeks } from '../../../../src/workbench/grid/mends/weeks'
import { without } from '../univerInNode'
import { resultsOf } from './openCells'

const dayLength = 24 * 60 * 60 * 1000
/** As Excel counts days. */
const serial = (year: number, month: number, day: number) => Date.UTC(year, month - 1, day) / dayLength + 25569

const dates = [
  // ISO 8601: week 1 is the week of the first Thursday.
  ['=ISOWEEKNUM(DATE(2021,1,3))', 53],
  ['=ISOWEEKNUM(DATE(2021,1,4))', 1],
  ['=WEEKNUM(DATE(2021,1,4),21)', 1],
  ['=ISOWEEKNUM(DATE(2022,3,15))', 11],
  // Microsoft's documentation of EDATE, from memory: the same day of the month, or the last one.
  ['=EDATE(DATE(2021,1,31),1)', serial(2021, 2, 28)],
  ['=EDATE(DATE(2020,2,29),12)', serial(2021, 2, 28)],
  ['=EDATE(DATE(2021,1,31),-2)', serial(2020, 11, 30)],
  ['=EDATE(DATE(2021,1,15),1.9)', serial(2021, 2, 15)],
  ['=EDATE("x",1)', '#VALUE!'],
  ['=ISOWEEKNUM("x")', '#VALUE!'],
  ['=WEEKNUM(DATE(2021,1,4),21.5)', 1],
  ['=WEEKNUM(DATE(2021,1,4),22)', '#NUM!'],
] as const

it('Weeks and months are counted as in Excel.', async () => {
  expect(await resultsOf(dates.map(([formula]) => formula))).toEqual(dates.map(([, result]) => result))
})

/** Steps through the calendar, and begins a week on each Monday. */
function isoWeeks(from: number, days: number): number[] {
  const weeks: number[] = []
  for (let day = from; day < from + days; day++) {
    const at = new Date((day - 25569) * dayLength)
    const thursday = new Date(at.getTime() + (4 - (at.getUTCDay() || 7)) * dayLength)
    let week = 1
    let first = new Date(thursday)
    while (new Date(first.getTime() - 7 * dayLength).getUTCFullYear() === thursday.getUTCFullYear()) {
      first = new Date(first.getTime() - 7 * dayLength)
      week += 1
    }
    weeks.push(week)
  }
  return weeks
}

it('On every day of 28 years, in which each year begins on each weekday, the weeks are those of ISO 8601.', async () => {
  const [from, days] = [serial(2010, 1, 1), 28 * 365 + 7]
  const right = isoWeeks(from, days)
  const asked = right.map((_week, index) => `ISOWEEKNUM(${from + index})&" "&WEEKNUM(${from + index},21)`)
  const rows: string[] = []
  for (let index = 0; index < asked.length; index += 20) rows.push(`=${asked.slice(index, index + 20).join('&" "&')}`)
  const found = (await resultsOf(rows)).flatMap((row) => String(row).split(' ').map(Number))
  expect(found).toEqual(right.flatMap((week) => [week, week]))
})

it('Each day of a year moved by each number of months keeps its day, or is the last of its month.', async () => {
  const months = Array.from({ length: 27 }, (_month, index) => index - 13)
  const days = Array.from({ length: 366 }, (_day, index) => serial(2020, 1, 1) + index)
  const right = days.flatMap((day) =>
    months.map((by) => {
      const at = new Date((day - 25569) * dayLength)
      const month = at.getUTCMonth() + by
      const moved = Date.UTC(2020, month, at.getUTCDate())
      const isOver = new Date(moved).getUTCMonth() !== ((month % 12) + 12) % 12
      return (isOver ? Date.UTC(2020, month + 1, 0) : moved) / dayLength + 25569
    }),
  )
  const rows = days.map((day) => `=${months.map((by) => `EDATE(${day},${by})*1`).join('&" "&')}`)
  expect((await resultsOf(rows)).flatMap((row) => String(row).split(' ').map(Number))).toEqual(right)
})

// LibreOffice 7.4 gives the same, but for TRUE, which is the day 1 to it; that Excel refuses that is from memory.
it('EDATE takes a day that a cell holds as a text.', async () => {
  const cells = { A1: '2026-01-31', A2: '46053', A3: 'x', A4: '=""', A5: true, A6: 46053 }
  const formulas = ['A1,1', 'A2,1', 'A6,"1"', 'A3,1', 'A4,1', 'A5,1', 'B1,1'].map((given) => `=EDATE(${given})`)
  const refused = '#VALUE!'
  expect(await resultsOf(formulas, cells)).toEqual([46081, 46081, 46081, refused, refused, refused, 31])
  expect(await resultsOf(formulas.slice(0, 3), cells, without(countWeeks))).toEqual([refused, refused, refused])
})

// The Mondays to Saturdays after Tuesday, 9 December 2025, counted by hand; LibreOffice 7.4 gives the same.
it('WORKDAY.INTL takes its day and its number of days from cells.', async () => {
  const cells = { A1: 46_000, A2: 10, A3: -10, A4: 46_001 }
  const formulas = ['A1,A2,11', 'A1,10,"0000001"', '46000,A2', 'A1,A3,1', 'A1,A2,11,A4'].map(
    (given) => `=WORKDAY.INTL(${given})`,
  )
  expect(await resultsOf(formulas, cells)).toEqual([46_011, 46_011, 46_014, 45_986, 46_013])
  expect(await resultsOf(formulas.slice(0, 2), cells, without(countWeeks))).toEqual([0, 12])
})

it('Without the mend the library counts a week too few, and goes past the end of a month.', async () => {
  const formulas = ['=ISOWEEKNUM(DATE(2022,3,15))', '=WEEKNUM(DATE(2021,1,4),21)', '=EDATE(DATE(2021,1,31),1)']
  expect(await resultsOf(formulas, {}, without(countWeeks))).toEqual([10, 54, serial(2021, 3, 3)])
})
