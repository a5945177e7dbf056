/** Cells of the season that take the entries of a list offer it, by mouse and by keyboard, also in a narrow window. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { browserWindows } from './browserWindows'
import { expectNoViolations } from './expectNoViolations'
import { goTo, named, selectedCell, shown, typeInto } from './seasonPlaces'

const pages = browserWindows()
const arrow = (page: Page) => page.getByRole('button', { name: 'Choose from the list (Alt+Down)' })
const list = (page: Page) => page.getByRole('listbox')
const method = named('OrderMethod')
const chosen = (page: Page) => list(page).locator('[aria-selected="true"]').textContent()

it('A cell with a list shows an arrow; the list is opened by it or by Alt+Down, takes keys, and writes as typing does, into a cell of the season and, at 320 pixels in the dark, beside it too.', async () => {
  const page = await pages.open({ viewport: { width: 1440, height: 900 } })
  await selectedCell(page)
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  expect(await arrow(page).count()).toBe(0)
  await goTo(page, method)
  await arrow(page).click()
  // The methods of the demo, in their order, without the empty rows of their table.
  expect(await list(page).getByRole('option').allTextContents()).toEqual([
    'Water',
    'Own mix, 104 cells',
    'Own mix, 60 cells',
    'Vermiculite',
    'Sand bed',
    'Premix in thin trays',
    'Rockwool',
  ])
  expect(await chosen(page)).toBe('Premix in thin trays')
  await expectNoViolations(page, '.sheet .list')
  await list(page).getByRole('option', { name: 'Water' }).click()
  await expect.poll(() => shown(page)).toBe('Water')
  await page.keyboard.press('Control+z')
  await expect.poll(() => shown(page)).toBe('Premix in thin trays')

  await page.keyboard.press('Alt+ArrowDown')
  await list(page).waitFor()
  for (const key of ['End', 'ArrowUp', 'ArrowUp', 'ArrowUp']) await page.keyboard.press(key)
  expect(await chosen(page)).toBe('Vermiculite')
  for (const key of ['o', 'o']) await page.keyboard.press(key)
  expect(await chosen(page)).toBe('Own mix, 60 cells')
  await page.keyboard.press('Escape')
  await list(page).waitFor({ state: 'detached' })
  expect(await shown(page)).toBe('Premix in thin trays')
  await page.keyboard.press('Alt+ArrowDown')
  await list(page).waitFor()
  await page.keyboard.press('w')
  await page.keyboard.press('Enter')
  await expect.poll(() => shown(page)).toBe('Water')
  // The keyboard is in the sheet again, and Enter leads on.
  await typeInto(page, named('OrderMethod', 1), 'Moss')
  await arrow(page).waitFor()
  await page.keyboard.press('Shift+Tab')
  await arrow(page).waitFor({ state: 'detached' })

  await page.getByRole('button', { name: 'Dark' }).click()
  await page.setViewportSize({ width: 320, height: 640 })
  await goTo(page, method)
  await page.keyboard.press('Alt+ArrowDown')
  await list(page).waitFor()
  const box = (await list(page).boundingBox())!
  expect(box.x).toBeGreaterThanOrEqual(0)
  expect(box.x + box.width).toBeLessThanOrEqual(320)
  expect(box.y + box.height).toBeLessThanOrEqual(640)
  await list(page).getByRole('option', { name: 'Rockwool' }).click()
  await expect.poll(() => shown(page)).toBe('Rockwool')
})
