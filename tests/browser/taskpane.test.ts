/** Excel's page in a browser, with a stand-in for what Excel would load into it. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve, type Served } from '../../src/start/server.mjs'
import { catalogue } from '../../src/functions/catalogue'
import { dist } from '../bundle/loadBundle'
import { officeScript, standInForExcel } from './excelStandIn'
import { expectNoViolations } from './expectNoViolations'
import { launch } from './launch'

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
  const outside = await standInForExcel(page, served)
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

test.each(['light', 'dark', 'forced'] as const)('No section of Excel\'s pane breaks a rule of accessibility, at 320 pixels, in %s colours.', async (colours) => {
  const context = await browser.newContext({ viewport: { width: 320, height: 700 }, forcedColors: colours === 'forced' ? 'active' : 'none' })
  const page = await context.newPage()
  await standInForExcel(page, served, { isDarkTheme: colours === 'dark' })
  await page.goto(`${served.address}/taskpane.html`)
  const tabs = page.getByRole('tab')
  await tabs.first().waitFor()
  expect(await tabs.count()).toBeGreaterThanOrEqual(6)
  for (const tab of await tabs.all()) {
    await tab.click()
    await page.getByRole('tabpanel', { name: await tab.innerText() }).getByRole('heading').first().waitFor()
    // The browser paints forced colours, black on white here; axe reads the ones that the theme asked for.
    await expectNoViolations(page, '#pane', colours === 'forced' ? ['color-contrast'] : [])
  }
  await context.close()
})

test.each([
  ['InvalidOperationInCellEditMode', /Press Enter/],
  ['AccessDenied', /protected/],
] as const)('Where Excel refuses with %s, the pane says what to do, and its section stays as it was.', async (code, sentence) => {
  const page = await browser.newPage()
  await standInForExcel(page, served, { code })
  await page.goto(`${served.address}/taskpane.html`)
  await page.getByRole('tab', { name: 'Check' }).click()
  const panel = page.getByRole('tabpanel', { name: 'Check' })
  const ask = panel.getByRole('button', { name: /^Check/ })
  await ask.click()
  await panel.getByText(sentence).waitFor()
  expect(await ask.isEnabled()).toBe(true)
  await page.close()
})

test('A section that cannot be fetched says so and what to do, and the others go on.', async () => {
  const page = await browser.newPage()
  await standInForExcel(page, served)
  await page.goto(`${served.address}/taskpane.html`)
  await page.locator(`[data-function="${catalogue[0]!.id}"]`).waitFor()
  await page.route(`${served.address}/chunks/*`, (route) => route.abort())
  await page.getByRole('tab', { name: 'Library' }).click()
  await page.getByRole('alert').filter({ hasText: 'This part of the pane could not be fetched or shown. What stands in the workbook stays' }).waitFor()
  await page.getByRole('tab', { name: 'Functions' }).click()
  await page.getByRole('searchbox').fill('fill')
  await page.locator('[data-function="FILL"]').waitFor()
  await page.close()
})

test('The text of a function, fetched when it is first opened, comes into sight with its form.', async () => {
  const page = await browser.newPage({ viewport: { width: 320, height: 700 } })
  await standInForExcel(page, served)
  await page.goto(`${served.address}/taskpane.html`)
  await page.getByRole('button', { name: /^FILL/ }).click()
  const form = page.getByRole('heading', { name: 'Fill it in' })
  await form.waitFor()
  await expect.poll(async () => (await form.boundingBox())!.y).toBeLessThan(700)
  await page.close()
})
