import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { readWorkbook } from '../../src/excel/readWorkbook'
import { catalogue } from '../../src/functions/catalogue'
import { checkBook } from '../../src/workbook/check/checkBook'
import { english } from '../../src/wording/en/words'
import { ExcelHost } from './ExcelHost'
import { portContract, type Scene } from './portContract'

/** The add-in reads Excel from the page that it runs in, so each workbook takes its turn there. */
function use(host: ExcelHost): void {
  Object.assign(globalThis, host.start())
}

const log = new CallLog()
const host = new ExcelHost('Season 1', 'Stop! Prices')
beforeAll(() => use(host))
afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

/** A batch that the client has begun is sent and answered within one turn, so that events are registered after it. */
const oneTurn = () => new Promise((resolve) => setImmediate(resolve))

portContract('Excel', async (): Promise<Scene> => ({
  port: excelPort(log),
  select: async (address) => {
    await oneTurn()
    host.select(address)
  },
  type: async (address, content) => {
    await oneTurn()
    host.select(address)
    host.type(address, content)
  },
  beginTyping: async () => {
    host.editing = true
  },
  cancelTyping: async () => {
    host.editing = false
  },
  close: async () => undefined,
}))

test('Excel gives the address without the sheet, though the name of the sheet holds an exclamation mark.', async () => {
  host.select('C3', 'Stop! Prices')
  expect(await excelPort(log).selectedCell()).toMatchObject({ sheet: 'Stop! Prices', address: 'C3' })
})

test('Going to another sheet counts as selecting another cell.', async () => {
  host.select('A1', 'Season 1')
  const called = new Promise<void>((resolve) => {
    const stop = excelPort(log).onSelectionChange(() => {
      stop()
      resolve()
    })
  })
  await oneTurn()
  host.select('C3', 'Stop! Prices')
  await called
})

test('A protected sheet refuses a formula, and the refusal says so.', async () => {
  host.select('A2', 'Stop! Prices')
  host.protect()
  await expect(excelPort(log).putFormula('=1+1')).rejects.toMatchObject({ name: 'PortProblem', code: 'protectedSheet' })
  expect(host.formulaAt('A2')).toBe('')
})

test('A failure of Excel that has no meaning of its own keeps what Excel said about it.', async () => {
  host.failing = true
  await expect(excelPort(log).selectedCell()).rejects.toMatchObject({
    code: 'hostFailed',
    detail: 'GeneralException Excel says no.',
  })
  host.failing = false
})

describe('the calls of a cell', () => {
  beforeEach(() => {
    log.forgetAll()
    host.select('B4', 'Stop! Prices')
  })

  test('are those that Excel made for it, whichever way Excel spells the cell.', async () => {
    log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
    log.made("'[Season.xlsx]Stop! Prices'!$B$4", { id: 'BAGS', args: [0.65, 60] })
    log.made("'Stop! Prices'!B5", { id: 'BAGS', args: [1, 60] })
    expect(await excelPort(log).callsOfSelectedCell()).toEqual([
      { id: 'FILL', args: [10, 65] },
      { id: 'BAGS', args: [0.65, 60] },
    ])
  })

  test('are not known where Excel made none since the page was loaded.', async () => {
    expect(await excelPort(log).callsOfSelectedCell()).toBeUndefined()
  })

  test('are forgotten once rows move, because they belong to another cell now, and kept when a cell is edited.', async () => {
    const port = excelPort(log)
    const listening = new Promise<() => void>((resolve) => {
      const stop = port.onSelectionChange(() => resolve(stop))
    })
    await oneTurn()
    log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
    host.type('C9', 1)
    host.select('B4')
    expect(await port.callsOfSelectedCell()).toHaveLength(1)
    for (const change of [
      'RowInserted',
      'RowDeleted',
      'ColumnInserted',
      'ColumnDeleted',
      'CellInserted',
      'CellDeleted',
    ] as const) {
      log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
      host.move(change)
      expect(await port.callsOfSelectedCell(), change).toBeUndefined()
    }
    const stop = await listening
    stop()
  })

  test('are forgotten once rows or columns are sorted, which Excel tells by events of their own.', async () => {
    const port = excelPort(log)
    let told = 0
    const stop = port.onSelectionChange(() => (told += 1))
    await oneTurn()
    for (const what of ['Row', 'Column'] as const) {
      log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
      host.sort(what)
      await oneTurn()
      expect(log.of('Stop! Prices!B4'), what).toEqual([])
    }
    expect(told).toBe(2)
    stop()
  })

  test('are forgotten once others change something: Excel then shows what their computers calculated.', async () => {
    const port = excelPort(log)
    let told = 0
    const stop = port.onSelectionChange(() => (told += 1))
    await oneTurn()
    log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
    host.typeElsewhere('Season 1', 'Z99', 5)
    await oneTurn()
    expect(log.of('Stop! Prices!B4')).toEqual([])
    // The cell that is selected here stays, and what the pane shows of it is read anew.
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Stop! Prices', address: 'B4' })
    expect(told).toBe(1)
    log.made("'Stop! Prices'!B4", { id: 'FILL', args: [10, 65] })
    host.move('ColumnInserted', 'Remote')
    host.sort('Row', 'Remote')
    await oneTurn()
    expect(log.of('Stop! Prices!B4')).toEqual([])
    expect(told).toBe(3)
    stop()
  })

  test('are those of a sheet whose name holds an apostrophe, which Excel writes twice.', () => {
    log.made("'Mum''s orders'!B4", { id: 'BAGS', args: [300, 60] })
    expect(log.of("Mum's orders!B4")).toEqual([{ id: 'BAGS', args: [300, 60] }])
  })

  test('are made anew by calculating the workbook.', async () => {
    await excelPort(log).calculate()
    expect(host.calculations).toEqual(['Full'])
  })
})

test('A long session forgets the calls of the cells that were calculated first, and never all of them.', () => {
  const long = new CallLog()
  for (let row = 1; row <= 20_001; row++) long.made(`Season!A${row}`, { id: 'BAGS', args: [row] })
  expect([long.of('Season!A1'), long.of('Season!A2'), long.of('Season!A20001')]).toEqual([
    [],
    [{ id: 'BAGS', args: [2] }],
    [{ id: 'BAGS', args: [20001] }],
  ])
  for (let call = 1; call <= 100; call++) long.made('Season!A2', { id: 'BAGS', args: [call] })
  expect(long.of('Season!A2')).toHaveLength(16)
  expect(long.of('Season!A2').at(-1)).toEqual({ id: 'BAGS', args: [100] })
})

test('A defined name is read wherever it points, and an error value comes as one.', async () => {
  host.names.set('Rates', { sheet: 'Season 1', address: 'L4:L5' })
  host.select('L4', 'Season 1')
  host.type('L4', '=1/0', '#DIV/0!')
  host.select('L5')
  host.type('L5', 0.9)
  expect(await excelPort(log).valuesOf('Rates', 'Stop! Prices')).toEqual([
    [{ kind: 'cellError', code: '#DIV/0!' }],
    [0.9],
  ])
})

test('A section that is left takes its handlers away from Excel.', async () => {
  const before = host.listeners()
  const stop = excelPort(log).onSelectionChange(() => undefined)
  await oneTurn()
  expect(host.listeners()).toBe(before + 5)
  stop()
  await oneTurn()
  expect(host.listeners()).toBe(before)
})

test('Excel is asked once for what several sections listen to, and not again when one follows another.', async () => {
  const before = host.listeners()
  const port = excelPort(log)
  const asked = host.messages.length
  const heard: string[] = []
  const stopPane = port.onSelectionChange(() => heard.push('pane'))
  for (const section of ['Functions', 'Check', 'Compare']) {
    const stop = port.onSelectionChange(() => heard.push(section))
    await oneTurn()
    host.select('E5', 'Season 1')
    await oneTurn()
    stop()
  }
  expect(host.messages.length - asked).toBe(1)
  expect(heard.filter((one) => one !== 'pane')).toEqual(expect.arrayContaining(['Functions', 'Check', 'Compare']))
  expect(heard.slice(-2)).toEqual(['pane', 'Compare'])
  stopPane()
  await oneTurn()
  expect(host.listeners()).toBe(before)
})

test('Excel that refuses to tell of selections is asked again by the next who listens.', async () => {
  const { error } = console
  console.error = () => undefined
  const before = host.listeners()
  const port = excelPort(log)
  host.failing = true
  const stopFirst = port.onSelectionChange(() => undefined)
  await oneTurn()
  host.failing = false
  const stop = port.onSelectionChange(() => undefined)
  await oneTurn()
  console.error = error
  expect(host.listeners()).toBe(before + 5)
  stopFirst()
  stop()
  await oneTurn()
  expect(host.listeners()).toBe(before)
})

test('An Excel before 1.10, which knows no sorts, tells of the rest.', async () => {
  const older = new ExcelHost('Season 1')
  Object.assign(globalThis, older.start(9))
  const stop = excelPort(log).onSelectionChange(() => undefined)
  await oneTurn()
  expect(older.listeners()).toBe(3)
  stop()
  await oneTurn()
  use(host)
})

test('A listener that has stopped is not called while Excel still lets go of its handlers.', async () => {
  let calls = 0
  const stop = excelPort(log).onSelectionChange(() => {
    calls += 1
  })
  await oneTurn()
  stop()
  host.select('D7', 'Season 1')
  await oneTurn()
  expect(calls).toBe(0)
})

test('A section that is opened while a cell is typed in hears of what comes after.', async () => {
  host.select('D8', 'Season 1')
  host.editing = true
  const called = new Promise<void>((resolve) => {
    const stop = excelPort(log).onSelectionChange(() => {
      stop()
      resolve()
    })
  })
  await oneTurn()
  host.select('D9')
  await called
})

test('Names of constants and hidden names are no names of cells.', async () => {
  host.constants.set('Interest', '0.05')
  host.names.set('_FilterDatabase', { sheet: 'Season 1', address: 'A1:B2' })
  host.hidden.add('_FilterDatabase')
  const names = (await excelPort(log).names()).map(({ name }) => name)
  expect(names).not.toContain('Interest')
  expect(names).not.toContain('_FilterDatabase')
  expect(await excelPort(log).valuesOf('Interest', 'Season 1')).toBeUndefined()
  host.constants.clear()
  host.names.delete('_FilterDatabase')
})

test('A sheet is found however its name is capitalised, and with an apostrophe in it.', async () => {
  const other = new ExcelHost("Mum's orders")
  use(other)
  other.type('B2', 7)
  expect(await excelPort(log).valuesOf("'MUM''S ORDERS'!B2", "Mum's orders")).toEqual([[7]])
  use(host)
})

describe('cells that only have a look', () => {
  const formatted = new ExcelHost('Plan')
  beforeAll(() => {
    use(formatted)
    formatted.sheet('Plan').appearance.set('XFD60', new Map([['Font.Bold', true]]))
  })
  afterAll(() => use(host))

  test('leave a workbook empty.', async () => {
    expect(await excelPort(log).isEmpty()).toBe(true)
  })

  test('are not read, whole or by rows: with all between them that would take many messages.', async () => {
    formatted.type('B2', 5)
    expect([...(await excelPort(log).read()).sheets[0]!.cells.keys()]).toEqual(['B2'])
    expect([...(await excelPort(log).readRows('Plan', 0, 400))!.cells.keys()]).toEqual(['B2'])
    expect(formatted.messages.length).toBeLessThan(12)
  })
})

test('Excel before 1.9 does not say what is bold: no cell is then known as a heading.', async () => {
  const { requirements } = (
    globalThis as unknown as {
      Office: { context: { requirements: { isSetSupported(set: string, version: string): boolean } } }
    }
  ).Office.context
  const supported = requirements.isSetSupported
  const headings = async () =>
    [...(await excelPort(log).readRows('Headed', 0, 1))!.cells.values()].filter(({ isHeading }) => isHeading).length
  expect(await headings()).toBe(2)
  requirements.isSetSupported = (_set, version) => Number(version.split('.')[1]) < 9
  expect(await headings()).toBe(0)
  requirements.isSetSupported = supported
})

test('The whole workbook comes with its names, its error values and the calls that are known of each cell.', async () => {
  log.forgetAll()
  log.made("'Season 1'!C13", { id: 'BAGS', args: [3, 60] })
  const { names, sheets } = await excelPort(log).read()
  expect(names).toContainEqual({ name: 'Rates', refersTo: "'Season 1'!L4:L5" })
  expect(sheets.map(({ name }) => name).slice(0, 2)).toEqual(['Season 1', 'Stop! Prices'])
  expect(sheets[0]?.cells.get('C13')?.calls).toEqual([{ id: 'BAGS', args: [3, 60] }])
  expect(sheets[0]?.cells.get('C12')?.calls).toBeUndefined()
  expect(sheets[0]?.cells.get('L4')?.value).toEqual({ kind: 'cellError', code: '#DIV/0!' })
})

describe('a workbook that is still calculating', () => {
  test('is read once its functions have given their results.', async () => {
    host.select('N4', 'Season 1')
    host.type('N4', '=STICK.BAGS(300,60)', 5)
    host.busyFor = 9
    const { sheets } = await excelPort(log).read()
    expect(sheets[0]?.cells.get('N4')?.value).toBe(5)
    expect(host.busyFor).toBe(0)
  })

  test('is read a few times at most where each reading takes long and a cell waits for ever.', async () => {
    host.busyFor = Infinity
    let hour = 0
    // Each reading asks twice what time it is, and takes eight seconds.
    const now = vi.spyOn(Date, 'now').mockImplementation(() => (hour += 8_000))
    const before = host.messages.length
    await Excel.run((context) => readWorkbook(context, log))
    now.mockRestore()
    host.busyFor = 0
    // Four readings of 20 seconds at most, each of four messages at most.
    expect(host.messages.length - before).toBeLessThanOrEqual(16)
  })

  test('is read as it is after a while, and Check then says of its cells that they wait, and of no error.', async () => {
    host.busyFor = Infinity
    const book = await Excel.run((context) => readWorkbook(context, log, 0))
    host.busyFor = 0
    expect(book.sheets[0]?.cells.get('N4')?.value).toEqual({ kind: 'cellError', code: '#BUSY!' })
    const found = checkBook(book, catalogue, english.found).filter(({ address }) => address === 'N4')
    expect(found).toEqual([{ sheet: 'Season 1', address: 'N4', kind: 'warning', sentence: english.found.waits() }])
  })
})

test('A sheet whose contents are longer than an answer of Excel is read in parts, and whole.', async () => {
  const long = new ExcelHost('Foreign')
  use(long)
  const { cells } = long.sheet('Foreign')
  for (let row = 1; row <= 1500; row += 1) {
    for (const column of 'ABCDEFGHIJ') cells.set(`${column}${row}`, { formula: row, value: `${'x'.repeat(400)}${row}` })
  }
  const read = (await excelPort(log).read()).sheets[0]!.cells
  expect([read.size, read.get('J1500')?.value]).toEqual([15_000, `${'x'.repeat(400)}1500`])
  expect((await excelPort(log).readRows('Foreign', 0, 1499))!.cells.size).toBe(15_000)
  use(host)
})
