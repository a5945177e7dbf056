/** Reads the library in the workbench by keyboard alone, puts an entry into a sheet, goes there, and undoes it. */
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'

const pane = 'aside.functions'
const pages = browserWindows()

async function openLibrary(): Promise<Page> {
  const page = await pages.openEmpty({ viewport: { width: 320, height: 800 } })
  await selectedCell(page)
    .filter({ hasText: /^Sheet1, A1:/ })
    .waitFor()
  await page.keyboard.press('F6')
  await pressUntilFocused(page, 'Tab', page.locator(pane).getByRole('tab', { selected: true }))
  await pressUntilFocused(page, 'ArrowRight', page.locator(pane).getByRole('tab', { name: 'Library' }))
  await page.keyboard.press('Enter')
  await page.locator(pane).getByRole('heading', { name: 'Sand bed' }).waitFor()
  return page
}

function selectedCell(page: Page): Locator {
  return page.getByRole('status', { name: 'Selected cell', includeHidden: true })
}

function button(page: Page, name: string): Locator {
  return page.locator(pane).getByRole('button', { name, exact: true })
}

async function putSandBed(page: Page): Promise<void> {
  await pressUntilFocused(page, 'Tab', button(page, 'Put into a sheet: Sand bed'))
  await page.keyboard.press('Enter')
}

it('By keyboard in a narrow window an entry is put into a sheet of its own, that sheet is one key away, and one undo takes it away again; no look of it breaks a rule of accessibility.', async () => {
  const page = await openLibrary()
  await expectNoViolationsInAnyLook(page, { widths: [320, 1440] })
  await putSandBed(page)
  await page.getByText('Added the sheet Sand bed.').waitFor()
  await expectNoViolationsInAnyLook(page, { widths: [320, 1440] })
  await putSandBed(page)
  await page.getByText('Added the sheet Sand bed (2).').waitFor()
  await expectNothingTooWide(page, pane)
  await pressUntilFocused(page, 'Tab', button(page, 'Go to Sand bed (2)'))
  await page.keyboard.press('Enter')
  await expect.poll(() => selectedCell(page).textContent()).toMatch(/^Sand bed \(2\), A1: Sand bed: rows to begin with/)
  await page.keyboard.press('Shift+F6')
  await expect.poll(() => page.locator('.sheet').evaluate((place) => place.contains(document.activeElement))).toBe(true)
  await page.keyboard.press('Control+z')
  await expect.poll(() => selectedCell(page).textContent()).not.toMatch(/^Sand bed \(2\)/)
})
