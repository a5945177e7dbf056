/** Boxes of the season keep their looks, number formats and rules, whatever is pasted into them or cut out of them. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { positionOf } from '../../src/formula/address'
import type { Book, Cell } from '../../src/workbook/book'
import type { CellPlace } from '../../src/workbook/cellPlace'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { goTo, named, selectedCell, shownAt, sheets } from './seasonPlaces'

const pages = browserWindows()

const loud = 'background:#f00;color:#0f0;font:bold 20pt Courier'

/** As another program copies cells, with its own looks. */
async function copyLoud(page: Page, cells: readonly string[]): Promise<void> {
  const row = cells.map((cell) => `<td style="${loud}">${cell}</td>`).join('')
  await page.evaluate(
    ([html, text]) =>
      navigator.clipboard.write([
        new ClipboardItem({
          'text/html': new Blob([html!], { type: 'text/html' }),
          'text/plain': new Blob([text!], { type: 'text/plain' }),
        }),
      ]),
    [`<table><tr>${row}</tr></table>`, cells.join('\t')],
  )
}

function cellOf(book: Pick<Book, 'sheets'>, { sheet, address }: CellPlace): Cell | undefined {
  const { row, column } = positionOf(address)
  return book.sheets.find(({ name }) => name === sheet)!.rows[row]?.[column]
}

it('Values that are pasted from another program, a heading that is pasted and a value that is cut leave boxes as they are: percents, days and numbers are read, and the saved file has the same looks, formats and rules.', async () => {
  const permissions = ['clipboard-read', 'clipboard-write']
  const page = await pages.open({ viewport: { width: 1440, height: 900 }, permissions, acceptDownloads: true })
  await selectedCell(page)
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  const species = named('OrderSpecies', 17)
  await goTo(page, species)
  await copyLoud(page, ['<b>Fuchsia</b>', '1,234', '2026-05-04', 'Water', '7', '90%', '0.95'])
  await page.keyboard.press('Control+v')
  const inRow = (column: string) => ({ sheet: 'Orders', address: `${column}26` })
  await expect.poll(() => shownAt(page, species)).toBe('Fuchsia')
  const pasted = []
  for (const column of ['E', 'F', 'G', 'H', 'I', 'J']) pasted.push(await shownAt(page, inRow(column)))
  // The fourth of May, in the format of its box.
  expect(pasted).toEqual(['1,234', '2026-05-04', 'Water', '7', '0.9', '0.95'])

  await goTo(page, { sheet: 'Orders', address: 'E8' })
  await page.keyboard.press('Control+c')
  await goTo(page, { sheet: 'Orders', address: 'E27' })
  await page.keyboard.press('Control+v')
  await expect.poll(() => shownAt(page, { sheet: 'Orders', address: 'E27' })).toMatch(/^Ordered: Type a whole number/)
  await goTo(page, { sheet: 'Orders', address: 'E25' })
  await page.keyboard.press('Control+x')
  await goTo(page, { sheet: 'Orders', address: 'H27' })
  await page.keyboard.press('Control+v')
  await expect.poll(() => shownAt(page, { sheet: 'Orders', address: 'H27' })).toBe('8,000')

  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
  const { book } = await readXlsx(bytes)
  const places = ['D26', 'E26', 'F26', 'G26', 'H26', 'I26', 'J26', 'E25', 'E27', 'H27'].map((address) => ({
    sheet: 'Orders',
    address,
  }))
  const box = ({ look, format, allowed }: Cell) => ({ look, format, allowed })
  expect(places.map((place) => box(cellOf(book, place)!))).toEqual(
    places.map((place) => box(cellOf({ sheets }, place)!)),
  )
})
