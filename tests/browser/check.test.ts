/** Finds what is wrong in a workbook, goes there, mends it and checks again, by keyboard alone in a narrow window. */
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { beginEmptyWorkbook } from './beginEmptyWorkbook'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'

const pane = 'aside.functions'
const pages = browserWindows()

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true })
type Region = '.bar' | '.sheet' | typeof pane
const regionOf = (page: Page): Promise<Region | undefined> =>
  page.evaluate((regions) => regions.find((region) => document.activeElement?.closest(region)), [
    '.bar',
    '.sheet',
    pane,
  ] as const)
const selected = (page: Page): Locator => page.getByRole('status', { name: 'Selected cell', includeHidden: true })

/** Leaves this in cells of the first column, from the selected one on. */
async function typeDown(page: Page, ...contents: readonly string[]): Promise<void> {
  for (const content of contents) {
    await page.keyboard.type(content)
    await page.keyboard.press('Enter')
  }
}

/** Presses F6 until the keyboard is in the sheet or in the pane, and never again before it has arrived somewhere. */
async function goTo(page: Page, wanted: Region): Promise<void> {
  for (let at = await regionOf(page); at !== wanted; at = await regionOf(page)) {
    await page.keyboard.press('F6')
    await expect.poll(() => regionOf(page)).not.toBe(at)
  }
}

async function openCheck(page: Page): Promise<void> {
  await goTo(page, pane)
  await pressUntilFocused(page, 'Tab', page.locator(pane).getByRole('tab', { selected: true }))
  await pressUntilFocused(page, 'ArrowRight', page.locator(pane).getByRole('tab', { name: 'Check' }))
  await page.keyboard.press('Enter')
}

async function emptyWorkbook(): Promise<Page> {
  const page = await pages.open({ viewport: { width: 320, height: 800 } })
  await beginEmptyWorkbook(page)
  await selected(page).filter({ hasText: 'Sheet1, A1' }).waitFor({ state: 'attached' })
  await expect.poll(() => regionOf(page)).toBe(pane)
  await goTo(page, '.sheet')
  return page
}

async function checkAgain(page: Page): Promise<void> {
  await goTo(page, pane)
  await pressUntilFocused(page, 'Tab', button(page, 'Check again'))
  await page.keyboard.press('Enter')
}

it('By keyboard in a narrow window what is wrong is listed, each finding leads to its cell, and what was mended is gone when it is checked again; no look of it breaks a rule of accessibility.', async () => {
  const page = await emptyWorkbook()
  await openCheck(page)
  await page.getByText('Nothing was found.').waitFor()
  await expectNoViolationsInAnyLook(page)

  await goTo(page, '.sheet')
  // The second engine is wrong about A5: to Excel a text in a cell is none of the numbers that SUM adds up.
  const differing = '=SUM(INDEX(A1:A2,1),1)'
  await typeDown(page, 'Price of', '03/04 of 2026', '=1/0', '=STICK.BEDFILL(20,1.2,10)', differing)
  await checkAgain(page)
  await page.getByText('1 error, 2 warnings.').waitFor()
  await page.getByText('Two engines give different results: 1, which the cell shows, and #VALUE!.').waitFor()
  await page.getByText('A second engine calculated 2 formulas once more: 1 result differs.').waitFor()
  await page.getByText('1: nothing but a function of Sticksheet').waitFor()
  await expectNothingTooWide(page, pane)
  await expectNoViolationsInAnyLook(page)
  await pressUntilFocused(page, 'Shift+Tab', page.getByRole('button', { name: 'A3 on Sheet1' }))
  await page.keyboard.press('Enter')
  await selected(page).filter({ hasText: 'Sheet1, A3' }).waitFor({ state: 'attached' })

  await goTo(page, '.sheet')
  await typeDown(page, '=1/2')
  await checkAgain(page)
  await page.getByText('0 errors, 2 warnings.').waitFor()
  expect(await button(page, 'Check again').evaluate((element) => element === document.activeElement)).toBe(true)
  await page.getByText('“03/04 of 2026” is a text and no day').waitFor()

  await page.route('**/workbench.witnessWorker.js', (route) => route.abort())
  await checkAgain(page)
  await page.getByText('The second engine broke down, so these results have no second witness.').waitFor()
  await page.getByText('0 errors, 2 warnings.').waitFor()
  await page.unroute('**/workbench.witnessWorker.js')
  await checkAgain(page)
  await page.getByText('A second engine calculated 2 formulas once more').waitFor()
})
