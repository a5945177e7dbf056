import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** That no line, field or button of the pane goes beyond the window. */
export async function expectNothingTooWide(page: Page, pane: string): Promise<void> {
  const tooWide = await page.locator(`${pane} :is(h1, h2, h3, h4, h5, p, li, dt, dd, code, label, button, input, select)`).evaluateAll((elements) => elements
    .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth)
    .map((element) => element.outerHTML))
  expect(tooWide).toEqual([])
}
