/** Reads the charts of the demo season in the pane, by keyboard alone, and holds their numbers against the grid's cells. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { expectNothingTooWide } from './expectNothingTooWide'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { pressUntilFocused } from './pressUntilFocused'
import { browserWindows } from './browserWindows'

const pane = 'aside.functions'
const titles = [
  'Cost of a saleable liner, part by part',
  'Cost by the rounds it serves',
  'What moves ROOTINGCOST most',
  'How likely each ROOTINGCOST is',
]

const pages = browserWindows()

/** Opens the workbench at the demo season and goes to the section by keyboard. */
async function openCompare(): Promise<Page> {
  const page = await pages.open({ viewport: { width: 320, height: 800 } })
  await selectedCell(page)
    .filter({ hasText: /^Season, A1:/ })
    .waitFor()
  await pressF6To(page, pane)
  const chosen = page.locator(pane).getByRole('tab', { selected: true })
  await tabTo(page, chosen)
  const compare = page.locator(pane).getByRole('tab', { name: 'Compare' })
  await pressUntilFocused(page, 'ArrowRight', compare)
  await page.keyboard.press('Enter')
  await figure(page, titles[0]!).waitFor()
  return page
}

async function pressF6To(page: Page, region: string): Promise<void> {
  await page.keyboard.press('F6')
  await expect.poll(() => page.locator(region).evaluate((place) => place.contains(document.activeElement))).toBe(true)
}

function selectedCell(page: Page): Locator {
  return page.getByRole('status', { name: 'Selected cell' })
}

/** With as many digits as a table of the pane. */
async function numberOfSelectedCell(page: Page): Promise<string> {
  const text = await selectedCell(page).textContent()
  return Number(/: ([\d.]+)/.exec(text ?? '')?.[1]).toLocaleString('en-US', { maximumSignificantDigits: 10 })
}

function figure(page: Page, title: string): Locator {
  return page.locator(pane).getByRole('figure', { name: title })
}

function tabTo(page: Page, control: Locator): Promise<void> {
  return pressUntilFocused(page, 'Tab', control)
}

async function showAsTable(page: Page, title: string): Promise<readonly (readonly string[])[]> {
  await tabTo(page, figure(page, title).getByRole('button', { name: 'Show as a table' }))
  await page.keyboard.press('Enter')
  return figure(page, title)
    .locator('tr')
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.firstChild?.textContent ?? '')))
}

describe('the charts of the demo season', () => {
  it('are all drawn at 320 pixels, within the window and above the smallest size that can be read, and tell the parts of each way apart, by pattern and by name', async () => {
    const page = await openCompare()
    for (const title of titles) {
      const drawing = figure(page, title).getByRole('img', { name: title })
      expect(await drawing.count(), title).toBe(1)
      const marks = await drawing.locator('rect, path, circle').count()
      expect(marks, title).toBeGreaterThan(2)
    }
    await expectNothingTooWide(page, pane)
    const smallest = await page
      .locator(`${pane} figure text`)
      .evaluateAll((texts) => Math.min(...texts.map((text) => parseFloat(getComputedStyle(text).fontSize))))
    expect(smallest).toBeGreaterThanOrEqual(12)

    const ways = figure(page, titles[0]!)
    for (const width of [320, 420]) {
      await page.setViewportSize({ width, height: 800 })
      expect(
        await ways
          .getByRole('list', { name: 'Key' })
          .locator('li')
          .evaluateAll((lines) => lines.map(({ textContent }) => textContent?.split(':')[0])),
      ).toEqual(['Medium', 'Reuse', 'Bench', 'Labour', 'Other costs', 'Losses'])
      expect(await ways.locator('p').first().textContent()).not.toContain('does not tell them apart')
      const drawn = await ways.locator('pattern').evaluateAll((patterns) => patterns.map(({ innerHTML }) => innerHTML))
      expect(new Set(drawn).size).toBe(6)
      // Each bar with its own outline, none of them empty: all methods cost medium, bench, labour and losses.
      const bars = await ways
        .getByRole('img')
        .locator('svg')
        .evaluateAll((all) => all.slice(0, 6).map((svg) => svg.querySelectorAll('rect').length))
      for (const parts of bars) expect(parts).toBeGreaterThanOrEqual(5)
    }
    await page.setViewportSize({ width: 320, height: 800 })
    await expectNoViolationsInAnyLook(page, { widths: [320, 1440] })
  })

  it('show as tables, by keyboard, what the cells of the grid show', async () => {
    const page = await openCompare()
    const [headings, ...ways] = await showAsTable(page, titles[0]!)
    for (const [name, medium, , bench, labour, , losses] of ways)
      for (const part of [medium, bench, labour, losses]) expect(Number(part), name).toBeGreaterThan(0)
    expect(headings).toEqual([
      'method',
      'medium',
      'reuse',
      'bench',
      'labour',
      'other costs',
      'losses',
      'per saleable liner',
    ])
    expect(ways).toHaveLength(7)
    await showAsTable(page, titles[1]!)
    const swings = await showAsTable(page, titles[2]!)
    const odds = await showAsTable(page, titles[3]!)
    await expectNoViolationsInAnyLook(page, { widths: [320, 1440] })

    const goTo = page
      .locator(pane)
      .getByRole('button', { name: /^Go to COMPARE/ })
      .first()
    await pressUntilFocused(page, 'Shift+Tab', goTo)
    await page.keyboard.press('Enter')
    await pressF6To(page, '.bar')
    await pressF6To(page, '.sheet')
    await selectedCell(page)
      .filter({ hasText: /^Compare, A/ })
      .waitFor()
    for (const _column of ['B', 'C', 'D']) await page.keyboard.press('ArrowRight')
    for (const [name, ...numbers] of ways) {
      await page.keyboard.press('ArrowDown')
      await expect.poll(() => numberOfSelectedCell(page), { message: name! }).toBe(numbers.at(-1))
    }
    expect(
      ways.map((row) =>
        row
          .slice(1, 7)
          .reduce((sum, part) => sum + Number(part), 0)
          .toFixed(9),
      ),
    ).toEqual(ways.map((row) => Number(row[7]).toFixed(9)))
    // The tornado and the odds have their middle in common with the cheapest way, which the demo asks about.
    expect(Number(swings[1]![4])).toBeCloseTo(Number(ways[0]![7]), 9)
    expect(Number(odds.find(([name]) => name === 'all likely')![1])).toBeCloseTo(Number(ways[0]![7]), 9)
  })

  it('compare with the single use that is chosen by keyboard, say with which, and follow the cells that are chosen', async () => {
    const page = await openCompare()
    const summary = figure(page, titles[1]!).locator('p')
    expect(await summary.textContent()).toMatch(
      /Sand bed goes from [^,]*, and does not beat Premix in thin trays in its 16 rounds\./,
    )
    await tabTo(page, page.locator(pane).getByRole('combobox', { name: 'Compare with' }))
    await page.keyboard.press('ArrowDown')
    await expect
      .poll(() => summary.textContent())
      .toMatch(/Sand bed goes from [^,]*, and costs no more than Rockwool from round 6 on\./)
    await expectNothingTooWide(page, pane)

    const choice = page.locator(pane).getByRole('combobox', { name: 'Round by round: cells to show' })
    await pressUntilFocused(page, 'Shift+Tab', choice)
    const before = await summary.textContent()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => summary.textContent()).not.toBe(before)
  })
})
