/** What no file holds yet outlives the page: it is kept in the browser, offered again, and gone once it is saved. */
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { positionOf } from '../../src/formula/address'
import type { Book } from '../../src/workbook/book'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../src/workbench/xlsx/writeXlsx'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { goTo, selectedCell, typeInto } from './seasonPlaces'

const pages = browserWindows()
const wide = { width: 1440, height: 900 }

/** In milliseconds. What is older must be there again: the guide says so. */
const stated = 10_000

/** Of an empty workbook, and of the demo, in which nothing stands below it. */
const free = { sheet: 'Sheet1', address: 'H7' }
const freeInDemo = { sheet: 'Season', address: 'H7' }

const bar = (page: Page) => page.locator('.bar .file').first()

const saveButton = (page: Page) => page.getByRole('button', { name: 'Save .xlsx' })

async function ready(page: Page, { sheet } = free): Promise<Page> {
  await page
    .locator('.sheet .cell')
    .filter({ hasText: `${sheet}, A1:` })
    .waitFor()
  return page
}

/** Another tab of the same browser. */
async function tabBeside(page: Page): Promise<Page> {
  const tab = await page.context().newPage()
  await tab.goto(pages.emptyAddress)
  return ready(tab)
}

/** Of each kept work its version, or when it was kept, as the browser has it. */
function keptIn(page: Page, what: 'version' | 'keptAt' = 'version'): Promise<readonly number[]> {
  return page.evaluate(
    (what) =>
      new Promise<readonly number[]>((resolve) => {
        const opening = indexedDB.open('sticksheet')
        // Nothing was ever kept, and what only looks is not to begin it.
        opening.onupgradeneeded = () => opening.transaction!.abort()
        opening.onerror = () => resolve([])
        opening.onsuccess = () => {
          const asking = opening.result.transaction('unsaved work').objectStore('unsaved work').getAll()
          asking.onsuccess = () => {
            opening.result.close()
            resolve((asking.result as Record<typeof what, number>[]).map((work) => work[what]))
          }
        }
      }),
    what,
  )
}

/** What stands from the free cell down, by the saved file. */
async function savedBelow(page: Page, { sheet, address } = free): Promise<readonly unknown[]> {
  const { bytes } = await downloaded(page, () => saveButton(page).click())
  const { rows } = (await readXlsx(bytes)).book.sheets.find(({ name }) => name === sheet)!
  const { row, column } = positionOf(address)
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

/** In milliseconds, drawn once between 11 and 15 seconds. The rest takes a minute and tells the same: `EVERY_DEATH=1`. */
const moments = [11_380, 14_720, 12_090, 13_650, 11_910]
const everyDeath = process.env['EVERY_DEATH'] === '1'

it('Of what is typed for a while, a browser that dies in the middle of it again and again gives back whole entries, in their order, and all that were entered more than ten seconds before.', async () => {
  let page = await ready(await pages.open({ viewport: wide, acceptDownloads: true }), freeInDemo)
  await typeInto(page, freeInDemo, '1000')
  await expect.poll(() => keptIn(page)).toEqual([1])
  let standing = 1
  for (const [round, moment] of (everyDeath ? moments : moments.slice(0, 2)).entries()) {
    const entered = await typeFor(page, moment, 1000 + standing)
    const diedAt = Date.now()
    const next = await page.context().newPage()
    await (round % 2 === 0 ? page.close() : crash(page))
    page = next
    await page.goto(pages.address)
    const offer = page.getByRole('dialog', { name: 'season.xlsx was not saved' })
    await offer.getByRole('button', { name: 'Open it' }).click()
    await expect.poll(() => bar(page).textContent()).toBe('season.xlsx, not saved')
    const there = await savedBelow(page, freeInDemo)
    expect(there).toEqual(there.map((_value, index) => 1000 + index))
    const due = entered.filter((time) => time < diedAt - stated).length
    expect(due).toBeGreaterThan(0)
    expect(there.length).toBeGreaterThanOrEqual(standing + due)
    // A save clears the mark and what was kept.
    await expect.poll(() => bar(page).textContent()).toBe('season.xlsx')
    await expect.poll(() => keptIn(page)).toEqual([])
    standing = there.length
    await selectedCell(page).waitFor()
    await typeInto(page, { ...freeInDemo, address: `H${7 + standing}` }, String(1000 + standing))
    standing += 1
  }
})

const dialog = (page: Page, name: string) => page.getByRole('dialog', { name })

const offered = (page: Page) => dialog(page, 'workbook.xlsx was not saved')

/** As another version of the page would have kept it. */
function keepInBrowser(page: Page, name: string, version: number, bytes: Uint8Array): Promise<void> {
  return page.evaluate(
    ([name, version, bytes]) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('sticksheet')
        opening.onsuccess = () => {
          const writing = opening.result.transaction('unsaved work', 'readwrite')
          const file = { name: `${name}.xlsx`, lost: [] }
          const work = { version, file, title: '', keptAt: Date.UTC(2026, version, 3), bytes: new Uint8Array(bytes) }
          writing.objectStore('unsaved work').put(work, name)
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
          writing.onabort = reject
        }
      }),
    [name, version, [...bytes]] as const,
  )
}

it('Tabs side by side keep their own work: what only one of them has left behind is offered, in the language of the pane, until it is thrown away or opened; so is what an older page has kept, but not what a newer one has.', async () => {
  const first = await ready(await pages.openEmpty({ viewport: wide }))
  const second = await tabBeside(first)
  // A season begins with its title.
  await typeInto(first, { ...free, address: 'A1' }, 'One season of propagation')
  await typeInto(first, free, '11')
  await typeInto(second, free, '22')
  await expect.poll(() => keptIn(first)).toEqual([1, 1])
  // Taken back, nothing of it is left to be kept.
  const third = await tabBeside(first)
  await typeInto(third, free, '33')
  await expect.poll(() => keptIn(first)).toEqual([1, 1, 1])
  await third.keyboard.press('Control+z')
  await expect.poll(() => bar(third).textContent()).toBe('workbook.xlsx')
  await expect.poll(() => keptIn(first)).toEqual([1, 1])

  await first.close()
  const early: Book = { names: [], sheets: [{ ...emptySheet, rows: [[{ value: 'of an older page' }]] }] }
  await keepInBrowser(third, 'spring', 1, await writeXlsx(early))
  await keepInBrowser(third, 'autumn', 2, new Uint8Array(3))
  await third.evaluate(() => localStorage.setItem('sticksheet settings', '{"language":"de"}'))
  await third.reload()
  const inGerman = dialog(third, 'workbook.xlsx wurde nicht gespeichert')
  await inGerman
    .getByText(/^Dieser Browser hat die Arbeitsmappe „One season of propagation“ .*\d\d:\d\d war\.$/)
    .waitFor()
  await expectNoViolationsInAnyLook(third, { widths: [320, 1440], place: 'dialog' })
  expect(
    await inGerman
      .getByRole('button', { name: 'Später entscheiden' })
      .evaluate((last) => last === document.activeElement),
  ).toBe(true)
  await inGerman.getByRole('button', { name: 'Verwerfen' }).click()
  // The second tab still lives, so the older page's is next, and then no other.
  await dialog(third, 'spring.xlsx wurde nicht gespeichert').waitFor()
  await third.keyboard.press('Enter')
  await expect.poll(() => third.getByRole('dialog').count()).toBe(0)
  await expect.poll(() => keptIn(third)).toHaveLength(3)

  await second.close()
  await third.evaluate(() => localStorage.removeItem('sticksheet settings'))
  await third.reload()
  await offered(third).getByRole('button', { name: 'Decide later' }).click()
  await dialog(third, 'spring.xlsx was not saved').getByRole('button', { name: 'Open it' }).click()
  await expect.poll(() => selectedCell(third).textContent()).toBe('Sheet1, A1: of an older page')
  await expect.poll(() => bar(third).textContent()).toBe('spring.xlsx, not saved')
  await expect.poll(() => third.title()).toBe('spring.xlsx, not saved – Sticksheet')

  // As this page keeps it, it is the newest.
  await expect.poll(() => keptIn(third, 'keptAt')).not.toContain(Date.UTC(2026, 1, 3))
  await third.reload()
  await dialog(third, 'spring.xlsx was not saved').getByRole('button', { name: 'Throw it away' }).click()
  await offered(third).getByRole('button', { name: 'Open it' }).click()
  await expect.poll(() => bar(third).textContent()).toBe('workbook.xlsx, not saved')
  await goTo(third, free)
  expect(await selectedCell(third).textContent()).toBe('Sheet1, H7: 22')
  await third.getByRole('button', { name: 'New', exact: true }).click()
  await third.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect.poll(() => bar(third).textContent()).toBe('workbook.xlsx')
  // A newer page will open its own.
  await expect.poll(() => keptIn(third)).toEqual([2])
})

it('A browser that does not tell which tabs live offers what another tab may still be at, says so, and leaves it to that tab where it is opened.', async () => {
  const page = await ready(await pages.openEmpty({ viewport: wide }))
  await typeInto(page, free, '11')
  await expect.poll(() => keptIn(page)).toEqual([1])
  const other = await page.context().newPage()
  await other.addInitScript(() => {
    delete (Navigator.prototype as { locks?: unknown }).locks
  })
  await other.goto(pages.emptyAddress)
  await offered(other).getByText('It may still be open in another tab.').waitFor()
  await offered(other).getByRole('button', { name: 'Open it' }).click()
  await expect.poll(() => keptIn(page)).toEqual([1, 1])
  await goTo(other, free)
  expect(await selectedCell(other).textContent()).toBe('Sheet1, H7: 11')
})

const emptySheet = { name: 'Sheet1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }

it('A browser that refuses to keep anything says so once, in a sentence, and stops nothing.', async () => {
  const page = await pages.blank({ viewport: wide, acceptDownloads: true })
  await page.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('No room', 'QuotaExceededError')
    }
  })
  await page.goto(pages.emptyAddress)
  await ready(page)
  const notice = page.getByRole('status', { name: 'Notice' })
  expect(await notice.count()).toBe(0)
  await typeInto(page, free, '11')
  await expect.poll(() => bar(page).textContent()).toBe('workbook.xlsx, not saved')
  await notice.filter({ hasText: 'This browser cannot keep unsaved work: save often.' }).waitFor()
  await expectNoViolationsInAnyLook(page, { widths: [320, 1440], place: '.bar' })
  expect(await savedBelow(page)).toEqual([11])
  await expect.poll(() => bar(page).textContent()).toBe('workbook.xlsx')
})

interface Picking {
  /** How often a place was asked for. */
  picked?: number
  leavesNext?: boolean
}

/** Pickers as the system would show them, with files of the browser's own: the handles are real. */
async function bringPickers(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const picking = window as Picking
    picking.picked = 0
    const choose = async (name: string) => {
      picking.picked! += 1
      if (picking.leavesNext) throw new DOMException('Left', 'AbortError')
      return (await navigator.storage.getDirectory()).getFileHandle(name, { create: true })
    }
    Object.assign(window, {
      showSaveFilePicker: ({ suggestedName }: { suggestedName: string }) => choose(suggestedName),
      showOpenFilePicker: async () => [await choose('workbook.xlsx')],
    })
  })
}

/** What the file of that name holds in the free cell. */
async function inFile(page: Page): Promise<unknown> {
  const bytes = await page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('workbook.xlsx')
    return [...new Uint8Array(await (await handle.getFile()).arrayBuffer())]
  })
  const { rows } = (await readXlsx(Uint8Array.from(bytes))).book.sheets.find(({ name }) => name === free.sheet)!
  const { row, column } = positionOf(free.address)
  return rows[row]![column]?.value
}

it('Where the browser can, a save goes into the file itself, which is asked for once, also after a crash, and asks before it writes over what somebody else has written.', async () => {
  const page = await pages.blankInProfile({ viewport: wide })
  await bringPickers(page)
  await page.goto(pages.emptyAddress)
  await ready(page)
  const typeAndSave = async (tab: Page, content: string) => {
    await typeInto(tab, free, content)
    await expect.poll(() => bar(tab).textContent()).toBe('workbook.xlsx, not saved')
    await saveButton(tab).click()
  }
  const timesPicked = (tab: Page) => tab.evaluate(() => (window as Picking).picked)
  const saved = (tab: Page) => expect.poll(() => bar(tab).textContent()).toBe('workbook.xlsx')

  await page.evaluate(() => Object.assign(window, { leavesNext: true }))
  await typeAndSave(page, '10')
  await expect.poll(() => timesPicked(page)).toBe(1)
  expect(await bar(page).textContent()).toBe('workbook.xlsx, not saved')
  await page.evaluate(() => Object.assign(window, { leavesNext: false }))
  await typeAndSave(page, '11')
  await saved(page)
  expect(await inFile(page)).toBe(11)
  await typeAndSave(page, '12')
  await saved(page)
  expect([await inFile(page), await timesPicked(page)]).toEqual([12, 2])

  // Another program.
  await page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('workbook.xlsx')
    const bytes = await (await handle.getFile()).arrayBuffer()
    const file = await handle.createWritable()
    await file.write(bytes)
    await file.close()
  })
  await typeAndSave(page, '13')
  await dialog(page, 'workbook.xlsx has changed').getByRole('button', { name: 'Cancel' }).click()
  expect(await inFile(page)).toBe(12)
  await expect.poll(() => keptIn(page)).toEqual([1])

  await crash(page)
  const next = await page.context().newPage()
  await bringPickers(next)
  await next.goto(pages.emptyAddress)
  await offered(next).getByRole('button', { name: 'Open it' }).click()
  await expect.poll(() => bar(next).textContent()).toBe('workbook.xlsx, not saved')
  await saveButton(next).click()
  await dialog(next, 'workbook.xlsx has changed').getByRole('button', { name: 'Replace it' }).click()
  await saved(next)
  expect([await inFile(next), await timesPicked(next)]).toEqual([13, 0])

  await typeInto(next, free, '14')
  await expect.poll(() => bar(next).textContent()).toBe('workbook.xlsx, not saved')
  await next.getByRole('button', { name: 'Save as' }).click()
  await saved(next)
  expect([await inFile(next), await timesPicked(next)]).toEqual([14, 1])
  await next.getByRole('button', { name: 'Open .xlsx' }).click()
  await expect.poll(() => timesPicked(next)).toBe(2)
  await ready(next)
  await typeAndSave(next, '15')
  await saved(next)
  expect([await inFile(next), await timesPicked(next)]).toEqual([15, 2])
})
