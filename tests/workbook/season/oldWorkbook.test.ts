/** A workbook of before: a season that was built and saved while its sheets were Ways, Prices and Buying. */
import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { unpack } from '../../../src/workbench/xlsx/unpack'
import { calculateBook } from '../../../src/workbench/engine/calculate'

const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }
const unescaped = (text: string) => text.replace(/&(amp|lt|gt|quot|apos);/g, (_, name: string) => signs[name]!)

interface Stored {
  readonly address: string
  readonly value: string | number
}

/** The result beside each formula of a sheet, as the file holds it. */
function storedIn(xml: string): readonly Stored[] {
  return [...xml.matchAll(/<c r="([A-Z]+\d+)"([^>]*)><f[^>]*?(?:\/>|>[^<]*<\/f>)(?:<v[^>]*>([^<]*)<\/v>)?<\/c>/g)].map(
    ([, address, attributes, value = '']) => ({
      address: address!,
      value: attributes!.includes('t="str"') ? unescaped(value) : Number(value),
    }),
  )
}

test('A workbook that was built before calculates as before: all 820 stored results of the demo of then.', async () => {
  const bytes = await readFile(new URL('demoOfBefore.xlsx', import.meta.url))
  const { book, lost } = await readXlsx(bytes)
  expect(lost).toEqual([])
  const parts = await unpack(bytes)
  const { sheets } = await calculateBook(book)
  let held = 0
  for (const [index, { name, cells }] of sheets.entries()) {
    const xml = new TextDecoder().decode(parts[`xl/worksheets/sheet${index + 1}.xml`])
    for (const { address, value } of storedIn(xml)) {
      held += 1
      const place = `${name}!${address}`
      const now = cells.get(address)!.value
      if (typeof value === 'string') expect(now ?? '', place).toBe(value)
      else {
        expect(typeof now, place).toBe('number')
        expect(Math.abs((now as number) - value), place).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)))
      }
    }
  }
  expect(held).toBe(820)
}, 120_000)
