/**
 * Faults of the grid's library that need the screen, each shown by a grid without its mend. Where one of these is red
 * with a new version, the mend of that name can go. entries.test.ts and workbench.test.ts try the same with the mends.
 */
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest'
import type { SelectedCell } from '../../src/workbook/port'
import { besideFrozenAfterJump, isWrittenBesideFrozen, jumpBesideFrozen } from './besideFrozen'
import { type GridPage, openGridPage } from './gridPage'

let opened: GridPage
let page: Page

beforeAll(async () => {
  opened = await openGridPage('unmendedPage.ts')
  page = opened.page
})

afterAll(() => opened?.close())

afterEach(() => expect(opened.faults.splice(0), 'The page threw or complained').toEqual([]))

const selected = (): Promise<SelectedCell> => page.evaluate(() => window.port!.selectedCell())

/** With the keyboard there. */
async function select(address: string): Promise<void> {
  await page.evaluate(async (given) => {
    await window.port!.select({ sheet: 'Typed', address: given })
    window.focusGrid!()
  }, address)
  await expect.poll(async () => (await selected()).address).toBe(address)
}

async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key)
}

const list = () => page.locator('[data-u-comp="sheets-formula-editor"] li')
const nameBox = () => page.locator('[data-u-comp="defined-name"] input')

it('Without the mend keepTyping the library writes over what is being typed as soon as results come.', async () => {
  await select('A2')
  await page.keyboard.type('22')
  // A result for the same row and column of another sheet.
  await page.evaluate(() => window.port!.calculate())
  await page.keyboard.type('00')
  await press('Enter', 'ArrowUp')
  // Not 2200: of what was typed before the results came nothing is left.
  expect(await selected()).toMatchObject({ address: 'A2', value: 0 })
})

it('Without the mend typedFormulas the library makes another text of a formula whose numbers it spells anew.', async () => {
  await select('B2')
  await page.keyboard.type('=IF(2>1.50,"low","high")')
  await list().first().waitFor({ state: 'detached' })
  await press('Enter', 'ArrowUp')
  expect(await selected()).toMatchObject({ address: 'B2', formula: '=IF(2>1.5,""lo",""hig")' })
})

it('Without the mend filledFormulas the library enters one and the same formula into all selected cells.', async () => {
  await select('C2')
  await press('Shift+ArrowDown')
  await page.keyboard.type('=A4+1')
  await press('Control+Enter')
  await select('C3')
  expect(await selected()).toMatchObject({ formula: '=A4+1' })
})

it('Without the mend emptiedCells the library leaves an empty text in a cell whose editor was emptied.', async () => {
  await select('D2')
  await page.keyboard.type('7')
  await press('Enter', 'ArrowUp', 'F2', 'Backspace', 'Enter', 'ArrowUp')
  // Not null.
  expect(await selected()).toMatchObject({ address: 'D2', value: '' })
})

it('Without the mend nameBox the library leaves its list over the cells, and types into the old name.', async () => {
  await select('E2')
  await page.locator('[data-u-comp="defined-name"] a').click()
  await page.getByText('Price', { exact: true }).click()
  await expect.poll(async () => (await selected()).address).toBe('F5')
  expect(await page.getByText('Price', { exact: true }).count()).toBe(1)
  await nameBox().click()
  await page.keyboard.type('Z')
  expect(await nameBox().inputValue()).not.toBe('Z')
})

it('Without the mend quietJumps nobody hears of a jump by the box of names, for the library sends no command.', async () => {
  await select('E2')
  await nameBox().fill('Price')
  await page.evaluate(() => window.commands!.splice(0))
  await nameBox().press('Enter')
  await expect.poll(async () => (await selected()).address).toBe('F5')
  expect(await page.evaluate(() => window.commands)).not.toContain('sheet.operation.set-selections')
})

it('Without the mend endTypedFormulas the library takes Enter for its list of functions.', async () => {
  await select('G2')
  await page.keyboard.type('=I')
  await list().filter({ hasText: 'INTRATE' }).first().waitFor()
  // The keys wait until the page is free, and then come before it has drawn anything anew.
  const busy = page.evaluate(() => {
    for (const free = performance.now() + 500; performance.now() < free;);
  })
  await Promise.all([busy, ...[...'F(2>1,1,0)', 'Enter'].map((key) => page.keyboard.press(key))])
  await list().first().waitFor({ state: 'detached' })
  await press('Enter')
  await select('G2')
  expect(await selected()).toMatchObject({ formula: '=INTRATE(2>1,1,0)' })
})

it('Without the mend frozenScrolls the library leaves a cell to which one jumps behind a frozen column.', async () => {
  expect(await besideFrozenAfterJump(page)).toBe('H5')
})

it('Without the mend frozenTexts the library draws the end of a frozen text where it has scrolled other columns.', async () => {
  await jumpBesideFrozen(page)
  // Until all is drawn.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))))
  expect(await isWrittenBesideFrozen(page)).toBe(true)
})

it('Without the mend notePlaces the library leaves notes beside other cells as rows come and go.', async () => {
  expect(await page.evaluate(() => window.misplacedNotes!())).not.toEqual([])
})

it('Without the mend barNames most buttons of the grid have no name, and some have roles that do not exist.', async () => {
  const nameless = page.locator('#grid footer button:not([aria-label])')
  expect(await nameless.count()).toBeGreaterThan(5)
  expect(await page.locator('#grid footer [role="track"]').count()).toBe(1)
})
