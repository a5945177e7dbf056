import type { Page } from 'playwright-core'

/** Opens each section of the pane by its tab, waits until it shows its heading, and looks at it. */
export async function visitSections(page: Page, look?: () => Promise<void>): Promise<void> {
  for (const tab of await page.getByRole('tab').all()) {
    await tab.click()
    await page
      .getByRole('tabpanel', { name: await tab.innerText() })
      .getByRole('heading')
      .first()
      .waitFor()
    await look?.()
  }
}
