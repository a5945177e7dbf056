import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** That no line or button of the pane goes beyond the window. */
export async function expectNothingTooWide(page: Page, pane: string): Promise<void> {
  const tooWide = await page.locator(`${pane} :is(h2, p, li, button)`).evaluateAll((elements) => elements
    .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth)
    .map((element) => element.outerHTML))
  expect(tooWide).toEqual([])
}
