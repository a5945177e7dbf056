import { afterAll, beforeAll, expect, test } from 'vitest'
import { excelPort } from '../../src/excel/excelPort'
import { ExcelHost } from './ExcelHost'
import { portContract, type Scene } from './portContract'

/** The add-in reads Excel from the page that it runs in, so each workbook takes its turn there. */
function use(host: ExcelHost): void {
  Object.assign(globalThis, { Excel: host.start().Excel })
}

const host = new ExcelHost('Season 1', 'Stop! Prices')
beforeAll(() => use(host))
afterAll(() => {
  Reflect.deleteProperty(globalThis, 'Excel')
})

/** A batch that the client has begun is sent and answered within one turn, so that events are registered after it. */
const oneTurn = () => new Promise((resolve) => setImmediate(resolve))

portContract('Excel', async (): Promise<Scene> => ({
  port: excelPort(),
  select: async (address) => {
    await oneTurn()
    host.select(address)
  },
  type: async (address, content) => {
    await oneTurn()
    host.select(address)
    host.type(address, content)
  },
  beginTyping: async () => { host.editing = true },
  cancelTyping: async () => { host.editing = false },
  close: async () => undefined,
}))

test('Excel gives the address without the sheet, though the name of the sheet holds an exclamation mark.', async () => {
  host.select('C3', 'Stop! Prices')
  expect(await excelPort().selectedCell()).toMatchObject({ sheet: 'Stop! Prices', address: 'C3' })
})

test('Going to another sheet counts as selecting another cell.', async () => {
  host.select('A1', 'Season 1')
  const called = new Promise<void>((resolve) => {
    const stop = excelPort().onSelectionChange(() => {
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
  await expect(excelPort().putFormula('=1+1')).rejects.toMatchObject({ name: 'PortProblem', code: 'protectedSheet' })
  expect(host.formulaAt('A2')).toBe('')
})

test('A failure of Excel that has no meaning of its own keeps what Excel said about it.', async () => {
  host.failing = true
  await expect(excelPort().selectedCell()).rejects.toMatchObject({ code: 'hostFailed', detail: 'GeneralException Excel says no.' })
  host.failing = false
})
