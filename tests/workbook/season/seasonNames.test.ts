import { expect, test } from 'vitest'
import { referencesIn } from '../../../src/formula/rangesRead'
import { demoSeason } from '../../../src/workbook/season/demoSeason'

/** checkPriceDays reads how old a price may be, and blankSeason where the nursery's own words stand. */
const readByCode = ['SeasonStart', 'LongestPriceAge', 'ReuseSupplier', 'MediumSupplier', 'OtherSupplier']

test('Every name of the season is read by a formula, by a list of what may be typed, or by our own code.', () => {
  const { names, sheets } = demoSeason()
  const cells = sheets.flatMap(({ rows }) => rows.flat())
  const formulas = cells.flatMap((cell) => cell?.formula ?? [])
  const lists = cells.flatMap((cell) =>
    cell?.allowed !== undefined && 'list' in cell.allowed ? cell.allowed.list : [],
  )
  const read = new Set([...formulas.flatMap(referencesIn), ...lists, ...readByCode].map((name) => name.toLowerCase()))
  expect(names.length).toBeGreaterThan(100)
  expect(names.map(({ name }) => name)).toEqual(expect.arrayContaining(readByCode))
  expect(names.map(({ name }) => name).filter((name) => !read.has(name.toLowerCase()))).toEqual([])
})
