import type { Page } from 'playwright-core'

/**
 * Jumps far to the right and then to D5 of the sheet Frozen, whose first column is wide and frozen, and gives the cell
 * that a click finds then in the row of D5 right beside that column.
 */
export async function besideFrozenAfterJump(page: Page): Promise<string> {
  await page.evaluate(() => window.port!.select({ sheet: 'Frozen', address: 'Z5' }))
  const box = page.locator('[data-u-comp="defined-name"] input')
  await box.fill('D5')
  await box.press('Enter')
  await page.waitForFunction(async () => (await window.port!.selectedCell()).address === 'D5')
  const canvas = (await page.locator('[id^="univer-sheet-main-canvas"]').boundingBox())!
  // Row numbers 46 pixels wide, a column of 40 characters, the middle of one of 6; letters, four rows and a half.
  await page.mouse.click(canvas.x + 46 + (40 * 7 + 12) + (6 * 7 + 12) / 2, canvas.y + 20 + 4.5 * 24)
  return page.evaluate(async () => (await window.port!.selectedCell()).address)
}
