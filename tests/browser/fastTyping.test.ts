/** Values that are typed faster than the season calculates: in the end every formula has the result of what stands there. */
import { afterAll, beforeAll, expect, it } from 'vitest'
import { positionOf } from '../../src/formula/address'
import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Book, Cell } from '../../src/workbook/book'
import type { OpenBook } from '../../src/workbook/openBook'
import type { CellPlace } from '../../src/workbook/cellPlace'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { type GridPage, openGridPage } from './gridPage'
import { named } from './seasonPlaces'

let opened: GridPage

beforeAll(async () => {
  opened = await openGridPage('portPage.ts')
})

afterAll(() => opened.close())

interface Entry {
  readonly from: CellPlace
  /** In milliseconds from key to key: none, or as a practised hand types, so that calculations begin and are stopped. */
  readonly delay: number
  /** One below the other. */
  readonly values: readonly number[]
}

const entries: readonly Entry[] = [
  { from: named('OrderLiners'), delay: 0, values: Array.from({ length: 17 }, (_value, row) => 1000 + 137 * row) },
  { from: named('OrderWeeks'), delay: 50, values: Array.from({ length: 13 }, (_value, row) => 9 + (row % 5)) },
]

/** The value that was typed into a cell, if any. */
function typed(sheet: string, row: number, column: number): number | undefined {
  for (const { from, values } of entries) {
    const first = positionOf(from.address)
    if (from.sheet === sheet && first.column === column) return values[row - first.row]
  }
  return undefined
}

function withEntries({ sheets, names }: Book): Book {
  const changed = (sheet: string, cell: Cell | undefined, row: number, column: number) => {
    const value = typed(sheet, row, column)
    return value === undefined ? cell : { ...cell, value }
  }
  return {
    names,
    sheets: sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.map((cells, row) => cells.map((cell, column) => changed(sheet.name, cell, row, column))),
    })),
  }
}

/** Of all cells, typed and calculated, by sheet and address. */
type Results = Readonly<Record<string, unknown>>

const resultsOf = ({ sheets }: OpenBook): Results =>
  Object.fromEntries(
    sheets.flatMap(({ name, cells }) =>
      [...cells].map(([address, { value }]) => [`${name}!${address}`, value] as const),
    ),
  )

it('Thirty values typed without a pause, some faster than calculations begin and some while they run, leave no formula with an old result.', async () => {
  const { page } = opened
  const season = demoSeason()
  await page.evaluate((book) => window.port!.add(book), season)
  for (const { from, delay, values } of entries) {
    await page.evaluate((place) => window.port!.select(place), from)
    await page.evaluate(() => window.focusGrid!())
    await page.keyboard.type(values.map((value) => `${value}\n`).join(''), { delay })
  }
  const expected = resultsOf(await calculateBook(withEntries(season)))
  expect(Object.keys(expected).length).toBeGreaterThan(800)
  const old = async (): Promise<readonly string[]> => {
    const sheets = await page.evaluate(async () => {
      const book = await window.port!.read()
      return book.sheets.map(({ name, cells }) => ({ name, cells: [...cells] }))
    })
    const now = resultsOf({ names: [], sheets: sheets.map(({ name, cells }) => ({ name, cells: new Map(cells) })) })
    return Object.entries(expected).flatMap(([place, result]) =>
      JSON.stringify(now[place]) === JSON.stringify(result)
        ? []
        : [`${place}: ${JSON.stringify(now[place])} for ${JSON.stringify(result)}`],
    )
  }
  await expect.poll(old).toEqual([])
})
