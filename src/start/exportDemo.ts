/** npm run demo:export: writes the demo season to assets/demo-season.xlsx. A test says when it must be run again. */
import { writeFile } from 'node:fs/promises'
import { calculateBook } from '../workbench/engine/calculate'
import { writeXlsx } from '../workbench/xlsx/writeXlsx'
import { demoSeason } from '../workbook/season/demoSeason'

const book = demoSeason()
await writeFile(
  new URL('../../assets/demo-season.xlsx', import.meta.url),
  await writeXlsx(book, await calculateBook(book)),
)
