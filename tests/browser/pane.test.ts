/** Drives the pane beside the grid by keyboard alone, in a window as narrow as Excel's pane can be. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { fillsOneCell } from '../../src/core/definition/definition'
import { catalogue } from '../../src/functions/catalogue'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { browserWindows } from './browserWindows'
import { pressUntilFocused } from './pressUntilFocused'
import { ready } from './ready'

/** The grid has sidebars of its own. */
const pane = 'aside.functions'

const pages = browserWindows()

/** Opens the workbench and goes to the functions by keyboard. */
async function openPane(): Promise<Page> {
  const page = await pages.openEmpty({ viewport: { width: 320, height: 800 } })
  await ready(page)
  // The sheet has the keyboard at first and keeps Tab to itself; F6 leaves it for the functions.
  await pressF6To(page, pane)
  await pressUntilFocused(page, 'ArrowRight', page.locator(pane).getByRole('tab', { name: 'Functions' }))
  await page.keyboard.press('Enter')
  await tabTo(page, searchBox(page))
  return page
}

async function pressF6To(page: Page, region: string): Promise<void> {
  await page.keyboard.press('F6')
  await expect.poll(() => page.locator(region).evaluate((place) => place.contains(document.activeElement))).toBe(true)
}

function searchBox(page: Page): Locator {
  return page.getByRole('searchbox', { name: 'Search the functions' })
}

function row(page: Page, id: string): Locator {
  return page.locator(`[data-function="${id}"] h4 button`)
}

function putButton(page: Page): Locator {
  return page.getByRole('button', { name: 'Put into the selected cell' }).first()
}

function listedIds(page: Page): Promise<string[]> {
  return page
    .locator('[data-function]')
    .evaluateAll((entries) => entries.map((entry) => (entry as HTMLElement).dataset['function']!))
}

function firstNumber(text: string | null | undefined): number {
  return Number(/-?\d[\d,]*(\.\d+)?/.exec(text ?? '')?.[0].replaceAll(',', ''))
}

/** Presses Tab until the control has the keyboard; fails where it cannot be reached so. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  const mostStops = 60
  for (let stops = 0; stops < mostStops; stops += 1) {
    if (await hasFocus(control)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`${mostStops} presses of Tab did not reach ${String(control)}`)
}

function hasFocus(control: Locator): Promise<boolean> {
  return control.evaluate((element) => element === document.activeElement)
}

/** The focused control as it looks, and as it looks when it has lost the keyboard. */
async function showsFocus(page: Page): Promise<boolean> {
  const box = await page.evaluate(() => {
    const { x, y, width, height } = document.activeElement!.getBoundingClientRect()
    return { x: Math.max(0, x - 4), y: Math.max(0, y - 4), width: width + 8, height: height + 8 }
  })
  const focused = await page.screenshot({ clip: box, animations: 'disabled', caret: 'hide' })
  const control = await page.evaluateHandle(() => document.activeElement as HTMLElement)
  await control.evaluate((element) => element.blur())
  const blurred = await page.screenshot({ clip: box, animations: 'disabled', caret: 'hide' })
  await control.evaluate((element) => element.focus())
  return !focused.equals(blurred)
}

describe('the pane in a narrow window', () => {
  it('finds a function and puts its example into the sheet, all by keyboard, and shows where the keyboard is on every kind of control', async () => {
    const page = await openPane()
    expect(await showsFocus(page)).toBe(true)
    await page.keyboard.type('fill vessels')
    await expect.poll(() => row(page, 'FILL').isVisible()).toBe(true)
    expect(await page.locator(`${pane} [role="status"]`).first().textContent()).toMatch(/^\d+ functions? found$/)

    await tabTo(page, row(page, 'FILL'))
    expect(await showsFocus(page)).toBe(true)
    await page.keyboard.press('Enter')
    expect(await row(page, 'FILL').getAttribute('aria-expanded')).toBe('true')
    await tabTo(page, putButton(page))
    expect(await showsFocus(page)).toBe(true)
    await page.keyboard.press('Enter')

    await page.getByText(/^Put into \w+ on /).waitFor()
    await expect
      .poll(() => page.locator('.sheet .cell').textContent())
      .toMatch(/=STICK\.FILL\(72,"4\.38 in3"\) gives 5\.167/)
    await expect.poll(() => row(page, 'FILL').textContent()).toContain('the selected cell uses it')
  })

  it('fits without scrolling sideways, whatever function is open, and puts examples into the sheet whose one number there is the one that the pane names', async () => {
    const page = await openPane()
    // What fills more cells needs free ones below, which the demo season need not have.
    const oneNumber = new Set(catalogue.filter(({ result }) => fillsOneCell(result)).map(({ id }) => id))
    expect(oneNumber.size).toBeGreaterThan(0)
    const listed = await listedIds(page)
    expect(listed).toEqual(expect.arrayContaining([...oneNumber]))
    for (const id of listed) {
      await row(page, id).press('Enter')
      expect(await row(page, id).getAttribute('aria-expanded')).toBe('true')
      await expectNothingTooWide(page, pane)
      if (!oneNumber.has(id)) continue
      const said = firstNumber(
        await page
          .getByText(/^gives /)
          .first()
          .textContent(),
      )
      await putButton(page).press('Enter')
      await page.getByText(/^Put into \w+ on /).waitFor()
      const status = page.locator('.sheet .cell')
      await expect.poll(() => status.textContent(), { message: id }).toContain(`=STICK.${id}(`)
      await expect
        .poll(async () => firstNumber((await status.textContent())?.split(' gives ')[1]), { message: id })
        .toBeCloseTo(said, 7)
    }
  })

  it('asks to finish the cell first while something is being typed into it', async () => {
    const page = await openPane()
    await pressF6To(page, '.bar')
    await pressF6To(page, '.sheet')
    await page.keyboard.type('12')
    await pressF6To(page, pane)
    await row(page, 'FILL').press('Enter')
    await putButton(page).press('Enter')
    await page.getByText('Press Enter or Esc in the cell first, then try again.').waitFor()
  })

  it('has no accessibility violation in either theme', async () => {
    const page = await openPane()
    await expectNoViolationsInAnyLook(page)
    await row(page, 'BEDFILL').press('Enter')
    await putButton(page).press('Enter')
    await page.getByText(/^Put into \w+ on /).waitFor()
    await expectNoViolationsInAnyLook(page)
    await searchBox(page).fill('zebra')
    await page.getByText('No function found for “zebra”.').waitFor()
    await expectNoViolationsInAnyLook(page)
  })
})
