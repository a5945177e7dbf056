/** References to tables, which Excel writes where a user points into one, through Microsoft's own client. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { catalogue } from '../../src/functions/catalogue'
import { checkBook } from '../../src/workbook/check/checkBook'
import { cellsRead } from '../../src/workbook/working/cellsRead'
import { english } from '../../src/wording/en/words'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const log = new CallLog()
const port = excelPort(log)

beforeEach(() => {
  host = new ExcelHost('Orders', 'Plan')
  Object.assign(globalThis, host.start())
  const contents = {
    B3: 'Line',
    C3: 'Cuttings',
    D3: 'Bags',
    B4: 1,
    C4: 300,
    B5: 2,
    C5: 600,
    B6: 3,
    C6: 900,
    B7: 'Sum',
    C7: 1800,
  }
  for (const [address, content] of Object.entries(contents)) host.type(address, content)
  for (const row of [4, 5, 6]) host.type(`D${row}`, '=STICK.BAGS([@Cuttings],60)', row)
  host.addTable('Orders', 'OrderBook', 'B3:D7', true)
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

const addressesRead = async () => {
  const { formula, sheet } = await port.selectedCell()
  return cellsRead(formula, sheet, await port.names()).map((cells) => `${cells.sheet}!${cells.address}`)
}

describe('a formula that points into a table', () => {
  test.each([
    ['[@Cuttings]', 'D5', 'Orders', ['Orders!C5']],
    ['OrderBook[@Cuttings]', 'F5', 'Orders', ['Orders!C5']],
    ['OrderBook[[#This Row],[Cuttings]]', 'F5', 'Orders', ['Orders!C5']],
    ['OrderBook[Cuttings]', 'A1', 'Plan', ['Orders!C4:C6']],
    ['OrderBook[[#Headers],[Cuttings]]', 'A1', 'Plan', ['Orders!C3']],
    ['OrderBook[[#Totals],[Cuttings]]', 'A1', 'Plan', ['Orders!C7']],
    ['OrderBook[[Cuttings]:[Bags]]', 'A1', 'Plan', ['Orders!C4:D6']],
    ['OrderBook[#All]', 'A1', 'Plan', ['Orders!B3:D7']],
  ])('%s tells the working which cells it reads.', async (reference, address, sheet, read) => {
    host.select(address, sheet)
    host.type(address, `=SUM(${reference})`, 1)
    host.select(address, sheet)
    expect(await addressesRead()).toEqual(read)
  })

  test('reads the same row of the table in each of its rows, so that Check finds no row that differs.', async () => {
    const book = await port.read()
    expect(['D4', 'D5', 'D6'].map((address) => book.sheets[0]!.cells.get(address)?.formula)).toEqual([
      '=STICK.BAGS($C4,60)',
      '=STICK.BAGS($C5,60)',
      '=STICK.BAGS($C6,60)',
    ])
    expect(checkBook(book, catalogue, english.found)).toEqual([])
  })

  test('passes on an error, and Check says from which cell.', async () => {
    host.select('C5', 'Orders')
    host.type('C5', '=1/0', '#DIV/0!')
    host.type('D5', '=STICK.BAGS([@Cuttings],60)', '#DIV/0!')
    const [, second] = checkBook(await port.read(), catalogue, english.found)
    expect(second).toMatchObject({ address: 'D5', sentence: english.found.follows('#DIV/0!', 1, 'Orders!C5') })
  })

  test('is changed where it still stands, and comes back as it was written where Excel fails.', async () => {
    const change = {
      sheet: 'Orders',
      address: 'D5',
      was: '=STICK.BAGS($C5,60)',
      now: { formula: '=ROUNDUP($C5/60,0)' },
    }
    const both = [change, { sheet: 'Plan', address: 'A1', now: { value: 5 } }]
    for (let after = 1; after < 100; after += 1) {
      host.failingAfter = after
      const done = await port.putCells(both).then(
        () => true,
        () => false,
      )
      host.failingAfter = Infinity
      if (done) break
      expect(host.sheet('Orders').cells.get('D5')?.formula, `after ${after} actions`).toBe(
        '=STICK.BAGS([@Cuttings],60)',
      )
    }
    expect(host.sheet('Orders').cells.get('D5')?.formula).toBe('=ROUNDUP($C5/60,0)')
  })
})
