/** Excel's page in a browser, with a stand-in for what Excel would load into it. */
import type { BrowserContextOptions, Page } from 'playwright-core'
import { expect, inject, test } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { browserWindows } from './browserWindows'
import { officeScript, standInForExcel, type StandIn } from './excelStandIn'
import { expectNoViolations } from './expectNoViolations'
import { visitSections } from './visitSections'

const windows = browserWindows()
const address = inject('addIn')

/** Excel's page, with the addresses elsewhere that it asked for, a list that grows. */
async function openPane(
  standIn: StandIn = {},
  options: BrowserContextOptions = {},
): Promise<{ readonly page: Page; readonly outside: readonly string[] }> {
  const page = await windows.blank(options)
  // The stand-in refuses all that is asked of the workbook.
  windows.expectFault(/^Excel does not tell which cell is selected/)
  const outside = await standInForExcel(page, address, standIn)
  await page.goto(`${address}/taskpane.html`)
  return { page, outside }
}

test("Excel's page registers every function before it asks whether Excel is ready, then shows the pane, and loads nothing else from outside.", async () => {
  const { page, outside } = await openPane()
  await page.locator(`[data-function="${catalogue[0]!.id}"]`).waitFor()
  const registered = await page.evaluate(() => {
    const { associated, associatedWhenReady } = window as unknown as {
      associated: string[]
      associatedWhenReady: number
    }
    return { associated, associatedWhenReady }
  })
  expect(registered.associated).toEqual(catalogue.map((definition) => definition.id))
  expect(registered.associatedWhenReady).toBe(catalogue.length)
  expect(outside).toEqual([officeScript])
})

test.each(['light', 'dark', 'forced'] as const)(
  "No section of Excel's pane breaks a rule of accessibility, at 320 pixels, in %s colours.",
  async (colours) => {
    const { page } = await openPane(
      { isDarkTheme: colours === 'dark' },
      { viewport: { width: 320, height: 700 }, forcedColors: colours === 'forced' ? 'active' : 'none' },
    )
    const tabs = page.getByRole('tab')
    await tabs.first().waitFor()
    expect(await tabs.count()).toBeGreaterThanOrEqual(6)
    // The browser paints forced colours, black on white here; axe reads the ones that the theme asked for.
    const unread = colours === 'forced' ? ['color-contrast'] : []
    await visitSections(page, () => expectNoViolations(page, '#pane', unread))
  },
)

test.each([
  ['InvalidOperationInCellEditMode', /Press Enter/],
  ['AccessDenied', /protected/],
] as const)(
  'Where Excel refuses with %s, the pane says what to do, and its section stays as it was.',
  async (code, sentence) => {
    const { page } = await openPane({ code })
    await page.getByRole('tab', { name: 'Check' }).click()
    const panel = page.getByRole('tabpanel', { name: 'Check' })
    const ask = panel.getByRole('button', { name: /^Check/ })
    await ask.click()
    await panel.getByText(sentence).waitFor()
    expect(await ask.isEnabled()).toBe(true)
  },
)

test('A section that cannot be fetched says so and what to do, the others go on, and it is shown again where it can be fetched.', async () => {
  const { page } = await openPane()
  windows.expectFault(/^Failed to load resource/)
  windows.expectFault(/ChunkLoadError|Loading chunk/)
  await page.locator(`[data-function="${catalogue[0]!.id}"]`).waitFor()
  await page.route(`${address}/chunks/*`, (route) => route.abort())
  await page.getByRole('tab', { name: 'Library' }).click()
  await page
    .getByRole('alert')
    .filter({ hasText: 'This part of the pane could not be fetched or shown. What stands in the workbook stays' })
    .waitFor()
  await page.getByRole('tab', { name: 'Functions' }).click()
  await page.getByRole('searchbox').fill('fill')
  await page.locator('[data-function="FILL"]').waitFor()

  await page.getByRole('tab', { name: 'Library' }).click()
  const again = page.getByRole('button', { name: 'Show it again' })
  await again.press('Enter')
  await page.getByRole('status').filter({ hasText: 'Getting the library ready' }).waitFor({ state: 'detached' })
  // It failed again, and says so again.
  await page.getByRole('alert').waitFor()
  await page.unrouteAll()
  await again.press('Enter')
  const library = page.getByRole('tabpanel', { name: 'Library' })
  await library.getByRole('heading', { name: 'Sand bed' }).waitFor()
  expect(await library.evaluate((panel) => panel.contains(document.activeElement))).toBe(true)
})

test.each([
  ['dark', true],
  ['light', false],
] as const)(
  'What the browser draws by itself, such as scroll bars, is %s where Excel is so.',
  async (scheme, isDarkTheme) => {
    const { page } = await openPane({ isDarkTheme })
    const list = page.locator(`[data-function="${catalogue[0]!.id}"]`)
    await list.waitFor()
    expect(await list.evaluate((element) => getComputedStyle(element).colorScheme)).toBe(scheme)
  },
)

test('The text of a function, fetched when it is first opened, comes into sight with its form.', async () => {
  const { page } = await openPane({}, { viewport: { width: 320, height: 700 } })
  await page.getByRole('button', { name: /^FILL/ }).click()
  const form = page.getByRole('heading', { name: 'Fill it in' })
  await form.waitFor()
  await expect.poll(async () => (await form.boundingBox())!.y).toBeLessThan(700)
})

test.each(['refused', 'never answered'] as const)(
  'Where the script of Microsoft is %s, the page says within 10 seconds what is missing.',
  async (how) => {
    const page = await windows.blank({})
    if (how === 'refused') windows.expectFault(/Failed to load resource|Office is not defined/)
    await page.clock.install()
    await page.route(officeScript, (route) => (how === 'refused' ? route.abort() : undefined))
    await page.goto(`${address}/taskpane.html`, { waitUntil: 'commit' })
    if (how === 'never answered') {
      // Asked from here: a page without a body draws no frames, and by those waitForFunction would look.
      await expect.poll(() => page.evaluate(() => document.scripts.length)).toBeGreaterThan(1)
      await page.clock.fastForward(10_000)
    }
    await page.getByRole('alert').filter({ hasText: 'could not be fetched from Microsoft' }).waitFor()
  },
)
