/** Adds books to Excel through Microsoft's own client, with what can go wrong on the way. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import type { Book, Cell, Sheet } from '../../src/workbook/book'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { vellimoor } from '../../src/workbook/season/data/vellimoor'
import { lastRowOf } from '../../src/workbook/season/growing'
import { orders } from '../../src/workbook/season/tables/orders'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const port = excelPort(new CallLog())

beforeEach(() => {
  host = new ExcelHost('Mine')
  Object.assign(globalThis, host.start())
  host.type('A1', 7)
  host.names.set('MyRate', { sheet: 'Mine', address: 'A1' })
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

async function actionsToAdd(book: Book): Promise<number> {
  const other = new ExcelHost('Other')
  Object.assign(globalThis, other.start())
  other.failingAfter = 1e9
  await port.add(book)
  Object.assign(globalThis, host.start())
  return 1e9 - other.failingAfter
}

function expectAsBefore(...tables: readonly string[]): void {
  expect(host.sheetNames()).toEqual(['Mine'])
  expect(host.tableNames()).toEqual(tables)
  expect([...host.names.keys()]).toEqual(['MyRate'])
  expect(host.formulaAt('A1')).toBe(7)
}

const bare = { widths: [], frozenRows: 0, frozenColumns: 0 }
const bookOf = (...sheets: Sheet[]): Book => ({ names: [], sheets })
const sheetOf = (...rows: Cell[][]): Sheet => ({ ...bare, name: 'Trial', rows })

describe('a book that Excel takes', () => {
  test('keeps its formats, widths and frozen rows and columns.', async () => {
    const rows: Cell[][] = [[{ value: 0.5, format: '0.0%' }, { value: 1 }]]
    await port.add(
      bookOf(
        { name: 'Both', widths: [10, 20.5], frozenRows: 3, frozenColumns: 1, rows },
        { ...bare, name: 'Rows', frozenRows: 2, rows },
        { ...bare, name: 'Columns', frozenColumns: 2, rows },
        { ...bare, name: 'Empty', rows: [] },
      ),
    )
    const both = host.sheet('Both')
    expect(both.frozen).toEqual({ rows: 3, columns: 1 })
    expect(host.sheet('Rows').frozen).toEqual({ rows: 2, columns: 0 })
    expect(host.sheet('Columns').frozen).toEqual({ rows: 0, columns: 2 })
    expect(both.appearance.get('A1')?.get('NumberFormat')).toBe('0.0%')
    expect(both.appearance.get('B1')?.has('NumberFormat')).toBe(false)
    // 10 characters: 75 pixels at 96 to the inch, 72 points to the inch.
    expect(both.appearance.get('A1')?.get('format.ColumnWidth')).toBe(56.25)
  })

  test('has boxes around the cells to type into and none around results.', async () => {
    await port.add(
      bookOf(
        sheetOf([
          { value: 1, look: 'input' },
          { formula: '=A1', look: 'result' },
          { value: 'Sums', look: 'heading' },
        ]),
      ),
    )
    const [input, result, heading] = ['A1', 'B1', 'C1'].map((address) => host.sheet('Trial').appearance.get(address))
    expect(['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'].map((edge) => input?.get(`${edge}.Style`))).toEqual(
      Array(4).fill('Continuous'),
    )
    expect(input?.get('Fill.Color')).toMatch(/^#[0-9A-F]{6}$/)
    expect(result?.size ?? 0).toBe(0)
    expect(heading?.get('Font.Bold')).toBe(true)
  })

  test('says in words what may be typed: a number within limits, a whole one, a day, or an entry of a list.', async () => {
    await port.add({
      names: [{ name: 'Ways', refersTo: 'Trial!$E$1:$E$2' }],
      sheets: [
        sheetOf(
          [
            { look: 'input', allowed: { from: 0, to: 1, sentence: 'Type a share.' } },
            { look: 'input', allowed: { from: 0, whole: true, sentence: 'Type a count.' } },
            { look: 'input', allowed: { list: 'Ways', sentence: 'Type a way.' } },
            { look: 'input' },
            { value: 'Water' },
            { look: 'input', allowed: { from: 36526, to: 73050, day: true, sentence: 'Type a day.' } },
          ],
          [{ look: 'input', allowed: { from: 0, to: 1, sentence: 'Type a share.' } }],
        ),
      ],
    })
    const rule = (address: string) => host.sheet('Trial').appearance.get(address)?.get('validation.Rule')
    expect(rule('A1')).toEqual({ decimal: { formula1: 0, formula2: 1, operator: 'Between' } })
    expect(rule('A2')).toEqual(rule('A1'))
    expect(rule('B1')).toEqual({ wholeNumber: { formula1: 0, operator: 'GreaterThanOrEqualTo' } })
    expect(rule('C1')).toEqual({ list: { inCellDropDown: true, source: '=Ways' } })
    expect(rule('D1')).toBeUndefined()
    expect(rule('F1')).toEqual({ date: { formula1: '2000-01-01', formula2: '2099-12-31', operator: 'Between' } })
    expect(host.sheet('Trial').appearance.get('C1')?.get('validation.ErrorAlert')).toMatchObject({
      showAlert: true,
      style: 'Stop',
      message: 'Type a way.',
    })
  })

  test('has its notes at its cells where Excel knows notes, and is one undo where it joins undo steps.', async () => {
    const rows: Cell[][] = [[{ value: 1, note: 'Counted.' }, { value: 2 }, { value: 3, note: 'Weighed.' }]]
    await port.add(bookOf(sheetOf(...rows)))
    expect([host.notes, host.joined]).toEqual([[], 0])
    const newer = new ExcelHost('Mine')
    Object.assign(globalThis, newer.start(20))
    await port.add(bookOf(sheetOf(...rows)))
    expect([newer.notes, newer.joined]).toEqual([['Counted.', 'Weighed.'], 1])
  })

  test('is calculated once it is there, and not cell by cell.', async () => {
    const written = host.rawContents.length
    await port.add(bookOf(sheetOf([{ value: 1 }, { formula: '=A1' }])))
    expect(host.suspended).toEqual([written])
  })

  test('keeps texts that Excel would read as numbers, days, truths or formulas.', async () => {
    const texts = [
      '60',
      '5%',
      '1-2',
      'March 5',
      'TRUE',
      '=1+1',
      "'tis",
      '–',
      'EUR a liner',
      '#N/A',
      'Rooting counts everything up to the 1st rooted plant, and nothing after it',
    ]
    await port.add(bookOf(sheetOf(texts.map((value): Cell => ({ value })))))
    expect([...host.sheet('Trial').cells.values()].map(({ value }) => value)).toEqual(texts)
    expect(host.rawContents).not.toContain("'EUR a liner")
    expect(host.rawContents).toEqual(expect.arrayContaining(["'March 5", "'1-2", "'TRUE", "''tis", "'#N/A"]))
  })

  test('goes in one message after the question what is there, if it is as short as a season: that is one undo in any Excel.', async () => {
    await port.add(demoSeason())
    expect(host.messages).toHaveLength(2)
  })

  test('is sent in messages below 5 MB, however long it is, and arrives whole.', async () => {
    const long = 'Rates multiply, losses divide – '.repeat(30)
    const rows = Array.from({ length: 12_000 }, (_, row): Cell[] => [
      { value: `${long}${row}` },
      { formula: `=A${row + 1}`, format: '0.0', look: 'input' },
    ])
    await port.add(bookOf(sheetOf(...rows)))
    expect(Math.max(...host.messages)).toBeLessThan(5 * 1024 * 1024)
    expect(host.messages.reduce((sum, length) => sum + length)).toBeGreaterThan(10 * 1024 * 1024)
    const { cells } = host.sheet('Trial')
    expect(cells.size).toBe(24_000)
    expect(cells.get('A12000')?.value).toBe(`${long}11999`)
    expect(host.sheet('Trial').appearance.get('B12000')?.get('Font.Color')).toBeDefined()
  })
})

describe('the tables of a book', () => {
  const table = (name: string) =>
    host
      .sheetNames()
      .flatMap((sheet) => host.sheet(sheet).tables)
      .find((one) => one.name === name)

  test('become real ones with their headings and filters, in a plain style without stripes, and grow with a line that is added.', async () => {
    const season = demoSeason()
    await port.add(season)
    expect(host.tableNames()).toEqual(season.sheets.flatMap(({ tables = [] }) => tables.map(({ name }) => name)))
    const lines = vellimoor.orders.length + vellimoor.open.orders
    const columns = 1 + Object.keys({ ...orders.typed, ...orders.results }).length
    expect(table('OrdersTable')).toMatchObject({ left: 0, columns, rows: 1 + lines })
    expect(Object.fromEntries(table('OrdersTable')!.settings)).toEqual({
      Style: 'TableStyleLight1',
      ShowBandedRows: false,
      ShowFilterButton: true,
    })
    await port.insertRows(lastRowOf(orders, season.names)!, 2)
    expect(table('OrdersTable')).toMatchObject({ rows: 1 + lines + 2 })
  })

  test('stay plain cells where Excel would change or refuse them.', async () => {
    const rows: Cell[][] = [
      [{ value: 'Price' }, { value: 'price' }, { value: 'Unit' }, {}, { value: 'Litres' }],
      [
        { value: 1 },
        { value: 2 },
        { value: 'L' },
        { value: 3 },
        { formula: '=STICK.BLENDPARTS(1,A2:B2,0)', spills: true },
      ],
      [{ value: 4 }, { value: 5 }, { value: 'L' }, { value: 6 }],
    ]
    const named = (name: string, range: string) => ({ name, range })
    await port.add(
      bookOf({
        ...sheetOf(...rows),
        tables: [
          named('Alike', 'A1:B3'),
          named('Missing', 'C1:D3'),
          named('Spilling', 'E1:E3'),
          named('Empty', 'C1:C1'),
          named('Sound', 'B1:C3'),
          named('Over', 'A1:B2'),
        ],
      }),
    )
    expect(host.tableNames()).toEqual(['Sound'])
  })

  test.each([
    ['over another one', 'B2:C4'],
    ['without a heading', 'E1:F3'],
    ['with two headings alike', 'G1:H3'],
    ['with a formula that spills', 'I1:I3'],
    ['of headings alone', 'A9:B9'],
  ])('are refused by the Excel of these tests %s, so that none of them passes there unseen.', async (_, address) => {
    for (const [cell, content] of Object.entries({
      B2: 'One',
      C2: 'Two',
      E1: 'Price',
      G1: 'Unit',
      H1: 'unit',
      I1: 'Litres',
      I2: '=STICK.BLENDPARTS(1,A2:B2,0)',
      A9: 'Left',
      B9: 'Right',
    }))
      host.type(cell, content)
    host.addTable('Mine', 'First', 'A1:B3')
    await expect(
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem('Mine').tables.add(address, true)
        await context.sync()
      }),
    ).rejects.toMatchObject({ code: 'InvalidArgument' })
    expectAsBefore('First')
  })
})

describe('a workbook stays as it was, and the refusal says why, where', () => {
  test('its structure is protected.', async () => {
    host.structureProtected = true
    await expect(port.add(demoSeason())).rejects.toMatchObject({ code: 'protectedWorkbook' })
    expectAsBefore()
  })

  test('a table has the name.', async () => {
    host.addTable('Mine', 'ordermethod', 'C1:D2')
    await expect(port.add(demoSeason())).rejects.toMatchObject({ code: 'nameTaken', detail: 'the name OrderMethod' })
    expectAsBefore('ordermethod')
  })

  test('a name or a table has the name of one of its tables.', async () => {
    host.names.set('orderstable', { sheet: 'Mine', address: 'A1' })
    await expect(port.add(demoSeason())).rejects.toMatchObject({ code: 'nameTaken', detail: 'the table OrdersTable' })
    host.names.delete('orderstable')
    host.addTable('Mine', 'MediaTABLE', 'C1:D2')
    await expect(port.add(demoSeason())).rejects.toMatchObject({ code: 'nameTaken', detail: 'the table MediaTable' })
    expectAsBefore('MediaTABLE')
  })

  test('a formula reads a sheet that is nowhere.', async () => {
    await expect(port.add(bookOf(sheetOf([{ formula: '=Nowhere!A1' }])))).rejects.toMatchObject({
      code: 'bookRefused',
      detail: 'InvalidArgument Excel says no.',
    })
    expectAsBefore()
  })

  test('Excel fails half-way, wherever that is.', async () => {
    const season = demoSeason()
    const actionsOfSeason = await actionsToAdd(season)
    // The first message only asks what is there.
    for (const share of [0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.99]) {
      host.failingAfter = Math.round(share * actionsOfSeason)
      await expect(port.add(season), `after ${share} of the actions`).rejects.toMatchObject({ code: 'bookRefused' })
      expect(host.failingAfter).toBe(Infinity)
      expectAsBefore()
    }
    await port.add(season)
    expect(host.sheetNames()).toEqual(['Mine', ...season.sheets.map(({ name }) => name)])
  })

  test('the user begins to type between two messages; what was added goes once the typing has ended.', async () => {
    host.typingAfter = 200
    await expect(port.add(demoSeason())).rejects.toMatchObject({ code: 'cellEditMode' })
    expectAsBefore()
  })
})

test('What Excel does not let go of again is named.', async () => {
  host.keeps = true
  await expect(
    port.add(bookOf(sheetOf([{ value: 1 }]), { ...bare, name: 'Prices [old]', rows: [] })),
  ).rejects.toMatchObject({ code: 'partLeft', detail: 'the sheet Trial and the sheet Prices [old]' })
})

describe('a row that is inserted', () => {
  const lines: Book = {
    names: [],
    sheets: [
      sheetOf([{ value: 'Liners' }], [{ value: 5 }, { formula: '=A2*2' }], [{ value: 6 }, { formula: '=A3*2' }]),
    ],
  }
  const contents = () =>
    Object.fromEntries([...host.sheet('Trial').cells].map(([address, { formula }]) => [address, formula]))

  test('goes again if it cannot be filled.', async () => {
    await port.add(lines)
    const before = contents()
    host.keeps = true
    await expect(port.insertRows({ sheet: 'Trial', address: 'A3' }, 2)).rejects.toMatchObject({
      code: 'hostFailed',
      detail: 'GeneralException Excel says no.',
    })
    expect(contents()).toEqual(before)
  })

  test('is refused by a protected sheet, which stays as it was.', async () => {
    await port.add(lines)
    const before = contents()
    host.sheet('Trial').protected = true
    await expect(port.insertRows({ sheet: 'Trial', address: 'A3' }, 2)).rejects.toMatchObject({
      code: 'protectedSheet',
    })
    expect(contents()).toEqual(before)
  })
})
