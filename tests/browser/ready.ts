import type { Page } from 'playwright-core'

/** Waits until the sheet is calculated and takes what is typed; the pane beside it is there earlier. */
export async function ready(page: Page): Promise<void> {
  await page.locator('main.sheet .cell:not(:empty)').waitFor({ state: 'attached' })
}
