import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** As narrow as Excel's pane can be, and as wide as it opens. */
const widths = [320, 420]

/** That no line, field, button or picture within the place goes beyond the window, at both widths. The window is then as it was. */
export async function expectNothingTooWide(page: Page, place: string): Promise<void> {
  const before = page.viewportSize()!
  for (const width of widths) {
    await page.setViewportSize({ ...before, width })
    await page.waitForFunction((wanted) => window.innerWidth === wanted, width)
    const tooWide = await page
      .locator(`${place} :is(h1, h2, h3, h4, h5, p, li, dt, dd, code, label, button, input, select, figure, figure *)`)
      .evaluateAll((elements) =>
        elements
          .filter(
            (element) =>
              element.getBoundingClientRect().right > document.documentElement.clientWidth ||
              element.getBoundingClientRect().left < 0,
          )
          .map((element) => element.outerHTML),
      )
    expect(tooWide, `at ${width} pixels`).toEqual([])
  }
  await page.setViewportSize(before)
}
