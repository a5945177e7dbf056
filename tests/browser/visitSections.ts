import type { Locator, Page } from 'playwright-core'

/** Opens each section of the pane by its tab, waits until it shows its heading, and looks at it. The grid has tabs too. */
export async function visitSections(pane: Page | Locator, look?: () => Promise<void>): Promise<void> {
  for (const tab of await pane.getByRole('tab').all()) {
    await tab.click()
    await pane
      .getByRole('tabpanel', { name: await tab.innerText() })
      .getByRole('heading')
      .first()
      .waitFor()
    await look?.()
  }
}
