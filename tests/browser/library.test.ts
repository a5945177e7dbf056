/** Reads the library in the workbench by keyboard alone, puts an entry into a sheet, goes there, and undoes it. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { expectNoViolations } from './expectNoViolations'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'

const pane = 'aside.functions'
const pages = browserWindows()

async function openLibrary(width: number, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  const page = await pages.open({ viewport: { width, height: 800 }, colorScheme })
  await selectedCell(page).filter({ hasText: /^Season, A1:/ }).waitFor()
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

describe.each([320, 420])('in a window %i pixels wide, by keyboard', (width) => {
  it('an entry is put into a sheet of its own, and that sheet is one key away', async () => {
    const page = await openLibrary(width)
    await putSandBed(page)
    await page.getByText('Added the sheet Sand bed.').waitFor()
    await putSandBed(page)
    await page.getByText('Added the sheet Sand bed (2).').waitFor()
    const tooWide = await page.locator(`${pane} :is(h2, h3, h4, p, li, button)`).evaluateAll((elements) => elements
      .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth)
      .map((element) => element.outerHTML))
    expect(tooWide).toEqual([])
    await pressUntilFocused(page, 'Tab', button(page, 'Go to Sand bed (2)'))
    await page.keyboard.press('Enter')
    await expect.poll(() => selectedCell(page).textContent()).toMatch(/^Sand bed \(2\), A1: Sand bed: rows to begin with/)
  })
})

it('one undo takes the sheet away again', async () => {
  const page = await openLibrary(1440)
  await putSandBed(page)
  await pressUntilFocused(page, 'Tab', button(page, 'Go to Sand bed'))
  await page.keyboard.press('Enter')
  await expect.poll(() => selectedCell(page).textContent()).toMatch(/^Sand bed, A1/)
  await page.keyboard.press('Shift+F6')
  await expect.poll(() => page.locator('.sheet').evaluate((place) => place.contains(document.activeElement))).toBe(true)
  await page.keyboard.press('Control+z')
  await expect.poll(() => selectedCell(page).textContent()).not.toMatch(/^Sand bed/)
})

it.each([['light', 320], ['dark', 320], ['light', 1440], ['dark', 1440]] as const)('has no accessibility violation in the %s theme at %i pixels, before and after an entry was put into a sheet', async (colorScheme, width) => {
  const page = await openLibrary(width, colorScheme)
  await expectNoViolations(page)
  await putSandBed(page)
  await page.getByText('Added the sheet Sand bed.').waitFor()
  await expectNoViolations(page)
})
