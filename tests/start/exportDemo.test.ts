import { readFile } from 'node:fs/promises'
import { expect, it } from 'vitest'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../src/workbench/xlsx/writeXlsx'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { partsOf } from '../workbench/xlsx/sampleBook'

const committed = () => readFile(new URL('../../assets/demo-season.xlsx', import.meta.url))

it('The committed demo season is what the exporter writes now; if not, npm run demo:export writes it anew.', async () => {
  const book = demoSeason()
  // Part by part, because another version of Node may compress the same parts to other bytes.
  expect(await partsOf(await committed())).toEqual(await partsOf(await writeXlsx(book, await calculateBook(book))))
})

it('The committed demo season comes back as the same book, with nothing lost and the same results.', async () => {
  const season = demoSeason()
  const { book, lost } = await readXlsx(await committed())
  expect(lost).toEqual([])
  expect(book.names).toEqual(season.names)
  expect(book.sheets.map(({ tables }) => tables)).toEqual(season.sheets.map(({ tables }) => tables))
  expect(await calculateBook(book)).toEqual(await calculateBook(season))
})
