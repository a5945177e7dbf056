/**
 * Walks the four walks of the guide on the demo season, with the numbers that the guide tells.
 * Where the environment variable PICTURES names a folder, it takes the pictures of the guide and of the README into it.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import type { CellPlace } from '../../src/workbook/cellPlace'
import { root } from '../architecture/sourceTree'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { above, beside, goTo, inRow, named, numberAt, selectedCell, shown, typeInto } from './seasonPlaces'
import { showTheme } from './showTheme'

const pages = browserWindows()
const wide = { width: 1440, height: 900 }
const guide = readFileSync(join(root, 'assets', 'guide', 'guide.md'), 'utf8').split('\n')

async function open(): Promise<Page> {
  const page = await pages.open({ viewport: wide, acceptDownloads: true })
  await expect.poll(() => cellLine(page)).toMatch(/^Season, A1:/)
  return page
}

const cellLine = (page: Page) => selectedCell(page).textContent()

const pane = (page: Page) => page.locator('aside.functions')

const button = (page: Page, name: string) => pane(page).getByRole('button', { name, exact: true })

const figure = (page: Page, title: string) => pane(page).getByRole('figure', { name: title })

/** Opens a section of the pane. */
async function choose(page: Page, section: string): Promise<void> {
  await pane(page).getByRole('tab', { name: section }).click()
}

/** The cell shows `text`, and the guide says so in a line that names its label. */
async function expectInGuide(page: Page, place: CellPlace, label: string, text: string): Promise<void> {
  await goTo(page, place)
  await expect.poll(async () => writtenLike(text, await shown(page)), { message: label }).toBe(text)
  expectGuideToSay(`**${label}**`, text)
}

/** Of a figure, by the label that stands left of it. */
const expectFigure = (page: Page, sheet: string, label: string, text: string) =>
  expectInGuide(page, beside(sheet, label), label, text)

/** Of a row, by its key and the heading. */
const expectRow = (page: Page, sheet: string, key: string, heading: string, text: string) =>
  expectInGuide(page, inRow(sheet, key, heading), heading, text)

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

interface Part {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** Scrolls so that this cell stands at the top, below what is frozen. */
async function goToTop(page: Page, place: CellPlace): Promise<void> {
  await goTo(page, { ...place, address: 'A90' })
  await goTo(page, place)
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
  await expectFigure(page, 'Season', 'Complete', 'Every sheet is complete.')
  await expectFigure(page, 'Season', 'Liners ordered', '148,500')
  await expectFigure(page, 'Season', 'Cuttings to stick', '182,216')
  await expectFigure(page, 'Season', 'Buying, everything', '6,260.40')
  await expectFigure(page, 'Season', 'Rooting cost of the season', '19,751.21')
  await goTo(page, { sheet: 'Season', address: 'A1' })
  await picture(page, 'guide/season', sheetPart(1080, 690))

  // One cent more for each cutting of the four lines that are stuck in premix.
  const before = await numberAt(page, beside('Season', 'Rooting cost of the season'))
  let cuttings = 0
  for (const line of ['101', '102', '103', '104']) cuttings += await numberAt(page, inRow('Orders', line, 'To stick'))
  expectGuideToSay('one cent more', cuttings.toLocaleString('en-US'))
  const price = inRow('Methods', 'Premix in thin trays', 'The cutting itself')
  await typeInto(page, price, '0.07')
  await expectFigure(
    page,
    'Season',
    'Rooting cost of the season',
    writtenLike('0.00', String(before + 0.01 * cuttings)),
  )
  await goTo(page, price)
  await page.keyboard.press('Control+z')
  await expect.poll(() => shown(page)).toBe('0.06')

  await choose(page, 'Check')
  await pane(page).getByText('0 errors, 4 warnings.').waitFor()
  expectGuideToSay('0 errors and 4 warnings')

  let floor = 0
  for (const [cost, rate] of [
    [beside('Quote', 'Rooting'), inRow('Methods', 'Premix in thin trays', 'Strike')],
    [beside('Quote', 'Potting on'), inRow('Methods', 'Premix in thin trays', 'Potting on')],
    [named('QuoteGrowing'), beside('Quote', 'Survive growing on')],
    [beside('Quote', 'Grading'), beside('Quote', 'Pass grading of those grown')],
  ] as const)
    floor = (floor + (await numberAt(page, cost))) / (await numberAt(page, rate))
  await expectFigure(page, 'Quote', 'Floor: cost of a saleable liner', writtenLike('0.0000', String(floor)))
  const { address } = beside('Quote', 'Floor: cost of a saleable liner')
  await choose(page, 'Calculation')
  await pane(page)
    .getByRole('heading', { name: `Calculation of ${address} on Quote` })
    .waitFor()
  await pane(page).getByRole('heading', { name: 'Step by step' }).waitFor()
  await picture(page, 'guide/working', panePart(720))

  const written = `Calculation of ${address}`
  await button(page, 'Write this calculation to a sheet').click()
  await pane(page).getByText(`Written to the sheet “${written}”.`).waitFor()
  await expect.poll(() => cellLine(page)).toBe(`${written}, A1: ${written} on Quote`)
  await picture(page, 'guide/working-sheet', sheetPart(1000, 560))
  await goTo(page, { sheet: written, address: 'A1' })
  for (let rows = 0; rows < 120 && (await shown(page)) !== 'Difference'; rows += 1) {
    const line = await cellLine(page)
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => cellLine(page)).not.toBe(line)
  }
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => cellLine(page)).toMatch(new RegExp(`^${written}, B\\d+: =.* gives 0$`))
  expectGuideToSay('**Difference**', ' 0')

  await expectRow(page, 'Media', 'Premix', 'Supplier', 'Hillside')
  await goTo(page, { sheet: 'Media', address: 'A1' })
  await picture(page, 'guide/prices', sheetPart(1080, 500))

  await goTo(page, { sheet: 'Review', address: 'A1' })
  await picture(page, 'guide/review', sheetPart(1080, 420))
  for (const [heading, spent] of [
    ['Price variance', '60.42'],
    ['Usage variance', '163.62'],
    ['Total variance', '224.04'],
  ] as const)
    await expectInGuide(page, above('Review', heading), heading, spent)
  expect((60.42 + 163.62).toFixed(2)).toBe('224.04')

  const copy = await downloaded(page, () => button(page, 'A copy of the workbook, as a file').click())
  expect(copy.name).toBe('season-without-add-in.xlsx')
  const saved = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
  expect(saved.name).toBe('season.xlsx')
})

it('Sales sees what 8 % off 12,000 liners leaves, finds how far it can go, and which orders to raise to the next break.', async () => {
  const page = await open()
  await expectFigure(page, 'Season', 'A customer asks for a discount', 'Offer 0.47')
  await expectFigure(page, 'Quote', 'Liners of the order', '12,000')
  await expectFigure(page, 'Quote', 'Discount asked for', '8%')
  await expectFigure(page, 'Quote', 'Price break that applies', '5,000')
  await expectFigure(page, 'Quote', 'List price at that quantity', '0.50')
  await goToTop(page, beside('Quote', 'Fixed cost per order'))
  await picture(page, 'guide/order', sheetPart(1080, 690))

  const upToCents = (price: number) => Math.ceil(price * 100 - 1e-9) / 100
  const cost = await numberAt(page, beside('Quote', 'Floor: cost of a saleable liner'))
  const once = await numberAt(page, beside('Quote', 'Fixed cost per order'))
  const [asked, floor, least] = [
    upToCents(0.5 * (1 - 0.08)),
    cost + once / 12_000,
    upToCents((cost + once / 12_000) / (1 - 0.24)),
  ]
  await expectFigure(page, 'Quote', 'Price after discount', asked.toFixed(2))
  await expectFigure(page, 'Quote', 'Floor of this order', floor.toFixed(4))
  await expectFigure(page, 'Quote', 'Margin left', writtenLike('0.0%', String(1 - floor / asked)))
  await expectFigure(page, 'Quote', 'Least margin', '24%')
  await expectFigure(page, 'Quote', 'Least price', least.toFixed(2))
  await expectFigure(page, 'Quote', 'Largest discount', writtenLike('0%', String(1 - least / 0.5)))
  await expectFigure(page, 'Quote', 'Answer', `Offer ${least.toFixed(2)}`)
  await expectFigure(page, 'Quote', 'Margin wanted', '35%')
  const price = upToCents(cost / (1 - 0.35))
  await expectFigure(page, 'Quote', 'Price at the margin wanted', price.toFixed(2))
  await expectFigure(page, 'Quote', 'That is a markup of', writtenLike('0.0%', String(price / cost - 1)))

  await typeInto(page, beside('Quote', 'Discount asked for'), '5%')
  await expectFigure(page, 'Quote', 'Answer', 'Take it')
  const left = 1 - floor / upToCents(0.5 * (1 - 0.05))
  await expectFigure(page, 'Quote', 'Margin left', writtenLike('0.0%', String(left)))

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
  await expect.poll(() => cellLine(page)).toMatch(/^Quote, A\d+: .*STICK\.QUOTE/)
})

it('The manager compares the methods, finds the round from which reuse pays, how sure that is, and the weeks that do not fit.', async () => {
  const page = await open()
  await choose(page, 'Compare')
  const methods = figure(page, 'Cost of a saleable liner, part by part')
  await methods.waitFor()
  for (const [method, cost] of [
    ['Own mix, 104 cells', '0.1159'],
    ['Premix in thin trays', '0.1182'],
    ['Sand bed', '0.1416'],
    ['Rockwool', '0.1519'],
  ] as const) {
    expect(await methods.getByRole('img', { name: 'Cost of a saleable liner, part by part' }).textContent()).toContain(
      `${method}${cost}`,
    )
    expectGuideToSay(method, cost)
  }
  await picture(page, 'guide/ways', methods)
  const rounds = figure(page, 'Cost by the rounds it serves')
  expect(await rounds.locator('p').first().textContent()).toMatch(
    /Own mix, 104 cells goes from .* and costs no more than Premix in thin trays from round 7 on\./,
  )
  await picture(page, 'guide/rounds', rounds)
  await picture(page, 'guide/swings', figure(page, 'What moves ROOTINGCOST most'))

  await expectFigure(page, 'Season', 'Cheapest method', 'Own mix, 104 cells')
  await expectFigure(page, 'Season', 'More expensive by', '0.0022')
  await expectFigure(page, 'Season', 'It costs no more than', '0.1316')
  await expectFigure(page, 'Season', 'Reuse pays from round', '7')
  await expectFigure(page, 'Reuse', 'That is after', '3.5')
  await goTo(page, { sheet: 'Reuse', address: 'A1' })
  await picture(page, 'guide/reuse', sheetPart(1080, 690))

  await typeInto(page, beside('Reuse', 'Used again'), 'Sand bed')
  await typeInto(page, beside('Reuse', 'Single use'), 'Rockwool')
  await expectFigure(page, 'Reuse', 'Pays from round', '6')
  await expectFigure(page, 'Reuse', 'That is after', '3.0')
  const at = (label: string) => numberAt(page, beside('Reuse', label))
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

  await expectFigure(page, 'Season', 'Weeks that do not fit', '9')
  await expectFigure(page, 'Season', 'The first of them', '2026-W15: Bench: 3 m2 too many.')
  const fullest = named('CalendarBench', weekOf('2026-04-13'))
  await expectInGuide(page, fullest, 'Bench taken', '139.1')
  await choose(page, 'Season')
  const bench = figure(page, 'Bench, week by week')
  expect(await bench.locator('p').first().textContent()).toMatch(/^The fullest week is 2026-W16 with 139/)
  await picture(page, 'guide/weeks', bench)

  await expectRow(page, 'Methods', 'Sand bed', 'Stands on', 'ground')
  await choose(page, 'Library')
  await pane(page)
    .getByRole('tabpanel', { name: 'Library' })
    .getByText('follow the label, the safety data sheet and your local codes')
    .first()
    .waitFor()
})

it('The grower reads on Monday what to stick and to mix and what stands, and counts a batch, which says what to stick again.', async () => {
  const page = await open()
  const monday = weekOf('2026-04-13')
  const ofWeek = (column: string) => named(`Calendar${column}`, monday)
  await expectInGuide(page, ofWeek('Monday'), 'Monday', '2026-04-13')
  await expectInGuide(page, ofWeek('ToStick'), 'To stick', '21,514')
  await expectInGuide(page, ofWeek('Pieces'), 'Filled', '221')
  await expectInGuide(page, ofWeek('Hours'), 'Work', '19.3')
  await expectInGuide(page, ofWeek('Note'), 'What does not fit', 'Bench: 30 m2 too many.')
  await goTo(page, { sheet: 'Calendar', address: 'A1' })
  await picture(page, 'guide/calendar', sheetPart(1080, 500))

  await expectRow(page, 'Orders', '106', 'Stick on', '2026-04-13')
  const [planned, batch] = [inRow('Orders', '106', 'Still to plan'), inRow('Batches', '111 b', 'Cuttings')]
  expect((await numberAt(page, planned)) + (await numberAt(page, batch))).toBe(21_514)
  await expectInGuide(page, planned, 'Still to plan', '13,014')
  await expectInGuide(page, batch, 'Cuttings', '8,500')

  await typeInto(page, beside('Mixing', 'Litres to mix'), '600')
  await expectFigure(page, 'Mixing', 'Loads', '3')
  // Three parts of peat to two of perlite in 250 loose litres.
  expectGuideToSay('Peat', '150.00')
  expect((250 * 3) / 5).toBe(150)
  await goTo(page, { sheet: 'Mixing', address: 'A1' })
  await picture(page, 'guide/mixing', sheetPart(1080, 690))

  await expectRow(page, 'Orders', '111', 'Chance of enough', '97.8%')
  await typeInto(page, inRow('Batches', '111 b', 'Rooted'), '6800')
  await expectRow(page, 'Batches', '111 b', 'More or fewer', '-620')
  // Of 6,800 rooted and 8,500 stuck at a strike of 88 %, each with 96 % and 95 % to come.
  expect(Math.round((6800 - 8500 * 0.88) * 0.96 * 0.95)).toBe(-620)
  await expectRow(page, 'Orders', '111', 'Chance of enough', '74.3%')
  await expectRow(page, 'Orders', '111', 'Stick again', '511')
  await goTo(page, inRow('Batches', '111 a', 'Line'))
  await picture(page, 'guide/batches', sheetPart(1080, 420))
})

/** How many weeks after the first one of the calendar. */
function weekOf(day: string): number {
  return (Date.parse(day) - Date.parse('2026-01-26')) / (7 * 24 * 3600 * 1000)
}

it('In a narrow window a line below the pane shows where Check leads, and the hidden sheet keeps its size, without which it would not scroll there.', async () => {
  const page = await pages.open({ viewport: { width: 320, height: 700 } })
  await expect.poll(() => cellLine(page)).toMatch(/^Season, A1:/)
  await page.getByRole('button', { name: 'Pane', exact: true }).click()
  await choose(page, 'Check')
  await button(page, 'A61 on Quote').first().click()
  await expect.poll(() => cellLine(page)).toMatch(/^Quote, A61:/)
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
