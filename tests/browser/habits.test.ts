/**
 * What a person in a hurry does to the order book and the prices. Each ends in the right figure, or in a sentence where
 * it was typed, and no total takes a part for the whole. lostFormulas.test.ts has what would take results away.
 */
import type { BrowserContextOptions, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import type { CellPlace } from '../../src/workbook/port'
import { browserWindows } from './browserWindows'
import { above, beside, goTo, inRow, named, numberAt, selectedCell, shown, typeInto } from './seasonPlaces'

const pages = browserWindows()

async function open(options: BrowserContextOptions = {}): Promise<Page> {
  const permissions = ['clipboard-read', 'clipboard-write']
  const page = await pages.open({ viewport: { width: 1440, height: 900 }, permissions, ...options })
  await selectedCell(page)
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  return page
}

const liners = above('Orders', 'Ordered')
/** The order book of the demo has 17 lines and empty rows below them. */
const firstFree = 17
const ofFreeRow = (column: string, below = 0) => named(`Order${column}`, firstFree + below)

async function expectShown(page: Page, place: CellPlace, text: string): Promise<void> {
  await goTo(page, place)
  await expect.poll(() => shown(page), { message: `${place.address} on ${place.sheet}` }).toBe(text)
}

async function paste(page: Page, place: CellPlace, text: string): Promise<void> {
  await goTo(page, place)
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text)
  await page.keyboard.press('Control+v')
}

it('A price with its currency, with a comma and points, or below nothing is marked with a sentence, its row says what to type, and totals wait.', async () => {
  const page = await open()
  const price = inRow('Media', 'Peat', 'Price')
  for (const typed of ['7.45 EUR', '1.500,00', '-7.45']) {
    await typeInto(page, price, typed)
    await expectShown(page, price, `${typed}: Type a number, 0 or more, without its unit.`)
    await expectShown(page, inRow('Media', 'Peat', 'State'), 'Price: type number')
    await expectShown(page, above('Media', 'Cost'), 'not complete')
  }
  await typeInto(page, price, '7.45')
  await expectShown(page, inRow('Media', 'Peat', 'State'), 'ready')
})

it('With the decimal comma 6.500 liners are six and a half thousand, as whoever types them means it.', async () => {
  const page = await open()
  const before = await numberAt(page, liners)
  const pane = page.locator('aside.functions')
  await pane.getByRole('tab', { name: 'Settings' }).click()
  await pane.getByRole('radio', { name: /^Decimal comma/ }).check()
  await typeInto(page, named('OrderLiners'), '6.500')
  await goTo(page, liners)
  // The first line had 14,000.
  await expect.poll(async () => (await shown(page)).replace(/\D/g, '')).toBe(String(before - 14_000 + 6500))
})

it('A space behind a pasted name is no other name, and two lines of one species are two lines.', async () => {
  const page = await open()
  const before = await numberAt(page, liners)
  const line = (number: number, end: string) =>
    [number, '', `Fuchsia${end}`, 1000, '2026-05-04', `Premix in thin trays${end}`, 7].join('\t')
  await paste(page, ofFreeRow('Line'), `${line(201, ' ')}\r\n${line(202, '')}\r\n`)
  await expectShown(page, ofFreeRow('State'), 'ready')
  await expectShown(page, ofFreeRow('State', 1), 'ready')
  expect(await numberAt(page, ofFreeRow('Cuttings'))).toBe(await numberAt(page, ofFreeRow('Cuttings', 1)))
  await goTo(page, liners)
  await expect.poll(async () => Number((await shown(page)).replaceAll(',', ''))).toBe(before + 2000)
})

it('Two lines with one number are both told, because a batch could not say of which one it is.', async () => {
  const page = await open()
  await typeInto(page, named('OrderLine', 1), '101')
  for (const below of [0, 1]) await expectShown(page, named('OrderState', below), 'Two rows have this name')
  await expectShown(page, liners, 'not complete')
})

it("A row that is inserted by the grid's own menu and filled in is not added up without its formulas: totals wait, and the sheet says what to do; one that is deleted leaves the totals of the others.", async () => {
  const page = await open()
  const row = named('OrderState', 5)
  await menuOfRow(page, row)
  await page.getByText('rows above').click({ position: { x: 12, y: 8 } })
  await expectShown(page, { ...row, address: named('OrderLiners', 6).address }, '12,000')
  await typeInto(page, named('OrderLine', 5), '301')
  await typeInto(page, named('OrderLiners', 5), '1000')
  await expectShown(page, liners, 'not complete')
  await expectShown(page, named('OrderNotComplete'), '1')
  await expectShown(page, beside('Season', 'Complete'), 'Not complete: 1 on Orders')
  await menuOfRow(page, row)
  await page.getByText('Delete Selected Row').click()
  await expectShown(page, liners, '148,500')

  await menuOfRow(page, row)
  await page.getByText('Delete Selected Row').click()
  // Line 106 had 12,000.
  await expectShown(page, liners, '136,500')
  await expectShown(page, beside('Season', 'Complete'), 'Every sheet is complete.')
})

/** By the row's own number, left of the grid. */
async function menuOfRow(page: Page, { sheet, address }: CellPlace): Promise<void> {
  await goTo(page, { sheet, address: 'A1' })
  const top = Number(address.slice(1)) - 1
  // The first row is taller; below the letters of the columns all others are 24 pixels high.
  const position = { x: 20, y: 20 + 34 + 24 * (top - 1) + 12 }
  await page.locator('[id^="univer-sheet-main-canvas"]').click({ button: 'right', position })
  await page.getByText('rows above').waitFor()
}
