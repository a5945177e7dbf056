/**
 * What we write, against the schemas of Office: Microsoft's Open XML SDK judges it, which comes as WebAssembly in the
 * package @ooxml-tools/validate. It knows ECMA-376 with Microsoft's extensions, and which part may hold what.
 */
import { readFile } from 'node:fs/promises'
import { editZip } from '@cj-tech-master/excelts/archive'
import validate from '@ooxml-tools/validate'
import { expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { putResults } from '../../../src/workbench/xlsx/putResults'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import type { Book } from '../../../src/workbook/book'
import { partsOf, sampleBook } from './sampleBook'

async function faultsOf(bytes: Uint8Array): Promise<string[]> {
  const faults = await validate(bytes, 'xlsx', 'Microsoft365')
  return faults.map(({ path, description }) => `${path.partUri}: ${description}`)
}

const written = async (book: Book) => writeXlsx(book, await calculateBook(book))

it.each([
  ['The demo season', () => readFile(new URL('../../../assets/demo-season.xlsx', import.meta.url))],
  ['One of everything that a book can hold', () => written(sampleBook)],
])('%s has no fault by the schemas of Office.', async (_, file) => {
  expect(await faultsOf(await file())).toEqual([])
})

it('A file whose results recalc has exchanged has no fault by the schemas of Office.', async () => {
  const { bytes } = await putResults(await writeXlsx(sampleBook), await calculateBook(sampleBook))
  expect(await faultsOf(bytes)).toEqual([])
})

it('A file whose elements stand in another order has faults by the schemas of Office, or they would judge nothing.', async () => {
  const bytes = await written(sampleBook)
  const { 'xl/worksheets/sheet1.xml': xml = '' } = await partsOf(bytes)
  const archive = await editZip(bytes)
  archive.set('xl/worksheets/sheet1.xml', xml.replace(/(<cols>.*<\/cols>)(<sheetData>.*<\/sheetData>)/, '$2$1'))
  expect(await faultsOf(await archive.bytes())).toEqual([
    expect.stringMatching(/^\/xl\/worksheets\/sheet1.xml: .*unexpected child element .*cols/),
  ])
})
