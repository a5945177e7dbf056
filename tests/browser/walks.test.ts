/**
 * Walks the three jobs of the guide on the demo season, with the numbers that the guide tells.
 * Where the environment variable PICTURES names a folder, it takes the pictures of the guide and of the README into it.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { root } from '../architecture/sourceTree'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { showTheme } from './showTheme'

const pages = browserWindows()
const wide = { width: 1440, height: 900 }
const guide = readFileSync(join(root, 'assets', 'guide', 'guide.md'), 'utf8').split('\n')
const { sheets } = demoSeason()

async function open(): Promise<Page> {
  const page = await pages.open({ viewport: wide, acceptDownloads: true })
  await expect.poll(() => cellLine(page)).toMatch(/^Season, A1:/)
  return page
}

const cellLine = (page: Page) => page.getByRole('status', { name: 'Selected cell' }).textContent()

const pane = (page: Page) => page.locator('aside.functions')

const button = (page: Page, name: string) => pane(page).getByRole('button', { name, exact: true })

const figure = (page: Page, title: string) => pane(page).getByRole('figure', { name: title })

/** Opens a section of the pane. */
async function choose(page: Page, section: string): Promise<void> {
  await pane(page).getByRole('tab', { name: section }).click()
}

async function goTo(page: Page, sheet: string, address: string): Promise<void> {
  for (let turns = 0; turns < 2 * sheets.length && !(await cellLine(page))!.startsWith(`${sheet}, `); turns += 1) {
    const before = await cellLine(page)
    await page.keyboard.press('Alt+PageDown')
    await expect.poll(() => cellLine(page)).not.toBe(before)
  }
  const nameBox = page.locator('.sheet input').first()
  await nameBox.fill(address)
  await nameBox.press('Enter')
  await expect.poll(() => cellLine(page)).toMatch(new RegExp(`^${sheet}, ${address}:`))
}

/** The address in the row of a label, by default in column B. */
function beside(sheet: string, label: string, column = 'B'): string {
  const row = sheets.find(({ name }) => name === sheet)!.rows.findIndex(([first]) => first?.value === label)
  if (row < 0) throw new Error(`No row of ${sheet} begins with "${label}"`)
  return `${column}${row + 1}`
}

async function valueOfSelected(page: Page): Promise<string> {
  return /(?:.* gives |^[^:]*: )(.*)$/.exec((await cellLine(page))!)![1]!
}

async function numberAt(page: Page, sheet: string, address: string): Promise<number> {
  await goTo(page, sheet, address)
  return Number((await valueOfSelected(page)).replaceAll(',', ''))
}

/** The cell shows `text`, and the guide says so in a line that names the cell. */
async function expectInGuide(page: Page, sheet: string, label: string, text: string, column = 'B'): Promise<void> {
  await expectCellInGuide(page, sheet, beside(sheet, label, column), label, text)
}

async function expectCellInGuide(
  page: Page,
  sheet: string,
  address: string,
  label: string,
  text: string,
): Promise<void> {
  await goTo(page, sheet, address)
  await expect.poll(async () => writtenLike(text, await valueOfSelected(page)), { message: label }).toBe(text)
  expectGuideToSay(`**${label}**`, text)
}

function expectGuideToSay(...words: readonly string[]): void {
  expect(
    guide.filter((line) => words.every((word) => line.includes(word))),
    words.join(' … '),
  ).not.toEqual([])
}

/** With as many decimals as `model`, and as a percentage where that is one. */
function writtenLike(model: string, value: string): string {
  const number = Number(value.replaceAll(',', ''))
  if (Number.isNaN(number) || !/^-?[\d.,]+%?$/.test(model)) return value
  const decimals = /\.(\d+)/.exec(model)?.[1]!.length ?? 0
  const [share, sign] = model.endsWith('%') ? [100, '%'] : [1, '']
  return `${(number * share).toLocaleString('en-US', { minimumFractionDigits: decimals, maximumFractionDigits: decimals })}${sign}`
}

/** Types into the selected cell. */
async function type(page: Page, content: string): Promise<void> {
  await page.keyboard.type(content)
  await page.keyboard.press('Enter')
}

interface Part {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** Scrolls so that this cell stands at the top, below what is frozen. */
async function goToTop(page: Page, sheet: string, address: string): Promise<void> {
  await goTo(page, sheet, 'A90')
  await goTo(page, sheet, address)
}

/** Of a part of the window in pixels, or of one element. */
async function picture(page: Page, name: string, what: Part | Locator): Promise<void> {
  const folder = process.env.PICTURES
  if (folder === undefined) return
  await page.mouse.move(0, 0)
  const take = () =>
    'left' in what
      ? page.screenshot({ clip: { x: what.left, y: what.top, width: what.width, height: what.height } })
      : what.screenshot()
  let latest = await take()
  // The grid and the charts draw a little after they know what.
  await expect
    .poll(async () => {
      const before = latest
      latest = await take()
      return latest.equals(before)
    })
    .toBe(true)
  const file = join(folder, `${name}.png`)
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, latest)
}

/** The sheet with its row and column headings, from the top. */
const sheetPart = (width: number, height: number): Part => ({ left: 0, top: 68, width, height })

/** The pane, from its heading on. */
const panePart = (height: number): Part => ({ left: 1080, top: 104, width: 360, height })

it('The accountant costs the season, follows a price through it, and hands over a working, a copy and the review.', async () => {
  const page = await open()
  await expectInGuide(page, 'Season', 'Liners ordered', '148,500')
  await expectInGuide(page, 'Season', 'Cuttings to stick', '182,185')
  await expectInGuide(page, 'Season', 'Buying list, everything', '5,128.40')
  await expectInGuide(page, 'Season', 'Rooting cost of the season', '19,664.84')
  await goTo(page, 'Season', 'A1')
  await picture(page, 'guide/season', sheetPart(920, 490))

  const [cuttings, before] = [
    await numberAt(page, 'Season', beside('Season', 'Cuttings to stick')),
    await numberAt(page, 'Season', beside('Season', 'Rooting cost of the season')),
  ]
  await goTo(page, 'Season', beside('Season', 'The cutting itself'))
  await type(page, '0.07')
  // One cent more for each cutting.
  const after = writtenLike('0.00', String(before + 0.01 * cuttings))
  await goTo(page, 'Season', beside('Season', 'Rooting cost of the season'))
  await expect.poll(async () => writtenLike('0.00', await valueOfSelected(page))).toBe(after)
  expectGuideToSay('**Rooting cost of the season**', after)
  await goTo(page, 'Season', beside('Season', 'The cutting itself'))
  await page.keyboard.press('Control+z')
  await expect.poll(() => valueOfSelected(page)).toBe('0.06')

  await choose(page, 'Check')
  await pane(page).getByText('0 errors, 4 doubts.').waitFor()
  expectGuideToSay('0 errors and 4 doubts')

  const stages = [0, 1, 2, 3].map((stage) => Number(beside('Quote', 'Sticking and rooting', '')) + stage)
  let floor = 0
  for (const row of stages)
    floor = (floor + (await numberAt(page, 'Quote', `H${row}`))) / (await numberAt(page, 'Quote', `I${row}`))
  await expectInGuide(page, 'Quote', 'Floor: cost of a liner', writtenLike('0.0000', String(floor)))
  await choose(page, 'Working')
  await pane(page).getByRole('heading', { name: 'Working of B25 on Quote' }).waitFor()
  await pane(page).getByRole('heading', { name: 'Step by step' }).waitFor()
  await picture(page, 'guide/working', panePart(720))

  await button(page, 'Write this working to a sheet').click()
  await pane(page).getByText('Written to the sheet “Working of B25”.').waitFor()
  await expect.poll(() => cellLine(page)).toBe('Working of B25, A1: Working of B25 on Quote')
  await picture(page, 'guide/working-sheet', sheetPart(1000, 560))
  await goTo(page, 'Working of B25', 'A1')
  for (let rows = 0; rows < 60 && (await valueOfSelected(page)) !== 'Difference'; rows += 1) {
    const line = await cellLine(page)
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => cellLine(page)).not.toBe(line)
  }
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => cellLine(page)).toMatch(/^Working of B25, B\d+: =.* gives 0$/)
  expectGuideToSay('**Difference**', ' 0')

  await goTo(page, 'Prices', beside('Prices', 'Rockwool blocks, price of a carton', 'C'))
  expect(await valueOfSelected(page)).toBe('Stonewick')
  await picture(page, 'guide/prices', sheetPart(1080, 500))

  await goTo(page, 'Review', 'A1')
  await picture(page, 'guide/review', sheetPart(920, 420))
  await expectInGuide(page, 'Review', 'All five', '518.38', 'D')
  await expectInGuide(page, 'Review', 'All five', '480.48', 'E')
  await expectInGuide(page, 'Review', 'All five', '998.86', 'F')
  expect((518.38 + 480.48).toFixed(2)).toBe('998.86')

  const copy = await downloaded(page, () => button(page, 'A copy of the workbook, as a file').click())
  expect(copy.name).toBe('season-without-add-in.xlsx')
  const saved = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
  expect(saved.name).toBe('season.xlsx')
})

it('Sales sees what 8 % off 12,000 liners leaves, finds how far it can go, and which orders to raise to the next break.', async () => {
  const page = await open()
  await expectInGuide(page, 'Season', 'The order that asks for less', 'Offer 0.47')
  await expectInGuide(page, 'Quote', 'Liners of the order', '12,000')
  await expectInGuide(page, 'Quote', 'Asked to come off', '8%')
  await expectInGuide(page, 'Quote', 'Price listed for so many', '0.50')
  await goToTop(page, 'Quote', `A${Number(beside('Quote', 'Liners of the order', '')) - 2}`)
  await picture(page, 'guide/order', sheetPart(1040, 414))

  const upToCents = (price: number) => Math.ceil(price * 100 - 1e-9) / 100
  const cost = await numberAt(page, 'Quote', beside('Quote', 'Floor: cost of a liner'))
  const once = await numberAt(page, 'Quote', beside('Quote', 'Paid once an order'))
  const [asked, floor, least] = [
    upToCents(0.5 * (1 - 0.08)),
    cost + once / 12_000,
    upToCents((cost + once / 12_000) / (1 - 0.24)),
  ]
  await expectInGuide(page, 'Quote', 'Price with that off', asked.toFixed(2))
  await expectInGuide(page, 'Quote', 'Floor of this order', floor.toFixed(4))
  await expectInGuide(page, 'Quote', 'Margin left', writtenLike('0.0%', String(1 - floor / asked)))
  await expectInGuide(page, 'Quote', 'Least margin', '24%')
  await expectInGuide(page, 'Quote', 'Least price', least.toFixed(2))
  await expectInGuide(page, 'Quote', 'Most that can come off', writtenLike('0%', String(1 - least / 0.5)))
  await expectInGuide(page, 'Quote', 'Answer', `Offer ${least.toFixed(2)}`)
  await expectInGuide(page, 'Quote', 'Margin wanted', '35%')
  await expectInGuide(page, 'Quote', 'Price at the margin wanted', upToCents(cost / (1 - 0.35)).toFixed(2))
  await expectInGuide(
    page,
    'Quote',
    'That is a markup of',
    writtenLike('0.0%', String(upToCents(cost / (1 - 0.35)) / cost - 1)),
  )

  await goTo(page, 'Quote', beside('Quote', 'Asked to come off'))
  await type(page, '5%')
  await expectInGuide(page, 'Quote', 'Answer', 'Take it')
  await expectInGuide(
    page,
    'Quote',
    'Margin left',
    writtenLike('0.0%', String(1 - floor / upToCents(0.5 * (1 - 0.05)))),
  )

  await choose(page, 'Check')
  const finding = pane(page)
    .getByRole('listitem')
    .filter({ hasText: 'Liners at the price for 2500: 4717 to 4999 cost more than 5000.' })
  await finding.waitFor()
  // The first order in the zone costs more than 5,000 liners at 0.50, the one before it does not.
  expect([4716 * 0.53 > 5000 * 0.5, 4717 * 0.53 > 5000 * 0.5]).toEqual([false, true])
  expectGuideToSay('4,717', '4,999', '5,000')
  await picture(page, 'guide/check', panePart(440))
  await finding.getByRole('button').click()
  await expect.poll(() => cellLine(page)).toBe('Quote, A55: 2,500')
})

it('The manager compares the ways, finds the round from which each beats single use, and how sure that is.', async () => {
  const page = await open()
  await choose(page, 'Compare')
  const ways = figure(page, 'Cost of a saleable liner, part by part')
  await ways.waitFor()
  for (const [way, cost] of [
    ['Peat, coir and perlite', '0.1159'],
    ['Premix', '0.1182'],
    ['Sand bed', '0.1416'],
    ['Rockwool', '0.1519'],
  ] as const) {
    expect(await ways.getByRole('img', { name: 'Cost of a saleable liner, part by part' }).textContent()).toContain(
      `${way}${cost}`,
    )
    expectGuideToSay(way, cost)
  }
  await picture(page, 'guide/ways', ways)
  const rounds = figure(page, 'Cost by the rounds it serves')
  expect(await rounds.locator('p').first().textContent()).toMatch(
    /Peat, coir and perlite goes from .* and is no dearer than Premix from round 7 on\./,
  )
  await picture(page, 'guide/rounds', rounds)
  await picture(page, 'guide/swings', figure(page, 'What moves ROOTINGCOST most'))

  await expectInGuide(page, 'Season', 'Cheapest way of rooting', 'Peat, coir and perlite')
  // Its label is made by a formula, so its place is told from the row above.
  const ahead = beside('Season', 'Dearer by')
  await expectCellInGuide(
    page,
    'Season',
    `B${Number(ahead.slice(1)) + 1}`,
    'In 90% of draws it costs at most',
    '0.1315',
  )
  await expectInGuide(page, 'Season', 'Own mix instead of premix', '7')
  await expectInGuide(page, 'Season', 'Sand bed instead of rockwool', '6')

  const at = (label: string) => numberAt(page, 'Reuse', beside('Reuse', label, 'E'))
  const singleUse = (await at('Single use costs')) / (await at('Overall rate in single use'))
  const [first, later, endValue, rate] = [
    await at('Used again: paid in the first round'),
    await at('Used again: paid in each later round'),
    await at('Used again: worth at the end'),
    await at('Overall rate used again'),
  ]
  // Interest of 6 % a year and two rounds a year; nothing of a bed breaks.
  const discount = 1.06 ** -0.5
  const levelOver = (count: number) => {
    const annuity = (1 - discount ** count) / (1 - discount)
    return (first + later * (annuity - 1) - endValue * discount ** count) / annuity
  }
  expect([5, 6].map((count) => levelOver(count) / rate <= singleUse)).toEqual([false, true])
  await expectInGuide(page, 'Reuse', 'Pays from round', '6', 'E')
  await expectInGuide(page, 'Reuse', 'That is after', '3.0', 'E')
  await goToTop(page, 'Reuse', `A${Number(beside('Reuse', 'Used again: paid in every round', '')) - 6}`)
  await picture(page, 'guide/reuse', sheetPart(918, 500))

  await goTo(page, 'Reuse', beside('Reuse', 'Single use', 'D'))
  await type(page, 'Rockwool')
  await expectInGuide(page, 'Reuse', 'Pays from round', '1', 'D')

  await expectInGuide(page, 'Ways', 'So the bed belongs', 'on the ground', 'F')
  await choose(page, 'Library')
  await pane(page)
    .getByRole('tabpanel', { name: 'Library' })
    .getByText('Follow the label and your local rules')
    .first()
    .waitFor()
})

it('In a narrow window a line below the pane shows where Check leads, and the hidden sheet keeps its size, without which it would not scroll there.', async () => {
  const page = await pages.open({ viewport: { width: 320, height: 700 } })
  await expect.poll(() => cellLine(page)).toMatch(/^Season, A1:/)
  await page.getByRole('button', { name: 'Pane', exact: true }).click()
  await choose(page, 'Check')
  await button(page, 'A55 on Quote').click()
  await expect.poll(() => cellLine(page)).toMatch(/^Quote, A55:/)
  const grid = page.locator('.sheet .grid')
  expect(await grid.isVisible()).toBe(false)
  expect((await grid.boundingBox())!.height).toBe((await pane(page).boundingBox())!.height)
})

it('The workbench opens at the season with CUTTINGS in the pane, in both themes.', async () => {
  const page = await open()
  await pane(page)
    .getByRole('button', { name: /^CUTTINGS/ })
    .click()
  await pane(page).getByText('STICK.CUTTINGS(liners, stageRates, [confidence], [batchSpread])').waitFor()
  for (const [colorScheme, name] of [
    ['light', 'workbench'],
    ['dark', 'workbench-dark'],
  ] as const) {
    await showTheme(page, colorScheme)
    await picture(page, name, { left: 0, top: 0, ...wide })
  }
})
