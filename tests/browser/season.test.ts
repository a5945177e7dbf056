/** Builds a season in the workbench by keyboard alone, in a window as narrow as Excel's pane can be. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { selectedCell, shown } from './seasonPlaces'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'
import { ready } from './ready'

const pane = 'aside.functions'
const sheets = demoSeason().sheets.map(({ name }) => name)

const pages = browserWindows()

/** Opens the workbench with an empty workbook and goes to the season, all by keyboard. */
async function openSeason(): Promise<Page> {
  const page = await pages.openEmpty({ viewport: { width: 320, height: 800 } })
  await ready(page)
  await page.keyboard.press('F6')
  await pressUntilFocused(page, 'Tab', button(page, 'Build the demo season'))
  return page
}

function button(page: Page, name: string): Locator {
  return page.getByRole('button', { name, exact: true })
}

describe('by keyboard in a narrow window', () => {
  it('the demo season is built into an empty workbook and calculated, and each sheet is one key away', async () => {
    const page = await openSeason()
    await page.keyboard.press('Enter')
    await page.getByText(`This adds ${sheets.length} sheets after your own: Season, Calendar,`).waitFor()
    await expectNothingTooWide(page, pane)
    await pressUntilFocused(page, 'Tab', button(page, `Add these ${sheets.length} sheets`))
    await page.keyboard.press('Enter')
    await page.getByText(`Added ${sheets.length} sheets.`).waitFor()
    await expectNothingTooWide(page, pane)
    for (const name of ['Season', 'Review']) {
      await pressUntilFocused(page, 'Tab', button(page, name))
      await page.keyboard.press('Enter')
      await expect
        .poll(() => page.getByRole('status', { name: 'Selected cell', includeHidden: true }).textContent())
        .toMatch(new RegExp(`^${name}, A1: `))
    }
  })
})

it('A season that is there already is not built over, the pane lists what is taken, and no stage of it breaks a rule of accessibility in either theme.', async () => {
  const page = await openSeason()
  await expectNoViolationsInAnyLook(page)
  for (const label of ['Build an empty season', 'Build the demo season']) {
    await pressUntilFocused(page, 'Tab', button(page, label))
    await page.keyboard.press('Enter')
    await button(page, `Add these ${sheets.length} sheets`).waitFor()
    if (label === 'Build an empty season') await expectNoViolationsInAnyLook(page)
    await pressUntilFocused(page, 'Tab', button(page, `Add these ${sheets.length} sheets`))
    await page.keyboard.press('Enter')
    if (label !== 'Build an empty season') continue
    await page.getByText(`Added ${sheets.length} sheets.`).waitFor()
    await expectNoViolationsInAnyLook(page)
    await pressUntilFocused(page, 'Tab', button(page, 'Build another season'))
    await page.keyboard.press('Enter')
  }
  await page
    .getByText(
      /^The workbook already holds the sheet Season, the sheet Calendar, .* and \d+ more, and nothing of yours is overwritten/,
    )
    .waitFor()
})

it('After an empty season the sheet Setup is shown, and rows that are added stand within the names that total the order book.', async () => {
  const page = await openSeason()
  await pressUntilFocused(page, 'Tab', button(page, 'Build an empty season'))
  await page.keyboard.press('Enter')
  await pressUntilFocused(page, 'Tab', button(page, `Add these ${sheets.length} sheets`))
  await page.keyboard.press('Enter')
  await page.getByText(`Added ${sheets.length} sheets.`).waitFor()
  const line = page.getByRole('status', { name: 'Selected cell', includeHidden: true })
  await expect.poll(() => line.textContent()).toMatch(/^Setup, A1: Setup$/)

  await page.getByLabel('Rows', { exact: true }).fill('3')
  await button(page, 'Add rows').click()
  const ready = page.getByText(/^The rows are ready, the first at B\d+ on Orders: type into their boxes\.$/)
  await ready.waitFor()
  const first = Number(/B(\d+)/.exec((await ready.textContent())!)![1])
  // Each new row has its own state, as the one above it has.
  await page.setViewportSize({ width: 1440, height: 900 })
  const box = page.locator('.sheet [data-u-comp="defined-name"] input')
  for (const row of [first, first + 2]) {
    await box.fill(`A${row}`)
    await box.press('Enter')
    await expect
      .poll(() => selectedCell(page).textContent())
      .toMatch(new RegExp(`^Orders, A${row}: =IF\\(COUNTA\\(\\$B${row}:`))
    expect(await shown(page)).toBe('')
  }
})
