/** What is asked at once goes to Excel at once: on the web each message goes to a server and back. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const log = new CallLog()
const port = excelPort(log)

beforeEach(() => {
  host = new ExcelHost('Orders', 'Prices')
  Object.assign(globalThis, host.start())
  host.type('A1', 650)
  host.type('B1', '=STICK.BAGS(A1,60)', 11)
  host.select('A1', 'Prices')
  host.type('A1', '=STICK.BAGPRICE()', 9)
  host.type('A2', 60)
  host.names.set('Litres', { sheet: 'Orders', address: 'A1' })
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

async function messagesFor<T>(asking: () => Promise<T>): Promise<readonly [answer: T, messages: number]> {
  const before = host.messages.length
  const answer = await asking()
  return [answer, host.messages.length - before]
}

describe('Excel is asked in one message', () => {
  test('for the values of several references, for the names and for the calls of the selected cell.', async () => {
    log.made('Prices!A1', { id: 'BAGS', args: [1, 60] })
    const [answers, messages] = await messagesFor(() =>
      Promise.all([
        port.valuesOf('Litres', 'Prices'),
        port.valuesOf('A2', 'Prices'),
        port.names(),
        port.callsOfSelectedCell(),
      ]),
    )
    expect(answers).toEqual([
      [[650]],
      [[60]],
      [{ name: 'Litres', refersTo: 'Orders!A1' }],
      [{ id: 'BAGS', args: [1, 60] }],
    ])
    expect(messages).toBe(1)
  })

  test('and for each by itself where one is refused, which is no fault of the others.', async () => {
    const [answers] = await messagesFor(() =>
      Promise.all([port.valuesOf('Nowhere!A1', 'Prices'), port.valuesOf('A2', 'Prices')]),
    )
    expect(answers).toEqual([undefined, [[60]]])
  })

  test('for the places of rows of several sheets, in one for what stands there, and in one for what it fills.', async () => {
    host.spills.set('Orders!B1', 'B1:B2')
    const [[orders, prices, none], messages] = await messagesFor(() =>
      Promise.all([port.readRows('orders', 0, 0), port.readRows('Prices', 1, 1), port.readRows('Gone', 0, 0)]),
    )
    expect([...orders!.cells.keys()]).toEqual(['A1', 'B1'])
    expect(orders!.cells.get('B1')?.spill).toBe('B1:B2')
    expect([prices!.name, prices!.cells.get('A2')?.value]).toEqual(['Prices', 60])
    expect(none).toBeUndefined()
    expect(messages).toBe(3)
  })

  test('for all small sheets of a workbook, and for those that are too large together one by one.', async () => {
    host.spills.set('Prices!A1', 'A1:A2')
    const [book, messages] = await messagesFor(() => port.read())
    expect(book.sheets.map(({ name, cells }) => [name, cells.size])).toEqual([
      ['Orders', 2],
      ['Prices', 2],
    ])
    expect(book.sheets[1]!.cells.get('A1')).toMatchObject({ formula: '=STICK.BAGPRICE()' })
    // What there is, where it stands, what it is, and what it fills.
    expect(messages).toBe(4)
    const before = host.messages.length
    for (const sheet of ['Orders', 'Prices']) host.sheet(sheet).cells.set('T700', { formula: 'x', value: 'x' })
    await port.read()
    // 14,000 cells each, where 20,000 are asked for at once.
    expect(host.messages.length - before).toBe(6)
  })
})
