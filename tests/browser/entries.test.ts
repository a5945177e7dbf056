/** Types into cells as people do, and reads what then stands in them and what the workbench says. */
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { goTo, named, typeInto } from './seasonPlaces'
import { ready } from './ready'

const pages = browserWindows()

const selected = (page: Page): Locator => page.locator('.sheet .cell')

async function typeDown(page: Page, content: string): Promise<void> {
  await page.keyboard.type(content)
  await page.keyboard.press('Enter')
}

it('Numbers typed one below the other stand as they were typed, though the results of the first come while the next is typed; an entry that its cell does not take is marked, and the sentence of the season says what to type.', async () => {
  const page = await pages.open({ viewport: { width: 1440, height: 900 } })
  await selected(page).filter({ hasText: 'Season, A1' }).waitFor()
  const liners = named('OrderLiners')
  await goTo(page, liners)
  const numbers = ['1100', '2200', '3300', '4400', '5500']
  // As a practised hand types, in milliseconds from key to key; the season takes longer to calculate.
  await page.keyboard.type(numbers.map((number) => `${number}\n`).join(''), { delay: 60 })
  await selected(page)
    .filter({ hasText: `Orders, ${named('OrderLiners', numbers.length).address}` })
    .waitFor()
  for (const [below, shown] of [...['1,100', '2,200', '3,300', '4,400', '5,500'].entries()].reverse()) {
    await page.keyboard.press('ArrowUp')
    await selected(page)
      .filter({ hasText: new RegExp(`^Orders, ${named('OrderLiners', below).address}: ${shown}$`) })
      .waitFor()
  }

  await typeDown(page, '12.5')
  await page.keyboard.press('ArrowUp')
  await selected(page)
    .filter({ hasText: `Orders, ${liners.address}: 12.5: Type a whole number, 0 or more.` })
    .waitFor()
  expect(await selected(page).getAttribute('data-refused')).toBe('true')
  await typeDown(page, '12')
  await page.keyboard.press('ArrowUp')
  await selected(page)
    .filter({ hasText: new RegExp(`^Orders, ${liners.address}: 12$`) })
    .waitFor()
  const method = named('OrderMethod')
  await typeInto(page, method, 'Moss')
  await page.keyboard.press('ArrowUp')
  await selected(page)
    .filter({ hasText: `Orders, ${method.address}: Moss: Type it as it is written on Methods, or choose it` })
    .waitFor()
  await typeDown(page, 'water')
  await page.keyboard.press('ArrowUp')
  await selected(page)
    .filter({ hasText: new RegExp(`^Orders, ${method.address}: water$`) })
    .waitFor()
})

const wide: BrowserContextOptions = {
  viewport: { width: 1440, height: 900 },
  permissions: ['clipboard-read', 'clipboard-write'],
}

/** With the keyboard in the first cell of an empty workbook. */
async function openEmpty(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await pages.openEmpty({ ...wide, ...options })
  await ready(page)
  await selected(page)
    .filter({ hasText: /^Sheet1, A1: (empty|leer)$/ })
    .waitFor()
  await expect
    .poll(() => page.locator('main.sheet').evaluate((sheet) => sheet.contains(document.activeElement)))
    .toBe(true)
  return page
}

/** From the cell below the last one upwards. */
async function expectUpwards(page: Page, shown: readonly string[]): Promise<void> {
  for (const [index, text] of [...shown.entries()].reverse()) {
    await page.keyboard.press('ArrowUp')
    await expect.poll(() => selected(page).textContent()).toBe(`Sheet1, A${index + 1}: ${text}`)
  }
}

it('A formula that was copied down is a formula in each of its cells, and in the saved file too.', async () => {
  const page = await openEmpty({ acceptDownloads: true })
  await page.keyboard.type('10\n20\n30\n40\n')
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('ArrowUp')
  await page.keyboard.press('ArrowRight')
  await typeDown(page, '=A1*2')
  await page.keyboard.press('ArrowUp')
  await selected(page).filter({ hasText: 'Sheet1, B1: =A1*2 gives 20' }).waitFor()
  await page.keyboard.press('Control+c')
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toContain('20')
  for (const key of ['ArrowDown', 'Shift+ArrowDown', 'Control+v']) await page.keyboard.press(key)
  await selected(page).filter({ hasText: 'Sheet1, B2: =A2*2 gives 40' }).waitFor()
  // Down from a block leads below it.
  for (const key of ['ArrowDown', 'ArrowUp', 'Shift+ArrowDown', 'Control+d', 'ArrowDown', 'ArrowUp'])
    await page.keyboard.press(key)
  await selected(page).filter({ hasText: 'Sheet1, B4: =A4*2 gives 80' }).waitFor()
  for (const key of ['ArrowRight', 'Shift+ArrowUp']) await page.keyboard.press(key)
  await page.keyboard.type('=A4+1')
  await page.keyboard.press('Control+Enter')
  for (const key of ['ArrowUp', 'ArrowDown']) await page.keyboard.press(key)
  await selected(page).filter({ hasText: 'Sheet1, C3: =A3+1 gives 31' }).waitFor()
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
  const { book } = await readXlsx(bytes)
  expect(book.sheets[0]!.rows.map((row) => row[1]?.formula)).toEqual(['=A1*2', '=A2*2', '=A3*2', '=A4*2'])
})

it('A formula that is typed keeps its texts and names, however its numbers are written, and compares numbers with an exponent right.', async () => {
  const page = await openEmpty()
  const formulas = ['=IF(2>1.50,"low","high")', '=IF(1E3>2,"x","y")', '=IF(0.5<1E-15,1,2)', '=IF(0.5<.0000001,1,2)']
  for (const formula of formulas) await typeDown(page, formula)
  await expectUpwards(page, [
    '=IF(2>1.5,"low","high") gives low',
    '=IF(1000>2,"x","y") gives x',
    '=IF(0.5<(1*10^-15),1,2) gives 2',
    '=IF(0.5<(1*10^-7),1,2) gives 2',
  ])
})

it('Enter ends a formula, and takes nothing from the list of functions that the page had no time to close.', async () => {
  const page = await openEmpty()
  await page.keyboard.type('=I')
  const list = page.locator('[data-u-comp="sheets-formula-editor"] li')
  await list.filter({ hasText: 'INTRATE' }).first().waitFor()
  // The keys wait until the page is free, and then come before it has drawn anything anew.
  const busy = page.evaluate(() => {
    for (const end = performance.now() + 500; performance.now() < end;);
  })
  await Promise.all([
    busy,
    ...[...'F(2>1,"yes","no")'].map((letter) => page.keyboard.press(letter)),
    page.keyboard.press('Enter'),
  ])
  await list.first().waitFor({ state: 'detached' })
  await expectUpwards(page, ['=IF(2>1,"yes","no") gives yes'])
})

it('An entry whose comma parts no thousands stays a text, and a cell that is emptied in its editor is empty.', async () => {
  const page = await openEmpty()
  for (const entry of ['15,5%', '0,500', '2,200', '7']) await typeDown(page, entry)
  for (const key of ['ArrowUp', 'F2', 'Backspace', 'Enter']) await page.keyboard.press(key)
  await expectUpwards(page, ['15,5%', '0,500', '2,200', 'empty'])
  // 2,200 is shown alike as a number and as a text; only the number adds up.
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('ArrowDown')
  await typeDown(page, '=SUM(A1:A4)')
  await page.keyboard.press('ArrowUp')
  await expect.poll(() => selected(page).textContent()).toBe('Sheet1, A5: =SUM(A1:A4) gives 2,200')
})

it('What is pasted is read like what is typed: with the comma of whoever takes it for the decimal mark, formulas with their point.', async () => {
  const page = await openEmpty({ locale: 'de-DE' })
  await page.evaluate(() =>
    navigator.clipboard.writeText(['2,200', '15,5 %', '1.234,5', '3.5.2026', '=IF(0.5<1E-15,1,2)'].join('\n')),
  )
  await page.keyboard.press('Control+v')
  await selected(page).filter({ hasText: 'Sheet1, A1: 2,2' }).waitFor()
  // Down from a block leads below it.
  await page.keyboard.press('ArrowDown')
  // The third of May, in the format that the grid gives a day that is typed or pasted.
  await expectUpwards(page, ['2,2', '0,155', '1.234,5', '2026-5-3', '=IF(0.5<(1*10^-15),1,2) ergibt 2'])
  for (let step = 0; step < 6; step += 1) await page.keyboard.press('ArrowDown')
  await page.evaluate(() => navigator.clipboard.writeText('1,75'))
  await page.keyboard.press('Control+v')
  await selected(page).filter({ hasText: 'Sheet1, A7: 1,75' }).waitFor()
})
