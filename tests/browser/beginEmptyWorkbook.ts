import type { Page } from 'playwright-core'
import { pressUntilFocused } from './pressUntilFocused'
import { ready } from './ready'

/** By keyboard, from the workbench as it opens. */
export async function beginEmptyWorkbook(page: Page): Promise<void> {
  await ready(page)
  await pressUntilFocused(page, 'F6', page.getByRole('button', { name: 'New', exact: true }))
  await page.keyboard.press('Enter')
  await pressUntilFocused(page, 'Tab', page.getByRole('button', { name: 'Begin', exact: true }))
  await page.keyboard.press('Enter')
}
