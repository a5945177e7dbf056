/** "Try this Excel" through Microsoft's own client. The host behind it shows what the engine of the workbench calculates. */
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { isCellError } from '../../src/core/definition/problem'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { casesFor, columnOfFormulas, sheetFor } from '../../src/workbook/trial/cases'
import { tryHost } from '../../src/workbook/trial/tryHost'
import { addressOf } from '../../src/formula/address'
import { ExcelHost } from './ExcelHost'

const sheet = 'Sticksheet try'
const cases = casesFor('excel')
const ofTable = cases.find(({ what }) => what.includes('table'))!
const port = excelPort(new CallLog())
let host: ExcelHost
let results: Map<string, string | number | boolean>

beforeAll(async () => {
  Object.defineProperty(globalThis, 'navigator', { value: { userAgent: 'of the test' }, configurable: true })
  const { cells } = (await calculateBook({ names: [], sheets: [sheetFor(sheet, cases)] })).sheets[0]!
  results = new Map(
    [...cells].flatMap(([address, { value }]) =>
      value === null ? [] : [[address, isCellError(value) ? value.code : value] as const],
    ),
  )
  results.set(addressOf(ofTable.row, columnOfFormulas), 5)
}, 120_000)
beforeEach(() => {
  host = new ExcelHost('Mine')
  Object.assign(globalThis, host.start())
  host.type('A1', 7)
  host.results.set(sheet, results)
})
afterAll(() => {
  for (const name of ['Excel', 'Office', 'navigator']) Reflect.deleteProperty(globalThis, name)
})

test('All cases hold, the report says in which Excel, and the sheet is gone, with the cell selected that was.', async () => {
  host.select('C9')
  const { wrong, report, cases: count } = await tryHost(port)
  expect(wrong).toEqual([])
  expect(report.split('\n')).toEqual([
    'Sticksheet tried in Excel',
    'Version: 16.0.1, platform: OfficeOnline',
    'ExcelApi: 1.17',
    'CustomFunctionsRuntime: 1.17',
    'Language of Excel: en-US, of the workbook: de-DE',
    'Browser: of the test',
    `${count} of ${count} cases hold.`,
  ])
  expect(host.calculations).toEqual(['Full'])
  expect([host.sheetNames(), host.tableNames(), host.formulaAt('A1')]).toEqual([['Mine'], [], 7])
  expect(await port.selectedCell()).toMatchObject({ sheet: 'Mine', address: 'C9' })
})

test('A case that does not hold is in the report with its formula and what the cell shows.', async () => {
  host.results.set(sheet, new Map([...results, ['B1', '#NAME?']]))
  const { wrong, report } = await tryHost(port)
  expect(wrong).toEqual([
    {
      what: 'a blank cell for what may be left out',
      formula: '=STICK.BAGS(300,60,AA1)',
      shows: 'B1 shows #NAME?, not 5',
    },
  ])
  expect(report).toContain(
    '- a blank cell for what may be left out\n  =STICK.BAGS(300,60,AA1)\n  B1 shows #NAME?, not 5',
  )
})

test('The formula that reads a table is written once the table is there.', async () => {
  host.keeps = true
  await tryHost(port).catch(() => undefined)
  const { tables, cells } = host.sheet(sheet)
  expect(tables.map(({ name }) => name)).toEqual(['SticksheetTry'])
  expect(cells.get(addressOf(ofTable.row, columnOfFormulas))?.formula).toBe('=SUM(SticksheetTry[Bags])')
})

test('The sheet goes where something fails on the way too, and the failure is told.', async () => {
  const { calculate } = port
  const failing = { ...port, calculate: () => calculate().then(() => Promise.reject(new Error('interrupted'))) }
  await expect(tryHost(failing)).rejects.toThrow('interrupted')
  expect(host.sheetNames()).toEqual(['Mine'])
})
