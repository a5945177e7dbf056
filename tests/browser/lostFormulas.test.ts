/** What would put values, or nothing, over several formulas of the season is asked about, whichever way it comes. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { positionOf } from '../../src/formula/address'
import { pixelsOfPadding, pixelsPerCharacter } from '../../src/workbench/grid/bookToGrid'
import { orders } from '../../src/workbook/season/tables/orders'
import type { CellPlace } from '../../src/workbook/cellPlace'
import { browserWindows } from './browserWindows'
import { above, beside, goTo, named, selectedCell, sheets, shownAt, typeInto } from './seasonPlaces'

const pages = browserWindows()

/** The order book of the demo has 17 lines and empty rows below them. */
const line = named('OrderLine', 17)
const right = { ...line, address: line.address.replace('B', 'C') }
const stickDay = named('OrderStickDay', 17)
const ordered = above('Orders', 'Ordered')

async function open(): Promise<Page> {
  const permissions = ['clipboard-read', 'clipboard-write']
  const page = await pages.open({ viewport: { width: 1440, height: 900 }, permissions })
  await selectedCell(page)
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  return page
}

/** The columns of an order that are calculated. */
const calculated = Object.keys(orders.results).length

const question = (page: Page) => page.getByRole('dialog', { name: 'Replace formulas?' })

async function answer(page: Page, holds: string, button: string): Promise<void> {
  await question(page).getByText(holds).waitFor()
  await question(page).getByRole('button', { name: button }).click()
  await question(page).waitFor({ state: 'detached' })
}

async function expectFormula(page: Page, place: CellPlace, isThere: boolean): Promise<void> {
  await goTo(page, place)
  await expect.poll(async () => (await selectedCell(page).textContent())!.includes(': =')).toBe(isThere)
}

async function paste(page: Page, place: CellPlace, text: string): Promise<void> {
  await goTo(page, place)
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text)
  await page.keyboard.press('Control+v')
}

async function selectTo(page: Page, first: CellPlace, last: CellPlace): Promise<void> {
  await goTo(page, first)
  const [from, to] = [positionOf(first.address), positionOf(last.address)]
  for (let step = from.column; step < to.column; step += 1) await page.keyboard.press('Shift+ArrowRight')
  for (let step = from.row; step < to.row; step += 1) await page.keyboard.press('Shift+ArrowDown')
}

const order = '201\tAcre\tFuchsia\t1000\t2026-05-04\tPremix in thin trays\t7\t90%\t95%\t96%\t90%\t3%'

it('An order that is pasted one column too far to the right is asked about: refused, nothing has changed; with the formulas kept, the typed cells are filled; replaced, its row says so, and one undo brings all back.', async () => {
  const page = await open()
  await paste(page, right, order)
  await question(page).waitFor()
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Cancel')
  await answer(page, `1 cell on Orders would lose its formula: ${stickDay.address}.`, 'Cancel')
  expect(await shownAt(page, named('OrderSpecies', 17))).toBe('empty')
  await expectFormula(page, stickDay, true)

  await paste(page, right, `${order}\n${order}`)
  await answer(page, '2 cells on Orders would lose their formulas: N26, N27.', 'Keep the formulas')
  expect(await shownAt(page, named('OrderSpecies', 18))).toBe('Acre')
  await expectFormula(page, named('OrderStickDay', 18), true)
  await page.keyboard.press('Control+z')
  await expect.poll(() => shownAt(page, named('OrderSpecies', 18))).toBe('empty')
  await page.keyboard.press('Control+y')
  await expect.poll(() => shownAt(page, named('OrderSpecies', 18))).toBe('Acre')
  await expectFormula(page, stickDay, true)
  await page.keyboard.press('Control+z')
  await expect.poll(() => shownAt(page, named('OrderSpecies', 18))).toBe('empty')

  // Over the edge of the sheet, which gets columns for it.
  await paste(page, stickDay, Array.from({ length: 45 }, () => '1').join('\t'))
  await answer(
    page,
    `${calculated} cells on Orders would lose their formulas: N26, O26, P26 and ${calculated - 3} more.`,
    'Cancel',
  )
  await expectFormula(page, stickDay, true)

  await paste(page, right, order)
  await answer(page, stickDay.address, 'Replace')
  await expect.poll(() => shownAt(page, named('OrderState', 17))).toBe('Line: type text')
  await expect.poll(() => shownAt(page, ordered)).toBe('not complete')
  await expect.poll(() => shownAt(page, beside('Season', 'Liners ordered'))).toBe('not complete')
  await goTo(page, right)
  await page.keyboard.press('Control+z')
  await expect.poll(() => shownAt(page, ordered)).toBe('148,500')
  await expectFormula(page, stickDay, true)
})

it('What is emptied, entered into several cells, filled or moved over formulas is asked about; one cell, and formulas over formulas, are not.', async () => {
  const page = await open()
  const batchSpread = { sheet: 'Orders', address: 'M9' }
  await typeInto(page, batchSpread, '0.05')
  await goTo(page, named('OrderCuttings'))
  await goTo(page, batchSpread)
  // The first of the scrolled columns now: from the handle at its lower right corner along the row, to the fourth after.
  const { widths, frozenColumns } = sheets.find(({ name }) => name === 'Orders')!
  const pixels = (from: number, to: number) =>
    widths.slice(from, to).reduce((sum, width) => sum + width * pixelsPerCharacter + pixelsOfPadding, 0)
  const { column } = positionOf(batchSpread.address)
  // Right of the numbers of the rows.
  const corner = 46 + pixels(0, frozenColumns) + pixels(column, column + 1)
  await page.mouse.move(corner, 313)
  await page.mouse.down()
  await page.mouse.move(corner + pixels(column + 1, column + 3), 304, { steps: 3 })
  await page.mouse.move(corner + pixels(column + 1, column + 5) - 20, 304, { steps: 3 })
  await page.mouse.up()
  await answer(page, '4 cells on Orders would lose their formulas: N9, O9, P9 and 1 more.', 'Cancel')
  await expectFormula(page, named('OrderStickDay'), true)

  const line16 = named('OrderLine', 16)
  await selectTo(page, line16, named('OrderStickDay', 16))
  await page.keyboard.press('Delete')
  await answer(page, '1 cell on Orders would lose its formula: N25.', 'Keep the formulas')
  expect(await shownAt(page, line16)).toBe('empty')
  await expectFormula(page, named('OrderStickDay', 16), true)
  await page.keyboard.press('Control+z')
  await expect.poll(() => shownAt(page, ordered)).toBe('148,500')

  await selectTo(page, stickDay, { ...stickDay, address: 'P27' })
  await page.keyboard.type('5')
  await page.keyboard.press('Control+Enter')
  await answer(page, '6 cells on Orders would lose their formulas: N26, O26, P26 and 3 more.', 'Cancel')
  await expectFormula(page, stickDay, true)

  await selectTo(page, named('OrderLiners'), named('OrderDelivery'))
  await page.keyboard.press('Control+x')
  await goTo(page, named('OrderStickDay'))
  await page.keyboard.press('Control+v')
  await question(page).waitFor()
  expect(await question(page).getByRole('button').allTextContents()).toEqual(['Replace', 'Cancel'])
  await page.keyboard.press('Escape')
  await expect.poll(() => shownAt(page, ordered)).toBe('148,500')

  await typeInto(page, stickDay, '5')
  await expectFormula(page, stickDay, false)
  await page.keyboard.press('Control+z')
  await expectFormula(page, stickDay, true)
  await selectTo(page, named('OrderStickDay', 15), named('OrderCuttings', 15))
  await page.keyboard.press('Control+c')
  await goTo(page, stickDay)
  await page.keyboard.press('Control+v')
  await expectFormula(page, named('OrderCuttings', 17), true)
  expect(await question(page).count()).toBe(0)
})
