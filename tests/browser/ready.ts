import type { Page } from 'playwright-core'

/** Waits until the workbook is calculated, and another may take its place; it is shown earlier, and the pane earlier still. */
export async function ready(page: Page): Promise<void> {
  await page.locator('.bar > button:first-of-type:enabled').waitFor({ state: 'attached' })
}
