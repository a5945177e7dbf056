import type { Page } from 'playwright-core'
import { pressUntilFocused } from './pressUntilFocused'

/** By keyboard, from the workbench as it opens. */
export async function beginEmptyWorkbook(page: Page): Promise<void> {
  await page.locator('aside.functions h1').waitFor({ state: 'attached' })
  await pressUntilFocused(page, 'F6', page.getByRole('button', { name: 'New', exact: true }))
  await page.keyboard.press('Enter')
  await pressUntilFocused(page, 'Tab', page.getByRole('button', { name: 'Begin', exact: true }))
  await page.keyboard.press('Enter')
}
