/** Holds the workbench to the contract that the Excel side is held to, with the hands of a user on a real grid. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { serve, workbenchPolicy } from '../../src/start/server.mjs'
import { PortProblem, type WorkbookPort } from '../../src/workbook/port'
import { portContract, type Scene } from '../contract/portContract'
import { launch } from './launch'

let workbench: Scene

test('The workbench gives the calls of the selected cell, those within others first, and none of a cell without.', async () => {
  await workbench.type('J4', 10)
  await workbench.select('J5')
  await workbench.port.putFormula('=STICK.BAGS(STICK.FILL(J4,6500),"60 L")')
  expect(await workbench.port.callsOfSelectedCell()).toEqual([{ id: 'FILL', args: [[[10]], 6500] }, { id: 'BAGS', args: [65, '60 L'] }])
  await workbench.port.calculate()
  expect(await workbench.port.callsOfSelectedCell()).toHaveLength(2)
  await workbench.select('J4')
  expect(await workbench.port.callsOfSelectedCell()).toEqual([])
})

portContract('The workbench', async (): Promise<Scene> => {
  const folder = mkdtempSync(join(tmpdir(), 'sticksheet-port-'))
  await build({ entryPoints: [join(import.meta.dirname, 'portPage.ts')], outfile: join(folder, 'page.js'), bundle: true, format: 'esm', logLevel: 'error' })
  writeFileSync(join(folder, 'index.html'), `<!doctype html><link rel="stylesheet" href="page.css">
    <div id="grid" style="height: 600px"></div><script type="module" src="page.js"></script>`)
  const served = await serve({ folder, port: 0, policy: workbenchPolicy })
  const browser = await launch()
  const page = await browser.newPage()
  await page.goto(served.address)
  await page.waitForFunction(() => window.port !== undefined)
  await page.evaluate(() => window.focusGrid!())

  const port = await portOf(page)
  async function select(address: string): Promise<void> {
    const [first = '', last] = address.split(':')
    await selectCell(first)
    if (last === undefined) return
    const [from, to] = [placeOf(first), placeOf(last)]
    await press(page, 'Shift+ArrowDown', to.row - from.row)
    await press(page, 'Shift+ArrowRight', to.column - from.column)
    await page.waitForFunction(async (wanted) => (await window.port!.selectedRange()).address === wanted, address)
  }
  async function selectCell(address: string): Promise<void> {
    // A block shrinks to its first cell only when the keyboard moves.
    if ((await port.selectedRange()).address !== (await port.selectedCell()).address) {
      await press(page, 'ArrowDown', 1)
      await press(page, 'ArrowUp', 1)
    }
    const target = placeOf(address)
    const now = placeOf((await port.selectedCell()).address)
    await press(page, target.row > now.row ? 'ArrowDown' : 'ArrowUp', Math.abs(target.row - now.row))
    await press(page, target.column > now.column ? 'ArrowRight' : 'ArrowLeft', Math.abs(target.column - now.column))
    await page.waitForFunction(async (wanted) => (await window.port!.selectedCell()).address === wanted, address)
  }
  workbench = {
    port,
    select,
    async type(address, content) {
      await select(address)
      await page.keyboard.type(String(content))
      await page.keyboard.press('Enter')
      await select(address)
    },
    async beginTyping() {
      await page.keyboard.type('1')
    },
    async cancelTyping() {
      await page.keyboard.press('Escape')
    },
    async close() {
      await browser.close()
      await served.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
  return workbench
})

/** The port of the page, from here. Calls reach the page in the order in which they are made. */
async function portOf(page: Page): Promise<WorkbookPort> {
  const listeners: (() => void)[] = []
  await page.exposeFunction('tellTest', (listener: number) => listeners[listener]!())
  return {
    host: 'workbench',
    selectedCell: () => page.evaluate(() => window.port!.selectedCell()),
    selectedRange: () => page.evaluate(() => window.port!.selectedRange()),
    async read() {
      const { names, sheets } = await page.evaluate(async () => {
        const book = await window.port!.read()
        return { names: book.names, sheets: book.sheets.map(({ name, cells }) => ({ name, cells: [...cells] })) }
      })
      return { names, sheets: sheets.map(({ name, cells }) => ({ name, cells: new Map(cells) })) }
    },
    select: (place) => page.evaluate((given) => window.port!.select(given), place),
    valuesOf: (...asked) => page.evaluate((given) => window.port!.valuesOf(...given), asked),
    async putFormula(...asked) {
      const code = await page.evaluate((given) => window.port!.putFormula(...given).then(() => undefined, (problem: PortProblem) => problem.code), asked)
      if (code !== undefined) throw new PortProblem(code)
    },
    callsOfSelectedCell: () => page.evaluate(() => window.port!.callsOfSelectedCell()),
    calculate: () => page.evaluate(() => window.port!.calculate()),
    onSelectionChange(listener) {
      const number = listeners.push(listener) - 1
      void page.evaluate((own) => { window.stops!.set(own, window.port!.onSelectionChange(() => window.tellTest!(own))) }, number)
      return () => void page.evaluate((own) => window.stops!.get(own)!(), number)
    },
  }
}

function placeOf(address: string): { column: number; row: number } {
  const [, letters = '', digits] = /^([A-Z]+)(\d+)$/.exec(address) ?? []
  return { column: [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0), row: Number(digits) }
}

async function press(page: Page, key: string, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
}
