/**
 * Prices that are older than the season allows, and days of prices that are texts.
 *
 * Convention: below a heading such as "Price of" each number is a day, down to the next heading; where no day stands
 * below it, it is the label of a line, and the days stand right of it. The first day of the season and how old a
 * price may be then are the cells SetupFirstDay and SetupLongestPriceAge, which workbooks of before name SeasonStart
 * and LongestPriceAge. Without the first
 * there is nothing to compare with, and only texts are found.
 */
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import type { Words } from '../../wording/words'
import { dayText } from '../../core/quantity/day'
import type { OpenBook, OpenCell, OpenSheet, ReadCell } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import type { Finding } from './finding'

/** Whatever their capitals. */
const headings = new Set([
  'price of',
  'price date',
  'date of price',
  'date of the price',
  'day of the price',
  'priced on',
  'quoted on',
])

/** In days; common practice, no source. It holds where the season's own cell holds no number. */
const usualAge = 180

export function checkPriceDays(book: OpenBook, found: Words['found']): readonly Finding[] {
  const start = namedCell(book, 'SetupFirstDay') ?? namedCell(book, 'SeasonStart')
  const longest = (namedCell(book, 'SetupLongestPriceAge') ?? namedCell(book, 'LongestPriceAge'))?.value
  const mostDays = typeof longest === 'number' ? longest : usualAge
  const dated = book.sheets.flatMap((sheet) =>
    daysOf(sheet).map(([address, cell]) => ({ sheet: sheet.name, address, value: cell.value })),
  )
  const sentenceOf = (value: ReadCell) => {
    if (typeof value === 'string') return dayAsText(value, found)
    if (typeof value !== 'number' || typeof start?.value !== 'number') return undefined
    const age = Math.floor(start.value) - Math.floor(value)
    const [day, first] = [dayText(value), dayText(start.value)]
    return age > mostDays && day !== undefined && first !== undefined
      ? found.oldPrice(day, age, first, mostDays)
      : undefined
  }
  const days = dated.flatMap(({ value, ...place }): Finding[] => {
    const sentence = sentenceOf(value)
    return sentence === undefined ? [] : [{ ...place, kind: 'warning', sentence }]
  })
  return [
    ...startFindings(
      start,
      dated.some(({ value }) => typeof value === 'number'),
      found,
    ),
    ...days,
  ]
}

interface NamedCell {
  readonly sheet: string
  readonly address: string
  readonly value: ReadCell
}

function namedCell(book: OpenBook, wanted: string): NamedCell | undefined {
  const [range] = rangesRead(`=${wanted}`, '', namedRanges(book.names))
  if (range === undefined) return undefined
  const address = addressOf(range.top, range.left)
  const sheet = sheetNamed(book, range.sheet)
  return sheet && { sheet: sheet.name, address, value: sheet.cells.get(address)?.value ?? null }
}

function startFindings(start: NamedCell | undefined, hasDays: boolean, found: Words['found']): readonly Finding[] {
  if (start === undefined || typeof start.value === 'number' || !hasDays) return []
  const { sheet, address, value } = start
  return [
    {
      sheet,
      address,
      kind: 'warning',
      sentence: typeof value === 'string' ? dayAsText(value, found) : found.noSeasonStart(),
    },
  ]
}

function dayAsText(text: string, found: Words['found']): string {
  const [, first, second] = /^\s*(\d{1,2})[./-](\d{1,2})[./-]\d{2,4}\s*$/.exec(text) ?? []
  const hasTwoReadings =
    first !== undefined && Number(first) !== Number(second) && Math.max(Number(first), Number(second)) <= 12
  return found.dayAsText(text, hasTwoReadings)
}

type Placed = readonly [address: string, cell: OpenCell]

function daysOf({ cells }: OpenSheet): readonly Placed[] {
  return [...cells.values()].filter(isHeading).flatMap(({ row, column }) => {
    const all = [...cells]
    const below = all
      .filter(([, cell]) => cell.column === column && cell.row > row)
      .sort(([, one], [, other]) => one.row - other.row)
    const next = below.findIndex(([, { value }]) => typeof value === 'string' && !isDash(value) && !mayBeDay(value))
    const inColumn = (next < 0 ? below : below.slice(0, next)).filter(([, { value }]) => mayBeDay(value))
    return inColumn.length > 0
      ? inColumn
      : all.filter(([, cell]) => cell.row === row && cell.column > column && mayBeDay(cell.value))
  })
}

function isHeading({ value, formula }: OpenCell): boolean {
  return typeof value === 'string' && formula === '' && headings.has(value.trim().toLowerCase())
}

function mayBeDay(value: ReadCell): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /\d/.test(value))
}

function isDash(text: string): boolean {
  return /^[\s–—-]*$/.test(text)
}
