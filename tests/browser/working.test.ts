/** Drives the section Calculation by keyboard alone, in narrow windows: from a number to its cells, to a sheet, and to plain Excel. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { unpack } from '../../src/workbench/xlsx/unpack'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { goTo, named } from './seasonPlaces'

const pages = browserWindows()

/** Opens the demo, goes to V9 on Orders, which counts the cuttings of the first order, and then to Calculation in the pane. */
async function openWorking(): Promise<Page> {
  const page = await pages.open({ viewport: { width: 320, height: 900 }, acceptDownloads: true })
  await page.locator('.sheet .cell', { hasText: 'Season, A1' }).waitFor()
  await goTo(page, named('OrderCuttings'))
  await toPane(page)
  await tabTo(page, page.getByRole('tab', { selected: true }))
  while ((await page.getByRole('tab', { name: 'Calculation', selected: true }).count()) === 0) {
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('Enter')
  }
  await page.getByRole('heading', { name: 'Calculation of V9 on Orders' }).waitFor()
  return page
}

const toPane = (page: Page) => pressF6To(page, 'aside.functions')

async function toSheet(page: Page): Promise<void> {
  await pressF6To(page, '.bar')
  await pressF6To(page, '.sheet')
}

async function pressF6To(page: Page, region: string): Promise<void> {
  await page.keyboard.press('F6')
  await expect.poll(() => page.locator(region).evaluate((place) => place.contains(document.activeElement))).toBe(true)
}

async function tabTo(page: Page, control: ReturnType<Page['locator']>): Promise<void> {
  for (let stops = 0; stops < 80; stops += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Tab did not reach ${String(control)}`)
}

async function press(page: Page, name: string | RegExp): Promise<void> {
  const button = page.getByRole('button', { name, exact: typeof name === 'string' })
  await button.waitFor()
  await tabTo(page, button)
  await page.keyboard.press('Enter')
}

const cellLine = (page: Page) => page.locator('.sheet .cell').textContent()

it('At 320 pixels the keyboard goes from a number to a cell that it was made of, and back, and writes the working to a sheet of its own, twice, under a name of its own each time.', async () => {
  const page = await openWorking()
  await page.getByRole('heading', { name: 'Step by step' }).first().waitFor()
  await press(page, 'S9 on Orders')
  await expect.poll(() => cellLine(page)).toMatch(/^Orders, S9:/)
  const back = page.getByRole('button', { name: 'Back to V9 on Orders' })
  await expect.poll(() => back.evaluate((element) => element === document.activeElement)).toBe(true)
  await page.getByRole('heading', { name: 'Calculation of S9 on Orders' }).waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('heading', { name: 'Calculation of V9 on Orders' }).waitFor()
  await expect.poll(() => cellLine(page)).toMatch(/^Orders, V9:/)
  expect(await back.count()).toBe(0)
  await expectNothingTooWide(page, 'aside.functions')

  await press(page, 'Write this calculation to a sheet')
  await page.getByText('Written to the sheet “Calculation of V9”.').waitFor()
  await press(page, 'Back to V9 on Orders')
  await press(page, 'Write this calculation to a sheet')
  await page.getByText('Written to the sheet “Calculation of V9 (2)”.').waitFor()
  await expect.poll(() => cellLine(page)).toBe('Calculation of V9 (2), A1: Calculation of V9 on Orders')
})

it('In a narrow window the keyboard turns a cell into a value after saying so, nothing else changes, and one undo brings the formula back; no stage breaks a rule of accessibility in either theme.', async () => {
  const page = await openWorking()
  await page.getByRole('button', { name: 'Turn into plain formulas' }).waitFor()
  await expectNoViolationsInAnyLook(page)
  const before = await cellLine(page)
  expect(before).toMatch(/STICK\.CUTTINGS\(.* gives [\d,]+$/)
  await press(page, 'Turn into plain formulas')
  await page
    .getByText('In V9 on Orders, 1 cell becomes a value, which no longer follows when an input changes.')
    .waitFor()
  expect(await page.getByText(/^CUTTINGS: /).count()).toBeGreaterThan(0)
  expect(await cellLine(page)).toBe(before)
  await page.getByRole('button', { name: 'Change this cell' }).waitFor()
  await expectNoViolationsInAnyLook(page)
  await press(page, 'Change this cell')
  await page
    .getByText(
      '1 cell is changed. Every cell of the workbook shows what it showed before. Ctrl+Z in the sheet takes it back.',
    )
    .waitFor()
  expect(await cellLine(page)).toBe(`Orders, V9: ${/[\d,]+$/.exec(before!)![0]}`)
  await page.getByRole('button', { name: 'Turn into values' }).press('Enter')
  await page.getByText('No cell in V9 on Orders uses a STICK function, so there is nothing to turn.').waitFor()
  await expectNoViolationsInAnyLook(page)
  await toSheet(page)
  await page.keyboard.press('Control+z')
  await expect.poll(() => cellLine(page)).toBe(before)
})

it('A block of cells becomes plain formulas that show the same numbers.', async () => {
  const page = await openWorking()
  await toSheet(page)
  await page.keyboard.press('Shift+ArrowDown')
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await toPane(page)
  await press(page, 'Turn into plain formulas')
  await page.getByText(/^In V9:Y10 on Orders, \d cells get a plain formula each\.$/).waitFor()
  await press(page, /^Change these \d cells$/)
  await page.getByText(/^\d cells are changed\. Every cell of the workbook shows what it showed before\./).waitFor()
})

it('The pane hands out a copy of the workbook without a call of ours, and leaves the open one as it is.', async () => {
  const page = await openWorking()
  const before = await cellLine(page)
  const { name, bytes } = await downloaded(page, () => press(page, 'A copy of the workbook, as a file'))
  await page
    .getByText(
      /^The copy is ready: \d+ cells with plain formulas, \d+ as values, listed on its sheet “Without the add-in”\.$/,
    )
    .waitFor()
  expect(name).toBe('season-without-add-in.xlsx')
  const parts = await unpack(bytes)
  for (const [path, part] of Object.entries(parts))
    expect(/STICK[._]\w*/i.exec(new TextDecoder().decode(part))?.[0], path).toBeUndefined()
  expect(await cellLine(page)).toBe(before)
})
