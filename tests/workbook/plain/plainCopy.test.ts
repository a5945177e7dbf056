import { beforeAll, expect, test } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { unpack } from '../../../src/workbench/xlsx/unpack'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import type { Book, Cell } from '../../../src/workbook/book'
import type { OpenBook } from '../../../src/workbook/openBook'
import { plainCopy, type PlainCopy } from '../../../src/workbook/plain/plainCopy'
import { demoSeason } from '../../../src/workbook/season/demoSeason'

const season = demoSeason()
let before: OpenBook
let copy: PlainCopy
let after: OpenBook

beforeAll(async () => {
  before = await calculateBook(season)
  copy = plainCopy(season, before, catalogue)
  after = await calculateBook(copy.book)
}, 180_000)

test('In the copy of the demo season every call is a plain formula or a value, and every cell shows what it showed.', () => {
  const calls = season.sheets.flatMap(({ rows }) => rows.flat()).filter((cell) => cell?.formula?.includes('STICK.'))
  expect(copy.formulas + copy.values).toBe(calls.length)
  expect(copy.formulas).toBeGreaterThan(100)
  let numbers = 0
  for (const { name, cells } of before.sheets) {
    const recalculated = after.sheets.find((sheet) => sheet.name === name)!.cells
    for (const [address, { value }] of cells) {
      const now = recalculated.get(address)
      if (typeof value === 'number') {
        numbers += 1
        expect(Math.abs(Number(now?.value) - value), `${name}!${address}`).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(value)),
        )
      } else if (value !== null && typeof value !== 'object') expect(now?.value ?? '', `${name}!${address}`).toBe(value)
    }
  }
  expect(numbers).toBeGreaterThan(1000)
})

test('Its file holds no call of ours in any spelling, and results to show where nothing is calculated.', async () => {
  const parts = await unpack(await writeXlsx(copy.book, copy.calculated))
  const texts = Object.entries(parts).map(([path, bytes]) => [path, new TextDecoder().decode(bytes)] as const)
  const sheets = texts.filter(([path]) => path.startsWith('xl/worksheets/sheet'))
  expect(sheets).toHaveLength(season.sheets.length + 1)
  for (const [path, xml] of texts) expect(/STICK[._]\w*/i.exec(xml)?.[0], path).toBeUndefined()
  const formulas = sheets.flatMap(([, xml]) => xml.match(/<c [^>]*>(?:<f[^>]*>[^<]*<\/f>)(<v>)?/g) ?? [])
  expect(formulas.length).toBeGreaterThan(500)
})

test('Its last sheet lists each cell that became a value, with the value and the reason.', () => {
  const list = copy.book.sheets.at(-1)!
  expect(list.name).toBe('Without the add-in')
  const lines = list.rows.slice(5)
  expect(lines).toHaveLength(copy.values)
  const cuttings = lines.find((line) => line[0]?.value === 'Orders')!
  expect(cuttings[3]?.value).toMatch(/^CUTTINGS: /)
  const { row, column, value } = before.sheets
    .find(({ name }) => name === 'Orders')!
    .cells.get(String(cuttings[1]?.value))!
  expect(cuttings[2]?.value).toBe(value)
  expect(copy.book.sheets.find(({ name }) => name === 'Orders')!.rows[row]![column]).toMatchObject({ value })
})

const bookOf = (rows: Cell[][], names: Book['names'] = []): Book => ({
  names,
  sheets: [{ name: 'Plan', widths: [9], frozenRows: 1, frozenColumns: 0, rows }],
})

async function copyOf(book: Book): Promise<PlainCopy> {
  return plainCopy(book, await calculateBook(book), catalogue)
}

test('What a function fills becomes values cell by cell, and each cell keeps how it looks.', async () => {
  const rows: Cell[][] = [
    [{ value: '100 L' }],
    [{ formula: '=STICK.BLENDPARTS(A1,{1,3},0)', spills: true, look: 'result', format: '0.0' }],
    [{ formula: '=STICK.BAGS("much",60)', look: 'result' }],
  ]
  const { book } = await copyOf(bookOf(rows))
  expect(book.sheets[0]!.rows.slice(1)).toEqual([
    [{ value: 25, look: 'result', format: '0.0' }, { value: 75 }],
    // It refused, and goes on saying so.
    [{ formula: '=#VALUE!', look: 'result' }],
  ])
  expect(book.sheets[0]).toMatchObject({ widths: [9], frozenRows: 1 })
})

test('A cell that reads a text with a unit becomes its value, since plain Excel would not take that text for a number.', async () => {
  const { book, values } = await copyOf(
    bookOf([[{ value: '300 L' }], [{ formula: '=STICK.BAGS(A1,60)' }], [{ formula: '=STICK.BAGS("300 L",60)' }]]),
  )
  expect(values).toBe(1)
  expect(book.sheets[0]!.rows[1]![0]).toEqual({ value: 5 })
  expect(book.sheets[0]!.rows[2]![0]?.formula).toMatch(/^=ROUNDUP/)
  expect(book.sheets[1]!.rows[5]?.map((cell) => cell?.value)).toEqual([
    'Plan',
    'A2',
    5,
    'It reads the text “300 L”, which plain Excel does not take for a number.',
  ])
})

test('The list takes another name where the workbook has a sheet called so.', async () => {
  const { listedOn } = await copyOf({
    names: [],
    sheets: [{ name: 'WITHOUT the add-in', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }],
  })
  expect(listedOn).toBe('Without the add-in (2)')
})

test('A name that stands for a call is written plainly too.', async () => {
  const { book } = await copyOf(
    bookOf(
      [[{ value: 1 }]],
      [
        { name: 'PerLiner', refersTo: 'STICK.PERLINER(Plan!$A$1,0.5)' },
        { name: 'One', refersTo: 'Plan!$A$1' },
      ],
    ),
  )
  expect(book.names).toEqual([
    { name: 'PerLiner', refersTo: 'Plan!$A$1/PRODUCT(0.5)' },
    { name: 'One', refersTo: 'Plan!$A$1' },
  ])
})
