/** Names of Excel that are not simply those of cells of the workbook, through Microsoft's own client. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { cellsRead } from '../../src/workbook/working/cellsRead'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const port = excelPort(new CallLog())

beforeEach(() => {
  host = new ExcelHost('Prices', 'Plan 2', 'Other')
  Object.assign(globalThis, host.start())
  host.select('B4', 'Prices')
  host.type('B4', 0.65)
  host.select('C1', 'Plan 2')
  host.type('C1', 0.9)
  host.names.set('Rate', { sheet: 'Prices', address: '$B$4' })
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

const read = async (formula: string, sheet: string) => {
  host.select('E1', sheet)
  host.type('E1', formula, 1)
  const cell = await port.selectedCell()
  const cells = cellsRead(cell.formula, cell.sheet, await port.names())
  return { formula: cell.formula, cells: cells.map(({ sheet: of, address }) => `${of}!${address}`) }
}

describe('a name that one sheet has for itself', () => {
  beforeEach(() => host.sheet('Plan 2').names.set('Rate', "='Plan 2'!$C$1"))

  test('goes there before one of the workbook that is called the same, and nowhere else.', async () => {
    expect(await read('=Rate*2', 'Plan 2')).toEqual({ formula: "='Plan 2'!$C$1*2", cells: ['Plan 2!C1'] })
    expect(await read('=RATE*2', 'Other')).toEqual({ formula: '=RATE*2', cells: ['Prices!B4'] })
    expect(await port.valuesOf('Rate', 'Plan 2')).toEqual([[0.9]])
    expect(await port.valuesOf('Rate', 'Other')).toEqual([[0.65]])
  })

  test('is read with its sheet before it too, and is no name of the workbook.', async () => {
    expect((await read("='Plan 2'!Rate*2", 'Plan 2')).cells).toEqual(['Plan 2!C1'])
    expect((await port.names()).map(({ name }) => name)).toEqual(['Rate'])
  })

  test('is known to all that reads the workbook, or some rows of it.', async () => {
    await read('=STICK.BAGS(Rate,60)', 'Plan 2')
    const formula = "=STICK.BAGS('Plan 2'!$C$1,60)"
    const ofSheet = (await port.read()).sheets.find(({ name }) => name === 'Plan 2')
    expect(ofSheet?.cells.get('E1')?.formula).toBe(formula)
    expect((await port.readRows('Plan 2', 0, 0))?.cells.get('E1')?.formula).toBe(formula)
    // Its formula is said as it was read, and so it is known when a cell is changed.
    await port.putCells([{ sheet: 'Plan 2', address: 'E1', was: formula, now: { value: 1 } }])
    expect(host.sheet('Plan 2').cells.get('E1')?.value).toBe(1)
  })

  test('may stand for a number: there are no cells then, and not those of the name of the workbook.', async () => {
    host.sheet('Plan 2').names.set('Rate', '=0.05')
    expect(await read('=2*Rate', 'Plan 2')).toEqual({ formula: '=2*(0.05)', cells: [] })
    expect(await port.valuesOf('Rate', 'Plan 2')).toBeUndefined()
  })

  test('gives way to what LET calls so.', async () => {
    expect((await read('=LET(Rate,2,Rate*3)', 'Plan 2')).formula).toBe('=LET(Rate,2,Rate*3)')
  })

  test('is looked for nowhere where its sheet was renamed or is gone.', async () => {
    expect(await port.valuesOf('Rate', 'Season')).toEqual([[0.65]])
  })
})

test('A name that stands for a column of a table is a name of its cells.', async () => {
  for (const [address, content] of Object.entries({ A1: 'Line', A2: 1, A3: 2, A4: 3 })) {
    host.select(address, 'Other')
    host.type(address, content)
  }
  host.addTable('Other', 'OrderBook', 'A1:A4')
  host.columnNames.set('Lines', 'OrderBook[Line]')
  expect(await port.names()).toContainEqual({ name: 'Lines', refersTo: 'Other!$A$2:$A$4' })
  expect((await port.read()).names).toContainEqual({ name: 'Lines', refersTo: 'Other!$A$2:$A$4' })
})
