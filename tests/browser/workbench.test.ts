/** Opens the workbench in a real browser, changes the season by keyboard and reads what the live region says of the cells. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import type { CellPlace } from '../../src/workbook/cellPlace'
import type { StoredResults } from '../../src/workbook/storedResults'
import { partsOf } from '../workbench/xlsx/sampleBook'
import { beginEmptyWorkbook } from './beginEmptyWorkbook'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { beside, goTo, inRow, named, names, numberAt, selectedCell, sheets, shownAt, typeInto } from './seasonPlaces'

const wide = { width: 1440, height: 900 }
const narrow = { width: 320, height: 640 }

const pages = browserWindows()

async function openWorkbench(viewport: { width: number; height: number }): Promise<Page> {
  const page = await pages.open({ viewport, acceptDownloads: true })
  await atCell(page, 'Season, A1')
  return page
}

/** Waits until the cell is the selected one, and gives what the page says of it. */
async function atCell(page: Page, place: string): Promise<string> {
  const line = selectedCell(page).filter({ hasText: new RegExp(`^${place}:`) })
  await line.waitFor()
  return (await line.textContent())!
}

async function press(page: Page, key: string, times = 1): Promise<void> {
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
}

async function focusIsIn(page: Page, place: string): Promise<void> {
  await expect.poll(() => page.locator(place).evaluate((region) => region.contains(document.activeElement))).toBe(true)
}

/** The number in which the line of a cell ends. */
function numberIn(line: string): number {
  return Number(/(-?[\d,.]+)$/.exec(line)?.[1]?.replaceAll(',', ''))
}

/** The liners ordered on the first line of the order book, and the cuttings to stick for them. */
const [liners, cuttings] = [named('OrderLiners'), named('OrderCuttings')]
const below = named('OrderLiners', 1)
const ordered = beside('Season', 'Liners ordered')

const atPlace = (page: Page, { sheet, address }: CellPlace) => atCell(page, `${sheet}, ${address}`)

describe('the workbench', () => {
  it('opens on the demo season with its figures calculated, lets the results on this and on another sheet follow an input that is typed by keyboard, undoes it, and asks no other machine for anything', async () => {
    const page = await pages.blank({ viewport: wide })
    const asked: string[] = []
    page.context().on('request', (request) => asked.push(request.url()))
    page.on('websocket', (socket) => asked.push(socket.url()))
    await page.goto(pages.address)
    await atCell(page, 'Season, A1')
    const before = await numberAt(page, ordered)
    expect(await numberAt(page, beside('Season', 'Cuttings to stick'))).toBeGreaterThan(100_000)
    const cuttingsBefore = await numberAt(page, cuttings)
    const order = await numberAt(page, liners)

    await page.keyboard.type(String(2 * order))
    await press(page, 'Enter')
    await atPlace(page, below)
    await goTo(page, cuttings)
    await expect.poll(async () => numberIn(await atPlace(page, cuttings)) / cuttingsBefore).toBeCloseTo(2, 1)
    await goTo(page, ordered)
    await expect.poll(async () => numberIn(await atPlace(page, ordered))).toBe(before + order)

    // The grid shows what it undoes.
    await press(page, 'Control+z')
    await atPlace(page, liners)
    await goTo(page, ordered)
    await expect.poll(async () => numberIn(await atPlace(page, ordered))).toBe(before)

    const foreign = asked.filter((address) => !/^(data|blob):/.test(address) && !address.startsWith(pages.address))
    expect(asked.length).toBeGreaterThan(1)
    expect(foreign).toEqual([])
  })

  it('says at a refusing cell what to type instead, and no longer says it once the input is mended', async () => {
    const page = await openWorkbench(wide)
    const free = { sheet: 'Season', address: 'H7' }
    await typeInto(page, free, '=STICK.BAGS(300,-60)')
    await press(page, 'ArrowUp')
    await selectedCell(page)
      .filter({ hasText: /^Season, H7: .*#VALUE!: .*[Tt]ype / })
      .waitFor()
    await typeInto(page, free, '=STICK.BAGS(300,60)')
    await press(page, 'ArrowUp')
    await selectedCell(page)
      .filter({ hasText: /^Season, H7: .* gives 5$/ })
      .waitFor()

    // In the season the row itself says it, and what follows from it waits.
    const strike = inRow('Orders', '101', 'Strike')
    await typeInto(page, strike, 'much')
    expect(await shownAt(page, named('OrderState'))).toBe('Strike: type share or blank')
    expect(await shownAt(page, cuttings)).toBe('')
    await typeInto(page, strike, '0.9')
    await goTo(page, cuttings)
    await expect.poll(async () => numberIn(await atPlace(page, cuttings))).toBeGreaterThan(14_000)
  })

  it('lets the keyboard leave the sheet: F6 moves on through bar, sheet and functions, and with Shift back; and refuses a file that is no workbook with a sentence, and keeps the open one', async () => {
    const page = await pages.openEmpty({ viewport: wide })
    await atCell(page, 'Sheet1, A1')
    await focusIsIn(page, '.sheet')
    await page.keyboard.type('kept')
    await press(page, 'Enter')
    await atCell(page, 'Sheet1, A2')
    for (const place of ['.functions', '.bar', '.sheet']) {
      await press(page, 'F6')
      await focusIsIn(page, place)
    }
    await press(page, 'Shift+F6')
    await focusIsIn(page, '.bar')

    await page
      .getByLabel('Excel file to open')
      .setInputFiles({ name: 'notes.xlsx', mimeType: 'text/plain', buffer: Buffer.from('no workbook') })
    const dialog = page.getByRole('dialog', { name: 'notes.xlsx could not be read' })
    await dialog.waitFor()
    await press(page, 'Enter')
    await dialog.waitFor({ state: 'detached' })
    expect(await page.locator('.bar .file').textContent()).toBe('workbook.xlsx, not saved')
    await press(page, 'F6')
    await focusIsIn(page, '.sheet')
    await press(page, 'ArrowUp')
    expect(await atCell(page, 'Sheet1, A1')).toBe('Sheet1, A1: kept')
  })

  it('leads to the chosen tab where F6 is pressed the moment that the pane shows its tabs, from which Tab goes on into what it shows', async () => {
    const page = await pages.blank({ viewport: wide })
    await page.addInitScript(() => {
      const waiting = new MutationObserver(() => {
        if (document.querySelector('aside.functions [role="tab"][aria-selected="true"]') === null) return
        waiting.disconnect()
        document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'F6', bubbles: true }))
      })
      waiting.observe(document, { childList: true, subtree: true })
    })
    await page.goto(pages.address)
    const functions = page.locator('aside.functions')
    await functions.getByRole('searchbox').waitFor()
    await focusIsIn(page, '.functions')
    const chosen = functions.getByRole('tab', { selected: true })
    await expect.poll(() => chosen.evaluate((tab) => tab === document.activeElement)).toBe(true)
    await page.keyboard.press('Tab')
    await expect
      .poll(() => functions.getByRole('searchbox').evaluate((box) => box === document.activeElement))
      .toBe(true)
  })

  it('jumps by a name or an address of any sheet that is typed or chosen, and by that of no sheet nowhere, tells the cell that it reached, and leaves no list of names over the cells', async () => {
    const page = await openWorkbench(wide)
    const box = page.locator('.sheet [data-u-comp="defined-name"] input')
    const listed = page.getByText(names[0]!.name, { exact: true })
    await box.click()
    await page.keyboard.type('OrderLiners')
    await press(page, 'Enter')
    await atPlace(page, liners)
    await expect.poll(() => listed.count()).toBe(0)
    await page.keyboard.type('700')
    await press(page, 'Enter')
    await atPlace(page, below)
    await box.click()
    await page.keyboard.type(liners.address)
    await press(page, 'Enter')
    expect(await atPlace(page, liners)).toMatch(/: 700$/)
    await box.fill('Season!A1')
    await press(page, 'Enter')
    await atPlace(page, { sheet: 'Season', address: 'A1' })
    for (const typed of ['Ordres!B2', 'Orders!E1:XFD9', 'Orders!XFD1048576', 'Orders!E9!B2', 'Orders!Liners']) {
      await box.fill(typed)
      await press(page, 'Enter')
      const noPlace = page.getByRole('dialog', { name: `There is no place ${typed}` })
      await noPlace.getByText('Type the name of cells, a cell such as B4,').waitFor()
      await noPlace.getByRole('button', { name: 'Close' }).click()
      await atPlace(page, { sheet: 'Season', address: 'A1' })
    }

    await page.locator('.sheet [data-u-comp="defined-name"] a').click()
    await page.getByText(names[0]!.name, { exact: true }).click()
    await atPlace(page, named(names[0]!.name))
    await expect.poll(() => listed.count()).toBe(0)
  })

  it('shows the demo with its results before it has calculated them, and calculated ones where none are stored', async () => {
    const page = await pages.blank({ viewport: wide })
    // The first text of the line below the sheet, and whether another workbook could take the place of the demo by then.
    await page.addInitScript(() => {
      const first = new MutationObserver(() => {
        if (!document.querySelector('.cell')?.textContent) return
        first.disconnect()
        document.body.dataset['first'] = String(document.querySelector('.bar > button:first-of-type:enabled') !== null)
      })
      first.observe(document, { childList: true, subtree: true, characterData: true })
    })
    await page.goto(pages.address)
    await atCell(page, 'Season, A1')
    const stored = await numberAt(page, ordered)
    expect(stored).toBeGreaterThan(100_000)
    expect(await page.locator('body').getAttribute('data-first')).toBe('false')
    // What a file is saved with was calculated in this browser.
    const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
    const { formulas } = await readXlsx(bytes)
    const results = (await (await fetch(`${pages.address}/demo-results.json`)).json()) as StoredResults
    const before = results.map(({ values }) => values)
    // A file stores no empty text.
    const after = before.map((values, sheet) =>
      Object.fromEntries(
        Object.keys(values).map((address) => [address, formulas.result(sheets[sheet]!.name, address) ?? '']),
      ),
    )
    expect(after).toEqual(before)
    expect(before.flatMap((values) => Object.keys(values)).length).toBeGreaterThan(1000)

    await page.route('**/demo-results.json', (route) => route.abort())
    pages.expectFault(/demo-results.json/)
    await page.reload()
    await atCell(page, 'Season, A1')
    expect(await numberAt(page, ordered)).toBe(stored)
    expect(await page.locator('body').getAttribute('data-first')).toBe('true')
  })

  it('does not look ready before it takes what is typed, and says that an earlier key was left out', async () => {
    const page = await pages.blank({ viewport: wide })
    await page.goto(pages.address, { waitUntil: 'commit' })
    const veil = page.getByText('Getting the sheet ready')
    await veil.waitFor()
    await page.keyboard.press('7')
    await page.getByText('The sheet was not ready yet, so what you typed was left out. Type it again.').waitFor()
    await veil.waitFor({ state: 'detached' })
    // After a pause all goes to the sheet again, in which nothing was changed.
    await expect
      .poll(
        async () => {
          await press(page, 'ArrowRight')
          return selectedCell(page).textContent()
        },
        { interval: 1000 },
      )
      .toMatch(/^Season, [A-Z]1: /)
    while (!(await selectedCell(page).textContent())!.startsWith('Season, A1:')) await press(page, 'ArrowLeft')
    expect(await atCell(page, 'Season, A1')).toMatch(/: One season of propagation$/)
  })

  it('saves a workbook with the results of what was just typed, that it opens again on the same sheet, with the same input in it, under the ending of a file without macros', async () => {
    const page = await openWorkbench(wide)
    await goTo(page, liners)
    await page.keyboard.type('12345')
    await press(page, 'Enter')
    const { name, bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
    // What previews and other programs show: 148,500 in all, of which 14,000 were 12,345 a moment before the click.
    const { 'xl/worksheets/sheet1.xml': season } = await partsOf(bytes)
    expect(season).toContain(`<v>${148_500 - 14_000 + 12_345}</v>`)

    await beginEmptyWorkbook(page)
    await atCell(page, 'Sheet1, A1')
    // The keyboard is on the button until the file is open, and then in the sheet.
    await page.getByRole('button', { name: 'Open .xlsx' }).focus()
    // Under the ending of a file with macros Excel would not open what is saved, which has none.
    const withMacros = name.replace('.xlsx', '.xlsm')
    await page.getByLabel('Excel file to open').setInputFiles({ name: withMacros, mimeType: '', buffer: bytes })
    await focusIsIn(page, '.sheet')
    await atCell(page, 'Orders, A1')
    expect(await page.locator('.bar .file').textContent()).toContain(name)
    await goTo(page, liners)
    expect(await atPlace(page, liners)).toMatch(/12,345$/)
  })

  it('asks before it lets go of what was typed since the workbook was opened or saved, and only then', async () => {
    const page = await pages.openEmpty({ viewport: wide, acceptDownloads: true })
    const openButton = page.getByRole('button', { name: 'Open .xlsx' })
    const choosing = async (act: () => Promise<void>) => Promise.all([page.waitForEvent('filechooser'), act()])
    const asked: string[] = []
    page.on('dialog', (dialog) => {
      asked.push(dialog.type())
      void dialog.dismiss()
    })
    await atCell(page, 'Sheet1, A1')
    await choosing(() => openButton.click())

    await press(page, 'F6')
    await focusIsIn(page, '.sheet')
    await page.keyboard.type('12345')
    await press(page, 'Enter')
    await page.close({ runBeforeUnload: true })
    await expect.poll(() => asked).toEqual(['beforeunload'])
    await openButton.click()
    await page.getByRole('dialog', { name: 'Open another workbook' }).waitFor()
    await choosing(() => page.getByRole('button', { name: 'Choose a file' }).click())

    await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
    await choosing(() => openButton.click())
    await Promise.all([page.waitForEvent('close'), page.close({ runBeforeUnload: true })])
    expect(asked).toEqual(['beforeunload'])
  })

  it("offers in the grid's menus nothing that tears rows apart, and nothing that no file keeps", async () => {
    const page = await openWorkbench(wide)
    await atCell(page, 'Season, A1')
    await page.locator('[id^="univer-sheet-main-canvas"]').click({ button: 'right', position: { x: 100, y: 200 } })
    await page.getByText('Insert', { exact: true }).first().waitFor()
    const offered = await page.locator('body').innerText()
    expect(offered).toContain('Insert')
    expect(offered).not.toMatch(/Sort|Ascending|Descending|Protect/)

    await page.keyboard.press('Escape')
    await page.getByText('Calendar', { exact: true }).first().click({ button: 'right' })
    await page.getByText('Rename', { exact: true }).waitFor()
    expect(await page.locator('body').innerText()).not.toMatch(/^(Hide|Unhide|Change color)$|Protect/m)
  })

  it('follows the system to dark until the user chooses, and remembers the choice', async () => {
    const page = await pages.openEmpty({ viewport: wide, colorScheme: 'dark' })
    await atCell(page, 'Sheet1, A1')
    const dark = page.getByRole('button', { name: 'Dark' })
    expect(await dark.getAttribute('aria-pressed')).toBe('true')
    await dark.click()
    await page.reload()
    await atCell(page, 'Sheet1, A1')
    expect(await dark.getAttribute('aria-pressed')).toBe('false')
  })

  it('shows either the sheet or the pane in a narrow window, the answer of the season and what is jumped to, changes sheets there, fits its window, narrow and wide, and breaks no rule of accessibility in either theme, with the bars of the grid', async () => {
    const page = await openWorkbench(narrow)
    expect([await page.locator('.sheet .grid').isVisible(), await page.locator('.functions').isVisible()]).toEqual([
      true,
      false,
    ])
    await page.getByRole('button', { name: 'Pane', exact: true }).click()
    expect([await page.locator('.sheet .grid').isVisible(), await page.locator('.functions').isVisible()]).toEqual([
      false,
      true,
    ])
    await page.getByRole('tab', { name: 'Season', exact: true }).click()
    const answer = page.locator('.functions dd').last()
    // 19,751.21 over 148,500 liners.
    await expect.poll(() => answer.textContent()).toBe('EUR 0.1330')
    const { x, width: across } = (await answer.boundingBox())!
    expect(x + across).toBeLessThanOrEqual(narrow.width)
    await page.locator('.functions').getByRole('button', { name: 'Orders', exact: true }).click()
    await atCell(page, 'Orders, A1')
    await page.getByRole('button', { name: 'Show in sheet' }).click()
    expect([await page.locator('.sheet .grid').isVisible(), await page.locator('.functions').isVisible()]).toEqual([
      true,
      false,
    ])
    // A hand reaches the neighbour of the sheet that is shown.
    await page.locator('.sheet footer [role="tab"]', { hasText: 'Methods' }).click({ position: { x: 6, y: 10 } })
    await atCell(page, 'Methods, A1')
    for (const { width, height } of [narrow, wide]) {
      await page.setViewportSize({ width, height })
      await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    }
    await expectNoViolationsInAnyLook(page, { widths: [narrow.width, wide.width], place: '.workbench' })
  })
})
