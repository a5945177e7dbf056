/** What no file holds yet outlives the page: it is kept in the browser, offered again, and gone once it is saved. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { positionOf } from '../../src/formula/address'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { selectedCell, typeInto } from './seasonPlaces'

const pages = browserWindows()
const wide = { width: 1440, height: 900 }

/** In milliseconds. What is older must be there again: the guide says so. */
const stated = 10_000

/** Below it nothing stands in the demo. */
const free = { sheet: 'Season', address: 'H7' }

const bar = (page: Page) => page.locator('.bar .file').first()

const saveButton = (page: Page) => page.getByRole('button', { name: 'Save .xlsx' })

async function ready(page: Page): Promise<Page> {
  await page
    .locator('.sheet .cell')
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  return page
}

/** Another tab of the same browser. */
async function tabBeside(page: Page): Promise<Page> {
  const tab = await page.context().newPage()
  await tab.goto(pages.address)
  return ready(tab)
}

/** When each kept work was kept, as the browser has it. */
function keptIn(page: Page): Promise<readonly number[]> {
  return page.evaluate(
    () =>
      new Promise<readonly number[]>((resolve) => {
        const opening = indexedDB.open('sticksheet')
        opening.onsuccess = () => {
          const asking = opening.result.transaction('unsaved work').objectStore('unsaved work').getAll()
          asking.onsuccess = () => {
            opening.result.close()
            resolve((asking.result as { keptAt: number }[]).map(({ keptAt }) => keptAt))
          }
        }
      }),
  )
}

/** What stands from the free cell down, by the saved file. */
async function savedBelow(page: Page): Promise<readonly unknown[]> {
  const { bytes } = await downloaded(page, () => saveButton(page).click())
  const { rows } = (await readXlsx(bytes)).book.sheets.find(({ name }) => name === free.sheet)!
  const { row, column } = positionOf(free.address)
  return rows.slice(row).flatMap((cells) => cells[column]?.value ?? [])
}

async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const crashed = page.waitForEvent('crash')
  session.send('Page.crash').catch(() => undefined)
  await crashed
  await page.close()
}

/** Types one number below the other until the time is over, in the middle of an entry too; tells when each was entered. */
async function typeFor(page: Page, milliseconds: number, first: number): Promise<readonly number[]> {
  const enteredAt: number[] = []
  const end = Date.now() + milliseconds
  while (Date.now() < end) {
    for (const key of [...String(first + enteredAt.length), 'Enter']) {
      if (Date.now() < end) await page.keyboard.press(key)
      else return enteredAt
    }
    enteredAt.push(Date.now())
  }
  return enteredAt
}

it('Of what is typed for a while, a browser that dies in the middle of it five times gives back whole entries, in their order, and all that were entered more than ten seconds before.', async () => {
  let page = await ready(await pages.open({ viewport: wide, acceptDownloads: true }))
  await typeInto(page, free, '1000')
  await expect.poll(() => keptIn(page).catch(() => [])).toHaveLength(1)
  let standing = 1
  // Drawn once between 11 and 15 seconds.
  for (const [round, moment] of [11_380, 14_720, 12_090, 13_650, 11_910].entries()) {
    const entered = await typeFor(page, moment, 1000 + standing)
    const diedAt = Date.now()
    const next = await page.context().newPage()
    await (round % 2 === 0 ? page.close() : crash(page))
    page = next
    await page.goto(pages.address)
    const offer = page.getByRole('dialog', { name: 'season.xlsx was not saved' })
    await offer.getByRole('button', { name: 'Open it' }).click()
    await expect.poll(() => bar(page).textContent()).toBe('season.xlsx, not saved')
    const there = await savedBelow(page)
    expect(there).toEqual(there.map((_value, index) => 1000 + index))
    const due = entered.filter((time) => time < diedAt - stated).length
    console.log(round, 'entered', entered.length, 'due', due, 'there', there.length - standing)
    expect(due).toBeGreaterThan(0)
    expect(there.length).toBeGreaterThanOrEqual(standing + due)
    // A save clears the mark and what was kept.
    await expect.poll(() => bar(page).textContent()).toBe('season.xlsx')
    await expect.poll(() => keptIn(page)).toEqual([])
    standing = there.length
    await selectedCell(page).waitFor()
    await typeInto(page, { sheet: free.sheet, address: `H${7 + standing}` }, String(1000 + standing))
    standing += 1
  }
})
