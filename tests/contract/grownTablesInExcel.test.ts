/** Tables of Excel that grow by a line typed below them, and columns that Excel fills by itself. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { addressOf } from '../../src/formula/address'
import type { Book } from '../../src/workbook/book'
import type { CellChange } from '../../src/workbook/port'
import { realTables } from '../../src/workbook/realTables'
import { vellimoor } from '../../src/workbook/season/data/vellimoor'
import { season } from '../../src/workbook/season/season'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const port = excelPort(new CallLog())

beforeEach(() => {
  host = new ExcelHost('Mine')
  Object.assign(globalThis, host.start())
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

describe('a line that a user types below each table of the season', () => {
  const before = season(vellimoor)
  const oneRowMore = Object.fromEntries(Object.entries(vellimoor.open).map(([table, open]) => [table, open + 1]))
  const expected = season({ ...vellimoor, open: oneRowMore as typeof vellimoor.open })
  /** Where its first typed cell is. */
  const typedAt = before.sheets.flatMap((sheet) =>
    realTables(sheet).map(({ bottom, left }) => ({ sheet: sheet.name, address: addressOf(bottom + 1, left + 1) })),
  )
  const typeAll = async () => {
    await port.add(before)
    for (const { sheet, address } of typedAt) {
      host.select('A1', sheet)
      host.type(address, 'new')
    }
  }
  const formulasOf = ({ sheets }: Book) =>
    sheets.flatMap(({ name, rows }) =>
      rows.flatMap((cells, row) =>
        cells.flatMap((cell, column) => (cell?.formula ? `${name}!${addressOf(row, column)} ${cell.formula}` : [])),
      ),
    )

  test('is one of its rows: the workbook then has the formulas and names of a season that was made with it.', async () => {
    await typeAll()
    expect(typedAt).toHaveLength(14)
    const { sheets, names } = await port.read()
    const formulas = sheets.flatMap(({ name, cells }) =>
      [...cells].flatMap(([address, { formula }]) => (formula === '' ? [] : `${name}!${address} ${formula}`)),
    )
    expect(new Set(formulas)).toEqual(new Set(formulasOf(expected)))
    // What a formula spills may be longer than it was: grownTables.test.ts has what reads it.
    const isTyped = ({ refersTo }: { readonly refersTo: string }) => !/^(Compare|Risk|Cheapest)!/.test(refersTo)
    expect(new Map(names.filter(isTyped).map(({ name, refersTo }) => [name, refersTo]))).toEqual(
      new Map(expected.names.filter(isTyped).map(({ name, refersTo }) => [name, refersTo])),
    )
  })

  test('takes what the rows above it take, with the same lists, and the lists of other tables offer it.', async () => {
    await typeAll()
    const row = 9 + vellimoor.orders.length + vellimoor.open.orders
    const ruleAt = (address: string) => host.sheet('Orders').appearance.get(address)?.get('validation.Rule')
    // The method of an order is chosen from those on Methods, whose names now reach to the new one.
    expect(ruleAt(`G${row}`)).toEqual({ list: { inCellDropDown: true, source: '=MethodName' } })
    expect(ruleAt(`E${row}`)).toEqual(ruleAt(`E${row - 1}`))
    expect(host.names.get('MethodName')).toEqual({
      sheet: 'Methods',
      address: `$B$22:$B$${22 + vellimoor.methods.length + vellimoor.open.methods}`,
    })
  })
})

describe('a formula that is put into a calculated column', () => {
  const bags = (row: number) => `=STICK.BAGS(C${row},60)`
  const plain = (row: number, litres = 60): CellChange => ({
    sheet: 'Orders',
    address: `D${row}`,
    was: bags(row),
    now: { formula: `=ROUNDUP(C${row}/${litres},0)` },
  })
  const begin = () => {
    host = new ExcelHost('Orders', 'Theirs')
    Object.assign(globalThis, host.start())
    const headings = { B3: 'Line', C3: 'Cuttings', D3: 'Bags' }
    for (const [address, heading] of Object.entries(headings)) host.type(address, heading)
    for (const row of [4, 5, 6, 7]) {
      host.type(`C${row}`, 60 * row)
      host.type(`D${row}`, bags(row), row)
    }
    host.addTable('Orders', 'OrderBook', 'B3:D7')
    return host
  }
  beforeEach(begin)
  const column = () => [4, 5, 6, 7].map((row) => host.sheet('Orders').cells.get(`D${row}`)?.formula)
  const before = [4, 5, 6, 7].map(bags)

  test('fills it in the Excel of these tests, which loses what else stood there, so that none passes unseen.', async () => {
    host.type('D6', '1-2')
    await port.putFormula('=C5*2', { sheet: 'Orders', address: 'D5' })
    expect(column()).toEqual(['=C4*2', '=C5*2', '=C6*2', '=C7*2'])
  })

  test('changes the cells that were agreed on and no others, nor a text or an error value that was typed there.', async () => {
    await port.putCells([plain(5)])
    expect(column()).toEqual([bags(4), '=ROUNDUP(C5/60,0)', bags(6), bags(7)])
    begin()
    host.type('D6', '1-2')
    host.type('D7', '#N/A')
    await port.putCells([plain(4), plain(5, 70)])
    expect(column()).toEqual(['=ROUNDUP(C4/60,0)', '=ROUNDUP(C5/70,0)', '1-2', '#N/A'])
    expect(host.rawContents.slice(-2)).toEqual(["'1-2", '#N/A'])
  })

  test('goes beside values, and with changes of another column and another sheet.', async () => {
    host.select('A1', 'Theirs')
    host.type('A1', '=STICK.BAGS(1,60)', 1)
    await port.putCells([
      plain(4),
      { sheet: 'Orders', address: 'D5', was: bags(5), now: { value: 5 } },
      { sheet: 'Orders', address: 'C5', now: { value: 301 } },
      { sheet: 'Theirs', address: 'A1', was: '=STICK.BAGS(1,60)', now: { formula: '=1' } },
    ])
    expect(column()).toEqual(['=ROUNDUP(C4/60,0)', 5, bags(6), bags(7)])
    expect(host.sheet('Orders').cells.get('C5')?.value).toBe(301)
    expect(host.sheet('Theirs').cells.get('A1')?.formula).toBe('=1')
  })

  test('asks for no tables where only values are put.', async () => {
    await port.putCells([{ sheet: 'Orders', address: 'D5', was: bags(5), now: { value: 5 } }])
    expect(host.messages).toHaveLength(2)
    expect(column()).toEqual([bags(4), 5, bags(6), bags(7)])
  })

  test('is taken back, and the refusal names the column, where Excel fills it all the same.', async () => {
    host.fillsAlways = true
    await expect(port.putCells([plain(5)])).rejects.toMatchObject({ code: 'columnFilled', detail: 'D4:D7 on Orders' })
    expect(column()).toEqual(before)
    // Two formulas that would be one; none of the others is changed then.
    const all = [plain(4, 70), plain(5), plain(6), plain(7)]
    await expect(port.putCells(all)).rejects.toMatchObject({ code: 'columnFilled' })
    expect(column()).toEqual(before)
  })

  test('leaves the row of totals alone, and a sheet whose neighbour has a table at the same place.', async () => {
    host.sheet('Orders').tables.splice(0)
    host.type('D8', '=SUM(D4:D7)', 22)
    host.addTable('Orders', 'OrderBook', 'B3:D8', true)
    host.fillsAlways = true
    await expect(port.putCells([plain(5)])).rejects.toMatchObject({ code: 'columnFilled', detail: 'D4:D7 on Orders' })
    host.fillsAlways = false
    host.select('A1', 'Theirs')
    host.type('D5', '=1+1', 2)
    host.type('D6', 'a note')
    const written = host.rawContents.length
    await port.putCells([{ sheet: 'Theirs', address: 'D5', was: '=1+1', now: { formula: '=2' } }])
    expect(host.rawContents.slice(written)).toEqual(['=2'])
    expect(host.sheet('Orders').cells.get('D8')?.formula).toBe('=SUM(D4:D7)')
  })

  test('is named where Excel does not give back what it has filled.', async () => {
    host.type('D7', '=C7*3', 1)
    host.sheet('Orders').cells.set('D4', { formula: bags(4), value: 4 })
    host.fillsAlways = true
    await expect(port.putCells([plain(4)])).rejects.toMatchObject({ code: 'partChanged', detail: 'D4:D7 on Orders' })
  })

  test('is named where Excel fills blank cells alone, as it did in issue 1916 of office-js.', async () => {
    host.type('D6', '1-2')
    host.sheet('Orders').cells.delete('D7')
    host.fillsAlways = true
    await expect(port.putCells([plain(5)])).rejects.toMatchObject({ code: 'partChanged', detail: 'D4:D7 on Orders' })
  })

  test('is taken back where Excel fails half-way, wherever that is, and refused by a protected sheet.', async () => {
    host.failingAfter = 1e9
    await port.putCells([plain(5)])
    const actions = 1e9 - host.failingAfter
    expect(actions).toBeGreaterThan(10)
    begin()
    for (let after = 0; after < actions; after += 1) {
      host.failingAfter = after
      await expect(port.putCells([plain(5)]), `after ${after}`).rejects.toMatchObject({ code: 'hostFailed' })
      expect(column()).toEqual(before)
    }
    host.failingAfter = Infinity
    host.protect()
    await expect(port.putCells([plain(5)])).rejects.toMatchObject({ code: 'protectedSheet' })
    expect(column()).toEqual(before)
  })
})
