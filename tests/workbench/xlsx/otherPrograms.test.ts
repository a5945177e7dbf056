/** The saved demo season in the eyes of programs that share nothing with us: excelize, and LibreOffice where it is. */
import { readFile } from 'node:fs/promises'
import { beforeAll, describe, expect, it } from 'vitest'
import { isCellError } from '../../../src/core/definition/problem'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { addressesIn, addressOf, blockIn } from '../../../src/formula/address'
import { libreOffice, savedByLibreOffice } from './libreOffice'
import { readBySecond, type SecondReading } from './secondReader'

const season = demoSeason()
const columns = Object.fromEntries(season.sheets.map(({ name, widths }) => [name, widths.length]))
let bytes: Uint8Array
let second: SecondReading

beforeAll(async () => {
  bytes = await readFile(new URL('../../../assets/demo-season.xlsx', import.meta.url))
  second = await readBySecond(bytes, columns)
})

const cells = season.sheets.flatMap(({ name, rows }) =>
  rows.flatMap((row, y) => row.map((cell, x) => ({ place: `${name}!${addressOf(y, x)}`, cell }))),
)

/** Other programs keep print titles as names too, and they are those of the frozen rows. */
function withoutPrinting(names: SecondReading['names']): SecondReading['names'] {
  return Object.fromEntries(Object.entries(names).filter(([name]) => !name.startsWith('_xlnm')))
}

function placed(values: SecondReading['values']): [place: string, value: string][] {
  return Object.entries(values).flatMap(([sheet, inSheet]) =>
    Object.entries(inSheet).map(([address, value]): [string, string] => [`${sheet}!${address}`, value]),
  )
}

/** Fifteen digits are what other programs store of a number. */
function isSame(one: string, other: string | undefined): boolean {
  if (other === undefined) return false
  return one === other || Math.abs(Number(one) - Number(other)) <= 1e-14 * Math.abs(Number(one))
}

describe('The saved demo season, read by a second library,', () => {
  it('holds the numbers, texts and truths that the season calculates, those of spilled cells too', async () => {
    const expected = (await calculateBook(season)).sheets.flatMap(({ name, cells: inSheet }) =>
      [...inSheet].flatMap(([address, { value }]): [string, string][] => {
        if (value === null || value === '') return []
        const stored = isCellError(value)
          ? value.code
          : typeof value === 'boolean'
            ? String(value).toUpperCase()
            : value
        return [[`${name}!${address}`, String(stored)]]
      }),
    )
    const found = new Map(placed(second.values))
    expect(expected.length).toBeGreaterThan(4000)
    expect(expected.filter(([place, value]) => !isSame(value, found.get(place)))).toEqual([])
    expect(found.size).toBe(expected.length)
  })

  it('has the names, tables, notes and widths of the season', () => {
    expect(withoutPrinting(second.names)).toEqual(
      Object.fromEntries(season.names.map(({ name, refersTo }) => [name, refersTo])),
    )
    expect(second.tables).toEqual(
      Object.fromEntries(season.sheets.flatMap(({ tables = [] }) => tables.map(({ name, range }) => [name, range]))),
    )
    expect(second.notes).toEqual(
      Object.fromEntries(cells.flatMap(({ place, cell }) => (cell?.note === undefined ? [] : [[place, cell.note]]))),
    )
    expect(second.widths).toEqual(Object.fromEntries(season.sheets.map(({ name, widths }) => [name, widths])))
  })

  it('has a rule with its sentence for each cell that takes certain entries only', () => {
    const ruled = second.rules.flatMap((rule) => {
      const [sheet, ranges = '', , , , sentence] = rule.split(' | ')
      return ranges.split(' ').flatMap((range) => addressesIn(blockIn(range)).map((at) => [`${sheet}!${at}`, sentence]))
    })
    expect(Object.fromEntries(ruled)).toEqual(
      Object.fromEntries(cells.flatMap(({ place, cell }) => (cell?.allowed ? [[place, cell.allowed.sentence]] : []))),
    )
  })
})

it.each(libreOffice.version === undefined ? [] : [libreOffice.version])(
  'Saved by LibreOffice %s, the demo season has the same names, tables, rules, notes, widths, numbers and texts, but for what our functions would give, which is #NAME? there, and for what says that it is missing.',
  async () => {
    const saved = await readBySecond(await savedByLibreOffice(bytes), columns)
    expect(withoutPrinting(saved.names)).toEqual(withoutPrinting(second.names))
    expect(saved.tables).toEqual(second.tables)
    // A limit that is not asked for is 0 there.
    const spelled = (rules: readonly string[]) => rules.map((rule) => rule.replace(' |  | ', ' | 0 | ')).sort()
    expect(spelled(saved.rules)).toEqual(spelled(second.rules))
    expect(saved.notes).toEqual(second.notes)
    expect(saved.widths).toEqual(second.widths)
    const found = new Map(placed(saved.values))
    const others = placed(second.values).filter(
      ([place, value]) => !isSame(value, found.get(place)) && found.get(place) !== '#NAME?',
    )
    expect(others.map(([place]) => place)).toEqual([
      'Season!B7',
      ...[17, 21, 22, 23, 25, 26, 27, 28].map((row) => `Monday!B${row}`),
    ])
    expect([found.get('Season!B7'), found.get('Monday!B17')]).toEqual([
      'An error stands behind the totals: see Check in the pane',
      'Week of: not on the calendar',
    ])
  },
)
