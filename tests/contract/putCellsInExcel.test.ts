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
  { sheet: 'Mine', address: 'A2', was: '=STICK.BAGS(B2,60)', now: { value: 2 } },
  { sheet: 'Mine', address: 'A3', was: '=STICK.BAGS(B3,60)', now: { value: '3-4' } },
  { sheet: 'Mine', address: 'B3', now: { value: 'spilled' } },
  { sheet: 'Mine', address: 'A4', was: '=STICK.BAGS(B4,60)', now: { formula: '=ROUNDUP(B4/60,0)' } },
]

const contents = () =>
  Object.fromEntries([...host.sheet('Mine').cells].map(([address, { formula }]) => [address, formula]))

const before = { A1: 'kept', A2: '=STICK.BAGS(B2,60)', A3: '=STICK.BAGS(B3,60)', A4: '=STICK.BAGS(B4,60)' }

test('Excel changes the cells, and keeps a text that it would read as a day.', async () => {
  await port.putCells(changes)
  expect(contents()).toEqual({ A1: 'kept', A2: 2, A3: '3-4', B3: 'spilled', A4: '=ROUNDUP(B4/60,0)' })
  // From the top, so that a formula comes before the cells that it would fill.
  expect(host.rawContents.slice(-4)).toEqual([2, "'3-4", 'spilled', '=ROUNDUP(B4/60,0)'])
})

test('What goes in several messages is one undo where Excel can join them, and nothing is asked of one that cannot.', async () => {
  await port.putCells(changes)
  expect(host.joined).toBe(0)
  const newer = new ExcelHost('Mine')
  Object.assign(globalThis, newer.start(20))
  await port.putCells([{ sheet: 'Mine', address: 'C1', now: { value: 5 } }])
  expect(newer.joined).toBe(1)
})

test('Excel is sent nothing where nothing is to change.', async () => {
  await port.putCells([])
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
  for (let row = 1; row <= rows; row += 1)
    host.sheet('Mine').cells.set(`A${row}`, { formula: '=STICK.UNITS(1,"L","m3")', value: 1 })
  host.messages.length = 0
  await port.putCells(
    Array.from({ length: rows }, (_, row) => ({
      sheet: 'Mine',
      address: `A${row + 1}`,
      was: '=STICK.UNITS(1,"L","m3")',
      now: { formula: `=${long}${row}` },
    })),
  )
  expect(Math.max(...host.messages)).toBeLessThan(5 * 1024 * 1024)
  expect(host.formulaAt(`A${rows}`)).toBe(`=${long}${rows - 1}`)
})

describe('cells stay as they were, and the refusal says why, where', () => {
  test('the sheet is protected.', async () => {
    host.protect()
    await expect(port.putCells(changes)).rejects.toMatchObject({ code: 'protectedSheet' })
    expect(contents()).toEqual(before)
  })

  test('Excel fails half-way, wherever that is.', async () => {
    const other = new ExcelHost('Mine')
    Object.assign(globalThis, other.start())
    for (const [address, formula] of Object.entries(before)) other.type(address, formula)
    other.failingAfter = 1e9
    await port.putCells(changes)
    const actions = 1e9 - other.failingAfter
    expect(actions).toBeGreaterThan(6)
    Object.assign(globalThis, host.start())
    for (let after = 0; after < actions; after += 1) {
      host.failingAfter = after
      await expect(port.putCells(changes), `after ${after} of ${actions} actions`).rejects.toMatchObject({
        code: 'hostFailed',
      })
      expect(contents()).toEqual(before)
    }
  })

  test('Excel fails half-way through several sheets, wherever that is.', async () => {
    const onBoth: readonly CellChange[] = [
      ...changes,
      { sheet: 'Theirs', address: 'C1', was: '=1+1', now: { value: 2 } },
    ]
    const begin = () => {
      const begun = new ExcelHost('Mine', 'Theirs')
      Object.assign(globalThis, begun.start())
      for (const [address, formula] of Object.entries(before)) begun.type(address, formula)
      begun.sheet('Theirs').cells.set('C1', { formula: '=1+1', value: 2 })
      begun.failingAfter = 1e9
      return begun
    }
    const whole = begin()
    await port.putCells(onBoth)
    expect(whole.sheet('Theirs').cells.get('C1')?.formula).toBe(2)
    const actions = 1e9 - whole.failingAfter
    expect(actions).toBeGreaterThan(9)
    host = begin()
    for (let after = 0; after < actions; after += 1) {
      host.failingAfter = after
      await expect(port.putCells(onBoth), `after ${after} of ${actions} actions`).rejects.toMatchObject({
        code: 'hostFailed',
      })
      expect(contents()).toEqual(before)
      expect(host.sheet('Theirs').cells.get('C1')?.formula).toBe('=1+1')
    }
  })

  test('the user begins to type after the first of them; it goes back once the typing has ended.', async () => {
    for (const after of [2, 4, 6, 8]) {
      host.typingAfter = after
      await expect(port.putCells(changes)).rejects.toMatchObject({ code: 'cellEditMode' })
      host.editing = false
      expect(contents()).toEqual(before)
    }
  })
})

test('What Excel does not change back is named.', async () => {
  host.failingAfter = 14
  host.failsForGood = true
  await expect(port.putCells(changes)).rejects.toMatchObject({ code: 'partChanged', detail: 'A2:B4 on Mine' })
})
