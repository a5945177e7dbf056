/** A file as recalc writes it. */
import { parseXml, walk } from '@cj-tech-master/excelts/xml'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { withKeptResults } from '../../../src/workbench/xlsx/keptResults'
import { putResults } from '../../../src/workbench/xlsx/putResults'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { partsFile, type PartsFile } from './partsFile'
import { partsOf } from './sampleBook'

export interface Recalculated {
  /** What each cell stores, with the name of its sheet before its address, but on the first. */
  readonly stored: Readonly<Record<string, string | number | boolean>>
  /** Why a cell kept what it stored; an empty text where it did so for what it reads. */
  readonly kept: Readonly<Record<string, string>>
}

export async function recalculated(file: PartsFile): Promise<Recalculated> {
  const before = await partsFile(file)
  const read = await readXlsx(before)
  const { book, kept } = withKeptResults(read, await calculateBook(read.book))
  const { bytes } = await putResults(before, book, kept)
  const parts = await partsOf(bytes)
  const place = (sheet: string, address: string) => (sheet === file.sheets[0]!.name ? address : `${sheet}!${address}`)
  return {
    stored: Object.fromEntries(
      file.sheets.flatMap(({ name }, index) =>
        storedIn(parts[`xl/worksheets/sheet${index + 1}.xml`]!).map(([address, value]) => [
          place(name, address),
          value,
        ]),
      ),
    ),
    kept: Object.fromEntries(kept.map(({ sheet, address, why }) => [place(sheet, address), why ?? ''])),
  }
}

function storedIn(xml: string): readonly (readonly [address: string, value: string | number | boolean])[] {
  const found: (readonly [string, string | number | boolean])[] = []
  walk(parseXml(xml).root, (cell) => {
    const value = cell.name === 'c' && cell.children.find((child) => child.type === 'element' && child.name === 'v')
    if (!value || value.type !== 'element') return
    const text = value.children.map((child) => (child.type === 'text' ? child.value : '')).join('')
    const { r = '', t = 'n' } = cell.attributes
    found.push([r, t === 'n' ? Number(text) : t === 'b' ? text === '1' : text])
  })
  return found
}
