/** Tables of Excel that grow by a line typed below them, and columns that Excel fills by itself. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { addressOf } from '../../src/formula/address'
import type { Book } from '../../src/workbook/book'
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
