/** Changes cells of Excel through Microsoft's own client, with what can go wrong on the way. */
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import type { CellChange } from '../../src/workbook/port'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost
const port = excelPort(new CallLog())

beforeEach(() => {
  host = new ExcelHost('Mine')
  Object.assign(globalThis, host.start())
  host.type('A1', 'kept')
  for (const row of [2, 3, 4]) host.type(`A${row}`, `=STICK.BAGS(B${row},60)`, row)
})
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

/** Three rows, each of which is an order of its own to Excel; the second also empties what it spilled. */
const changes: readonly CellChange[] = [
  { address: 'A2', was: '=STICK.BAGS(B2,60)', now: { value: 2 } },
  { address: 'A3', was: '=STICK.BAGS(B3,60)', now: { value: '3-4' } },
  { address: 'B3', now: { value: 'spilled' } },
  { address: 'A4', was: '=STICK.BAGS(B4,60)', now: { formula: '=ROUNDUP(B4/60,0)' } },
]

const contents = () => Object.fromEntries([...host.sheet('Mine').cells].map(([address, { formula }]) => [address, formula]))

const before = { A1: 'kept', A2: '=STICK.BAGS(B2,60)', A3: '=STICK.BAGS(B3,60)', A4: '=STICK.BAGS(B4,60)' }

test('Excel changes the cells, and keeps a text that it would read as a day.', async () => {
  await port.putCells('Mine', changes)
  expect(contents()).toEqual({ A1: 'kept', A2: 2, A3: '3-4', B3: 'spilled', A4: '=ROUNDUP(B4/60,0)' })
  expect(host.rawContents).toContain("'3-4")
})

test('Excel is sent nothing where nothing is to change.', async () => {
  await port.putCells('Mine', [])
  expect(host.messages).toEqual([])
})

test('Excel gives what a formula of ours fills, where it fills more than its own cell.', async () => {
  host.spills.set('Mine!A2', 'A2:B3').set('Mine!A3', 'A3')
  const { cells } = (await port.read()).sheets[0]!
  expect([...cells.values()].map(({ spill }) => spill)).toEqual([undefined, 'A2:B3', undefined, undefined])
})

test('More cells than fit into one message of Excel are changed in several, and all arrive.', async () => {
  const rows = 3000
  const long = '"rates multiply, losses divide"&'.repeat(60)
  for (let row = 1; row <= rows; row += 1) host.sheet('Mine').cells.set(`A${row}`, { formula: '=STICK.UNITS(1,"L","m3")', value: 1 })
  host.messages.length = 0
  await port.putCells('Mine', Array.from({ length: rows }, (_, row) => ({ address: `A${row + 1}`, was: '=STICK.UNITS(1,"L","m3")', now: { formula: `=${long}${row}` } })))
  expect(Math.max(...host.messages)).toBeLessThan(5 * 1024 * 1024)
  expect(host.formulaAt(`A${rows}`)).toBe(`=${long}${rows - 1}`)
})

describe('cells stay as they were, and the refusal says why, where', () => {
  test('the sheet is protected.', async () => {
    host.protect()
    await expect(port.putCells('Mine', changes)).rejects.toMatchObject({ code: 'protectedSheet' })
    expect(contents()).toEqual(before)
  })

  test('Excel fails half-way, wherever that is.', async () => {
    const other = new ExcelHost('Mine')
    Object.assign(globalThis, other.start())
    for (const [address, formula] of Object.entries(before)) other.type(address, formula)
    other.failingAfter = 1e9
    await port.putCells('Mine', changes)
    const actions = 1e9 - other.failingAfter
    expect(actions).toBeGreaterThan(6)
    Object.assign(globalThis, host.start())
    for (let after = 0; after < actions; after += 1) {
      host.failingAfter = after
      await expect(port.putCells('Mine', changes), `after ${after} of ${actions} actions`).rejects.toMatchObject({ code: 'hostFailed' })
      expect(contents()).toEqual(before)
    }
  })

  test('the user begins to type after the first of them; it goes back once the typing has ended.', async () => {
    for (const after of [2, 4, 6, 8]) {
      host.typingAfter = after
      await expect(port.putCells('Mine', changes)).rejects.toMatchObject({ code: 'cellEditMode' })
      host.editing = false
      expect(contents()).toEqual(before)
    }
  })
})

test('What Excel does not change back is named.', async () => {
  host.failingAfter = 8
  host.failsForGood = true
  await expect(port.putCells('Mine', changes)).rejects.toMatchObject({ code: 'partChanged', detail: 'A2:B4 on Mine' })
})
