/**
 * Excel's page in a browser. The script that Microsoft's address would give is replaced by the few names that
 * our page reads, since no request may leave the machine; what Excel itself does is tests/contract's business.
 */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve, type Served } from '../../src/start/server.mjs'
import { catalogue } from '../../src/functions/catalogue'
import { dist } from '../bundle/loadBundle'
import { launch } from './launch'

const officeScript = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js'
const office = `
  window.associated = []
  window.CustomFunctions = { associate: (id) => window.associated.push(id) }
  window.Office = { context: {}, onReady: async (ready) => { window.associatedWhenReady = window.associated.length; ready() } }
  window.Excel = { run: async () => { throw { code: 'InvalidSelection', message: '' } } }
`

let served: Served
let browser: Browser

beforeAll(async () => {
  served = await serve({ folder: dist, port: 0 })
  browser = await launch()
})

afterAll(async () => {
  await browser?.close()
  await served?.close()
})

test('Excel\'s page registers every function before it asks whether Excel is ready, then shows the pane, and loads nothing else from outside.', async () => {
  const page = await browser.newPage()
  const outside: string[] = []
  await page.route((url) => url.origin !== served.address, (route) => {
    outside.push(route.request().url())
    return route.fulfill({ contentType: 'text/javascript', body: office })
  })
  await page.goto(`${served.address}/taskpane.html`)
  await page.locator(`[data-function="${catalogue[0]!.id}"]`).waitFor()
  const registered = await page.evaluate(() => {
    const { associated, associatedWhenReady } = window as unknown as { associated: string[]; associatedWhenReady: number }
    return { associated, associatedWhenReady }
  })
  expect(registered.associated).toEqual(catalogue.map((definition) => definition.id))
  expect(registered.associatedWhenReady).toBe(catalogue.length)
  expect(outside).toEqual([officeScript])
})
