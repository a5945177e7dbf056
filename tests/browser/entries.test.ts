/** Types into a boxed cell what it does not take, and reads what the workbench says. */
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { workbenchPages } from './workbenchPages'

const pages = workbenchPages()

const selected = (page: Page): Locator => page.getByRole('status', { name: 'Selected cell' })

async function typeDown(page: Page, content: string): Promise<void> {
  await page.keyboard.type(content)
  await page.keyboard.press('Enter')
}

it('An entry that its cell does not take is marked, and the sentence of the season says what to type.', { timeout: 120_000 }, async () => {
  const page = await pages.open({ viewport: { width: 1440, height: 900 } })
  await selected(page).filter({ hasText: 'Season, A1' }).waitFor()
  await page.keyboard.press('Alt+PageDown')
  await selected(page).filter({ hasText: 'Orders, A1' }).waitFor()
  for (let step = 0; step < 7; step += 1) await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowRight')
  await selected(page).filter({ hasText: 'Orders, B8' }).waitFor()
  await typeDown(page, '12.5')
  await page.keyboard.press('ArrowUp')
  await selected(page).filter({ hasText: 'Orders, B8: 12.5: Type the number of liners ordered: a whole number, 0 or more.' }).waitFor()
  expect(await selected(page).getAttribute('data-refused')).toBe('true')
  await typeDown(page, '12')
  await page.keyboard.press('ArrowUp')
  await selected(page).filter({ hasText: /^Orders, B8: 12$/ }).waitFor()
  await page.keyboard.press('ArrowRight')
  await typeDown(page, 'Moss')
  await page.keyboard.press('ArrowUp')
  await selected(page).filter({ hasText: 'Orders, C8: Moss: Type one of the six ways of rooting' }).waitFor()
  await typeDown(page, 'water')
  await page.keyboard.press('ArrowUp')
  await selected(page).filter({ hasText: /^Orders, C8: water$/ }).waitFor()
  await page.context().close()
})
