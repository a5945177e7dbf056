import { expect, test } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book, Cell, CellContent } from '../../../src/workbook/book'
import { checkBook } from '../../../src/workbook/check/checkBook'
import { dayText, serialOf } from '../../../src/core/quantity/day'
import { emptySeason } from '../../../src/workbook/season/emptySeason'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import { season } from '../../../src/workbook/season/season'
import { english } from '../../../src/wording/en/words'

const day = serialOf

/** A table of a user's own on Mine, and below the names of the season its first day and the longest age. */
function bookOf(
  season: readonly CellContent[] | undefined,
  ...rows: readonly (readonly (CellContent | undefined)[])[]
): Book {
  const sheet = (name: string, contents: typeof rows) => ({
    name,
    widths: [],
    frozenRows: 0,
    frozenColumns: 0,
    rows: contents.map((row) => row.map((value): Cell | undefined => (value === undefined ? undefined : { value }))),
  })
  if (season === undefined) return { names: [], sheets: [sheet('Mine', rows)] }
  return {
    names: [
      { name: 'SeasonStart', refersTo: 'Plan!$A$1' },
      { name: 'LongestPriceAge', refersTo: 'Plan!$A$2' },
    ],
    sheets: [
      sheet('Mine', rows),
      sheet(
        'Plan',
        season.map((value) => [value]),
      ),
    ],
  }
}

async function findings(book: Book): Promise<readonly string[]> {
  const found = checkBook(await calculateBook(book), catalogue, english.found)
  return found.map(({ sheet, address, kind, sentence }) => `${sheet}!${address} ${kind}: ${sentence}`)
}

// The numbers of two days in Microsoft's examples of DATEVALUE, from memory.
test.each([
  [40777, '2011-08-22'],
  [40685, '2011-05-22'],
])('A cell that holds %i holds the day %s.', (serial, written) => {
  expect([dayText(serial), serialOf(written)]).toEqual([written, serial])
})

test('A price is old from the day on that is one more than the season allows.', async () => {
  expect(
    await findings(
      bookOf(
        [day('2026-02-09'), 30],
        ['Product', 'Price of'],
        ['Peat', day('2026-01-10')],
        ['Coir', day('2026-01-09')],
      ),
    ),
  ).toEqual([
    'Mine!B3 warning: This price is dated 2026-01-09, 31 days before the season starts (2026-02-09); prices older than 30 days are flagged. Ask for a new price, or keep it on purpose.',
  ])
})

test('The usual age counts where the season says none, and a price after the start is never old.', async () => {
  const rows = [['Price date', 'Product'], [day('2025-08-13')], [day('2025-08-12')], [day('2026-06-01')]]
  expect(await findings(bookOf([day('2026-02-09')], ...rows))).toEqual([
    expect.stringContaining('Mine!A3 warning: This price is dated 2025-08-12, 181 days before'),
  ])
})

test('A heading before its line has the days right of it, and the next heading ends a column.', async () => {
  expect(
    await findings(
      bookOf(
        [day('2026-02-09'), 180],
        ['Price of', 'year-month-day', day('2024-01-01'), '–', day('2026-01-01')],
        ['Rounds', 'rounds', 14],
        [],
        [undefined, undefined, 'price of'],
        [undefined, undefined, day('2024-03-01')],
        [undefined, undefined, 'Liners'],
        [undefined, undefined, 500],
      ),
    ),
  ).toEqual([expect.stringContaining('Mine!C1 warning'), expect.stringContaining('Mine!C5 warning')])
})

test.each([
  [
    '03/04/2026',
    'Mine!A2 warning: “03/04/2026” is a text and no day, so the age of the price is not known; some read its day first, others its month. Type it as year-month-day, such as 2026-02-09.',
  ],
  [
    '23/04/2026',
    'Mine!A2 warning: “23/04/2026” is a text and no day, so the age of the price is not known. Type it as year-month-day, such as 2026-02-09.',
  ],
  [
    'spring of 2026',
    'Mine!A2 warning: “spring of 2026” is a text and no day, so the age of the price is not known. Type it as year-month-day, such as 2026-02-09.',
  ],
])('The text %s for a day gets its sentence, with a season or without one.', async (text, sentence) => {
  expect(await findings(bookOf(undefined, ['Price of'], [text]))).toEqual([sentence])
  expect(await findings(bookOf([day('2026-02-09'), 180], ['Price of'], [text]))).toEqual([sentence])
})

test('A season without its first day is told so where prices have days, and one whose first day is a text.', async () => {
  const rows = [['Price of'], [day('2020-01-01')]]
  expect(await findings(bookOf([], ...rows))).toEqual([
    expect.stringMatching(/^Plan!A1 warning: The first day of the season is missing/),
  ])
  expect(await findings(bookOf(['9.2.2026'], ...rows))).toEqual([
    expect.stringMatching(/^Plan!A1 warning: “9\.2\.2026” is a text and no day/),
  ])
  expect(await findings(bookOf([]))).toEqual([])
})

test('Nothing is said of the age of a price in a workbook that has no season.', async () => {
  expect(await findings(bookOf(undefined, ['Price of'], [day('2001-01-01')]))).toEqual([])
})

test('In the demo season, started a year later, every price with a day is old: of media and offers.', async () => {
  const later = season({ ...vellimoor, setup: { ...vellimoor.setup, firstDay: day('2027-02-09') } })
  const old = checkBook(await calculateBook(later), catalogue, english.found).filter(({ sentence }) =>
    sentence.startsWith('This price is dated'),
  )
  const counted = new Map<string, number>()
  for (const { sheet } of old) counted.set(sheet, (counted.get(sheet) ?? 0) + 1)
  const dated = (rows: readonly { readonly priceDay?: unknown }[]) =>
    rows.filter(({ priceDay }) => priceDay !== undefined).length
  const expected = {
    Media: dated(vellimoor.media),
    Offers: dated(vellimoor.offers),
  }
  expect(Math.min(...Object.values(expected))).toBeGreaterThan(1)
  expect(Object.fromEntries(counted)).toEqual(expected)
})

test('The empty season has no finding about days.', async () => {
  expect((await findings(emptySeason('CHF'))).filter((finding) => /price|day/.test(finding))).toEqual([])
})
