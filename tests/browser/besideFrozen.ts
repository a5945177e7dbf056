import type { Page } from 'playwright-core'
import type { Sheet } from '../../src/workbook/book'

/** A wide column that is frozen beside narrow ones, with a text that runs on over many of these. */
export const frozenSheet: Sheet = {
  name: 'Frozen',
  widths: [40, ...Array<number>(29).fill(6)],
  frozenRows: 0,
  frozenColumns: 1,
  rows: [[], [], [{ value: 'A frozen text. '.repeat(12) }]],
}

/** In pixels: row numbers, letters of the columns, the frozen column, one of the others, a row. */
const [left, top, frozen, narrow, row] = [46, 20, 40 * 7 + 12, 6 * 7 + 12, 24]

/** Far to the right and then to D5. */
export async function jumpBesideFrozen(page: Page): Promise<void> {
  await page.evaluate(() => window.port!.select({ sheet: 'Frozen', address: 'Z5' }))
  const box = page.locator('[data-u-comp="defined-name"] input')
  await box.fill('D5')
  await box.press('Enter')
  await page.waitForFunction(async () => (await window.port!.selectedCell()).address === 'D5')
}

/** Gives the cell that a click finds in row 5 right beside the frozen column after that jump. */
export async function besideFrozenAfterJump(page: Page): Promise<string> {
  await jumpBesideFrozen(page)
  const canvas = (await canvasOf(page).boundingBox())!
  await page.mouse.click(canvas.x + left + frozen + narrow / 2, canvas.y + top + 4.5 * row)
  return page.evaluate(async () => (await window.port!.selectedCell()).address)
}

/** Whether something is written in row 3 beside the frozen column, where no cell holds anything. */
export function isWrittenBesideFrozen(page: Page): Promise<boolean> {
  return canvasOf(page).evaluate(
    (canvas, [x, y, width, height]) => {
      const { data } = (canvas as HTMLCanvasElement).getContext('2d')!.getImageData(x, y, width, height)
      // Red, green, blue, and 0 where nothing was drawn. Lines between cells are lighter.
      return data.some((red, index) => index % 4 === 0 && red < 100 && data[index + 3]! > 200)
    },
    [left + frozen + 4, top + 2 * row, 3 * narrow, row] as const,
  )
}

const canvasOf = (page: Page) => page.locator('[id^="univer-sheet-main-canvas"]')
