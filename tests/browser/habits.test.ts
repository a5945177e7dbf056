/**
 * What a person in a hurry does to the order book and the prices. Each ends in the right figure, or in a sentence where
 * it was typed, and no total takes a part for the whole. lostFormulas.test.ts has what would take results away.
 */
import type { BrowserContextOptions, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import type { CellPlace } from '../../src/workbook/cellPlace'
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
/** The order book of the demo has 17 lines and empty rows after them. */
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

it("A row that is inserted by the grid's own menu gets the formulas, looks and rules of its table and counts once it is filled in; one undo takes it away; at the edge of the table it comes inside; one that is deleted leaves the totals of the others.", async () => {
  const page = await open()
  await insertRow(page, named('OrderState', 5), 'rows above')
  await expectShown(page, named('OrderLiners', 6), '12,000')
  await expectShown(page, named('OrderLiners', 5), 'empty')
  await goTo(page, named('OrderCuttings', 5))
  await expect.poll(() => selectedCell(page).textContent()).toContain('STICK.CUTTINGS($E14,')
  await page.keyboard.press('Control+z')
  await expectShown(page, named('OrderLiners', 5), '12,000')
  await page.keyboard.press('Control+y')
  await expectShown(page, named('OrderLiners', 5), 'empty')

  await typeInto(page, named('OrderLine', 5), '301')
  await typeInto(page, named('OrderLiners', 5), '12.5')
  await expectShown(page, named('OrderLiners', 5), '12.5: Type a whole number, 0 or more.')
  await typeInto(page, named('OrderLiners', 5), '1000')
  await expectShown(page, liners, 'not complete')
  await expectShown(page, named('OrderNotComplete'), '1')
  await expectShown(page, beside('Season', 'Complete'), 'Not complete: 1 on Orders')
  await paste(page, named('OrderSpecies', 5), 'Fuchsia\t1000\t2026-05-04\tPremix in thin trays\t7')
  await expectShown(page, named('OrderState', 5), 'ready')
  await expectShown(page, liners, '149,500')
  await deleteRow(page, named('OrderState', 5))
  await expectShown(page, liners, '148,500')
  await deleteRow(page, named('OrderState', 5))
  // Line 106 had 12,000.
  await expectShown(page, liners, '136,500')
  await expectShown(page, beside('Season', 'Complete'), 'Every sheet is complete.')

  await insertRow(page, named('OrderState'), 'rows above')
  await expectShown(page, named('OrderLine'), '101')
  await typeInto(page, named('OrderLine', 1), '302')
  await expectShown(page, named('OrderNotComplete'), '1')
  await insertRow(page, named('OrderState', 19), 'rows after')
  await typeInto(page, named('OrderLine', 19), '303')
  await expectShown(page, named('OrderNotComplete'), '2')
})

async function insertRow(page: Page, row: CellPlace, where: 'rows above' | 'rows after'): Promise<void> {
  await menuOfRow(page, row)
  await page.getByText(where).click({ position: { x: 12, y: 8 } })
}

async function deleteRow(page: Page, row: CellPlace): Promise<void> {
  await menuOfRow(page, row)
  await page.getByText('Delete Selected Row').click()
}

/** By the row's own number, left of the grid. */
async function menuOfRow(page: Page, { sheet, address }: CellPlace): Promise<void> {
  await goTo(page, { sheet, address: 'A1' })
  const top = Number(address.slice(1)) - 1
  // The first row is taller; below the letters of the columns all others are 24 pixels high.
  const position = { x: 20, y: 20 + 34 + 24 * (top - 1) + 12 }
  await page.locator('[id^="univer-sheet-main-canvas"]').click({ button: 'right', position })
  await page.getByText('rows above').waitFor()
}
