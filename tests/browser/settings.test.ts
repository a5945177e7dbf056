/** Settings by keyboard, in a window as narrow as Excel's pane can be: German, a decimal comma, and what follows from them. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { showTheme } from './showTheme'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'
import { ready } from './ready'

const pages = browserWindows()
const pane = 'aside.functions'

async function open(): Promise<Page> {
  const page = await pages.openEmpty({ viewport: { width: 320, height: 800 } })
  await ready(page)
  await goTo(page, pane)
  return page
}

/** The bar, the sheet and the pane take turns. */
async function goTo(page: Page, region: string): Promise<void> {
  for (let turns = 0; turns < 3; turns += 1) {
    await page.keyboard.press('F6')
    const arrived = await page.locator(region).evaluate(
      (place) =>
        new Promise<boolean>((resolve) => {
          requestAnimationFrame(() => requestAnimationFrame(() => resolve(place.contains(document.activeElement))))
        }),
    )
    if (arrived) return
  }
  throw new Error(`F6 does not reach ${region}`)
}

async function tabTo(page: Page, control: Locator): Promise<void> {
  await control.waitFor()
  for (let stops = 0; stops < 90; stops += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error('90 presses of Tab did not reach it')
}

/** One tab of the list has the keyboard, and the arrows go on from there. */
async function openSection(page: Page, name: string): Promise<void> {
  const tab = page.locator(pane).getByRole('tab', { name })
  await goTo(page, '.bar')
  await goTo(page, pane)
  for (let steps = 0; steps < 8; steps += 1) {
    if (await tab.evaluate((element) => element === document.activeElement)) break
    await page.keyboard.press('ArrowRight')
  }
  await page.keyboard.press('Enter')
  await expect.poll(() => tab.getAttribute('aria-selected')).toBe('true')
}

describe('by keyboard in a narrow window', () => {
  test('German and its decimal comma are chosen by keyboard, the form reads 1,5, the formula that is inserted has a point, and what was chosen is there again after the page was loaded anew', async () => {
    const page = await open()
    await openSection(page, 'Settings')
    await tabTo(page, page.getByRole('textbox', { name: 'Currency' }))
    await page.keyboard.type('EUR')
    await page.getByText('EUR\u00a01,234.50; EUR\u00a00.1875 per liner').waitFor()
    await expectNothingTooWide(page, pane)
    await pressUntilFocused(page, 'Shift+Tab', page.getByRole('radio', { name: 'English' }))
    await page.keyboard.press('ArrowDown')
    await page.getByRole('heading', { name: 'Einstellungen' }).waitFor()
    expect(await page.getByRole('radio', { name: 'Dezimalkomma: 1.234,5' }).isChecked()).toBe(true)
    expect(await page.locator(`${pane} [lang]`).first().getAttribute('lang')).toBe('de')
    const bar = page.locator('.bar')
    await bar.getByRole('button', { name: 'Neu', exact: true }).waitFor()
    expect(await bar.getAttribute('lang')).toBe('de')
    expect(await bar.innerText()).not.toMatch(/New|Open|Save|Sheet\b|Pane|next|Dark/)
    await expectNoViolationsInAnyLook(page)
    await expectNothingTooWide(page, pane)
    await expectNothingTooWide(page, '.bar')

    await page
      .getByLabel('Excel-Datei, die geöffnet wird')
      .setInputFiles({ name: 'notes.xlsx', mimeType: 'text/plain', buffer: Buffer.from('no workbook') })
    const refusal = page.getByRole('dialog', { name: 'notes.xlsx konnte nicht gelesen werden' })
    expect(await refusal.innerText()).toContain('Das ist keine Excel-Arbeitsmappe.')
    await page.keyboard.press('Enter')
    await refusal.waitFor({ state: 'detached' })

    await openSection(page, 'Funktionen')
    await tabTo(page, page.getByRole('searchbox', { name: 'Funktionen suchen' }))
    await page.keyboard.type('PACKPRICE')
    await tabTo(page, page.locator('[data-function="PACKPRICE"] h4 button'))
    await page.keyboard.press('Enter')
    const form = page.getByRole('form', { name: 'STICK.PACKPRICE' })
    const typed = ['1,5', '1.000', '1', '0,25']
    for (const [index, text] of typed.entries()) {
      await tabTo(page, form.getByRole('textbox').nth(index))
      await page.keyboard.type(text)
    }
    await expect
      .poll(() => form.getByRole('status', { name: 'Ergebnis' }).textContent())
      .toMatch(/^ergibt 0,00175\sEUR pro L/)
    await expectNothingTooWide(page, pane)
    await tabTo(page, form.getByRole('button', { name: 'Ins Blatt setzen' }))
    await page.keyboard.press('Enter')
    await expect.poll(() => page.locator('.sheet .cell').textContent()).toContain('=STICK.PACKPRICE(1.5,1000,1,0.25)')

    page.on('dialog', (dialog) => void dialog.accept())
    await page.reload()
    await ready(page)
    await goTo(page, pane)
    await openSection(page, 'Einstellungen')
    expect(await page.getByRole('textbox', { name: 'Währung' }).inputValue()).toBe('EUR')
  })
})

test('1,5 that is typed into a cell of the workbench is a number for whoever takes the comma for the decimal mark', async () => {
  const page = await pages.blank({ viewport: { width: 1200, height: 800 }, locale: 'de-DE' })
  await page.goto(pages.address)
  await ready(page)
  await page.getByRole('button', { name: 'Neu', exact: true }).press('Enter')
  await page.getByRole('button', { name: 'Beginnen' }).press('Enter')
  await page.getByRole('heading', { name: 'Saison', exact: true }).waitFor()
  await goTo(page, 'main.sheet')
  const cell = page.locator('.sheet .cell')
  await expect.poll(() => cell.textContent()).toBe('Sheet1, A1: leer')
  for (const text of ['1,5', '15,5 %', '1.234,5', '=SUM(A1:A3)']) {
    await page.keyboard.type(text)
    await page.keyboard.press('Enter')
  }
  await page.keyboard.press('ArrowUp')
  await expect.poll(() => cell.textContent()).toBe('Sheet1, A4: =SUM(A1:A3) ergibt 1.236,155')
  // What stood there as 1.5 is shown for change as 1,5, so that it does not become another number.
  for (let row = 4; row > 1; row -= 1) await page.keyboard.press('ArrowUp')
  await expect.poll(() => cell.textContent()).toBe('Sheet1, A1: 1,5')
  await page.keyboard.press('F2')
  await page.keyboard.type('25')
  await page.keyboard.press('Enter')
  await page.keyboard.press('ArrowUp')
  await expect.poll(() => cell.textContent()).toBe('Sheet1, A1: 1,525')
})

test('An entry typed before the pane is there is read with the mark chosen at an earlier visit, and the line of the cell has that mark in English too', async () => {
  const page = await pages.blank({ viewport: { width: 1200, height: 800 } })
  await page.addInitScript(() =>
    localStorage.setItem('sticksheet settings', JSON.stringify({ language: 'en', decimalMark: ',' })),
  )
  // As on a slow machine, where there is time for it.
  await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 2 })
  await page.goto(pages.address, { waitUntil: 'commit' })
  const veil = page.getByText('Getting the sheet ready')
  await veil.waitFor()
  await veil.waitFor({ state: 'detached' })
  await page.keyboard.press('ArrowDown')
  await page.keyboard.type('1,50')
  await page.keyboard.press('Enter')
  const cell = page.locator('.sheet .cell')
  await cell.filter({ hasText: 'Season' }).waitFor()
  await page.keyboard.press('ArrowUp')
  // As a text it would have kept its nought.
  await expect.poll(() => cell.textContent()).toMatch(/^Season, [A-Z]+\d+: 1,5$/)
})

test('The workbench is tried in itself: all cases hold, the report can be copied, and the sheet is gone again.', async () => {
  const page = await pages.openEmpty({ viewport: { width: 1440, height: 900 } })
  await page.getByRole('tab', { name: 'Settings' }).click()
  const panel = page.getByRole('tabpanel', { name: 'Settings' })
  await panel.getByRole('button', { name: 'Try this workbench' }).click()
  await panel.getByText(/^All \d+ cases hold\.$/).waitFor()
  // Where the user was.
  expect(await page.locator('.sheet .cell').textContent()).toMatch(/^Sheet1, /)
  const report = panel.getByRole('textbox', { name: 'Report' })
  expect(await report.inputValue()).toMatch(
    /^Sticksheet tried in the workbench\nBrowser: .+\n(\d+) of \1 cases hold\.$/,
  )
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('not allowed'))
  })
  await panel.getByRole('button', { name: 'Copy the report' }).click()
  await panel.getByText('The report could not be copied: select its text and press Ctrl+C.').waitFor()
  expect(await page.locator('.sheets option, [role="option"]').filter({ hasText: 'Sticksheet try' }).count()).toBe(0)
  for (const [width, theme] of [
    [320, 'light'],
    [320, 'dark'],
    [1440, 'light'],
    [1440, 'dark'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 })
    await showTheme(page, theme)
    // In a narrow window the pane and the sheet take turns.
    if (width === 320) await goTo(page, pane)
    await report.scrollIntoViewIfNeeded()
    if (process.env.LOOK) await page.screenshot({ path: `${process.env.LOOK}/settings-${width}-${theme}.png` })
  }
})
