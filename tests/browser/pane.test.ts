/** Drives the pane beside the grid by keyboard alone, in a window as narrow as Excel's pane can be. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Served } from '../../src/start/server.mjs'
import { launch } from './launch'
import { serveDist } from './serveDist'

const narrow = { width: 320, height: 800 }

let served: Served
let browser: Browser

beforeAll(async () => {
  served = await serveDist()
  browser = await launch()
})

afterAll(async () => {
  await browser?.close()
  await served?.close()
})

/** Opens the workbench and goes to the functions by keyboard. */
async function openPane(colorScheme: 'light' | 'dark'): Promise<Page> {
  const context = await browser.newContext({ viewport: narrow, colorScheme })
  const page = await context.newPage()
  await page.goto(served.address)
  await page.locator('aside h1').waitFor({ state: 'attached' })
  await tabTo(page, page.getByRole('button', { name: 'Functions' }))
  await page.keyboard.press('Enter')
  await tabTo(page, searchBox(page))
  return page
}

function searchBox(page: Page): Locator {
  return page.getByRole('searchbox', { name: 'Search the functions' })
}

function row(page: Page, id: string): Locator {
  return page.locator(`[data-function="${id}"] h4 button`)
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

async function expectNoViolations(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).include('aside').analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([])
}

describe('the pane in a window 320 pixels wide', () => {
  it('finds a function and puts its example into the sheet, all by keyboard', async () => {
    const page = await openPane('light')
    await page.keyboard.type('fill vessels')
    await expect.poll(() => row(page, 'FILL').isVisible()).toBe(true)
    expect(await page.locator('aside [role="status"]').first().textContent()).toMatch(/^\d+ functions? found$/)

    await tabTo(page, row(page, 'FILL'))
    await page.keyboard.press('Enter')
    expect(await row(page, 'FILL').getAttribute('aria-expanded')).toBe('true')
    await tabTo(page, page.getByRole('button', { name: 'Put into the selected cell' }).first())
    await page.keyboard.press('Enter')

    await page.getByText(/^Put into \w+ on /).waitFor()
    await expect.poll(() => page.locator('.sheet .cell').textContent()).toMatch(/=STICK\.FILL\(72,"4\.38 in3"\) gives 5\.167/)
    await expect.poll(() => row(page, 'FILL').textContent()).toContain('the selected cell uses it')
    await page.context().close()
  })

  it('shows where the keyboard is on every kind of control', async () => {
    const page = await openPane('light')
    expect(await showsFocus(page)).toBe(true)
    await tabTo(page, row(page, 'FILL'))
    expect(await showsFocus(page)).toBe(true)
    await page.keyboard.press('Enter')
    await tabTo(page, page.getByRole('button', { name: 'Put into the selected cell' }).first())
    expect(await showsFocus(page)).toBe(true)
    await page.context().close()
  })

  it('fits without scrolling sideways, whatever function is open', async () => {
    const page = await openPane('light')
    const ids = await page.locator('[data-function]').evaluateAll((entries) => entries.map((entry) => (entry as HTMLElement).dataset['function']!))
    for (const id of ids) {
      await row(page, id).press('Enter')
      expect(await row(page, id).getAttribute('aria-expanded')).toBe('true')
      const tooWide = await page.locator('aside :is(h1, h3, h4, h5, p, li, dt, dd, code, button, input)').evaluateAll((elements) => elements
        .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth)
        .map((element) => element.outerHTML))
      expect(tooWide, `with ${id} open`).toEqual([])
    }
    await page.context().close()
  })

  it.each(['light', 'dark'] as const)('has no accessibility violation in the %s theme', async (colorScheme) => {
    const page = await openPane(colorScheme)
    await expectNoViolations(page)
    await row(page, 'BEDFILL').press('Enter')
    await page.getByRole('button', { name: 'Put into the selected cell' }).first().press('Enter')
    await page.getByText(/^Put into \w+ on /).waitFor()
    await expectNoViolations(page)
    await searchBox(page).fill('zebra')
    await page.getByText('No function found for “zebra”.').waitFor()
    await expectNoViolations(page)
    await page.context().close()
  })
})
