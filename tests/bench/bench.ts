/**
 * `npm run bench`: what the speed promises are on this machine, each beside its measure. Nothing here is a test: a
 * slow or busy machine must not make one fail.
 */
import { readFileSync } from 'node:fs'
import { availableParallelism, loadavg } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import fc from 'fast-check'
import { addressOf } from '../../src/formula/address'
import type { OpenBook, OpenCell } from '../../src/workbook/openBook'
import type { Testimony } from '../../src/workbook/check/testimony'
import { testimonyOf } from '../../src/workbench/witness/witness'
import '../workbench/witness/secondEngineInNode'
import { usualBook } from '../workbench/witness/usualFormulas'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { resultsOf } from '../../src/workbench/xlsx/results'
import type { Cell } from '../../src/workbook/book'
import { recalculationMeasure } from '../../src/workbench/grid/recalculationMeasure'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { doubtful } from '../../src/workbook/season/tables/doubts'
import { serve, workbenchHeaders } from '../../src/start/server.mjs'
import { standInForExcel } from '../browser/excelStandIn'
import type { Browser, Page } from 'playwright-core'
import { launchChromium } from '../browser/engines/chromium'
import { ready } from '../browser/ready'
import { goTo, named, selectedCell } from '../browser/seasonPlaces'
import { argumentsOf, randomFrom, randomPurchase } from '../oracles/purchases'
import { bundleText, dist, loadBundle } from '../bundle/loadBundle'
import { paneAnswers, type PanePage } from './paneAnswers'

function line(what: string, measured: string, promised = ''): void {
  console.log(`${what.padEnd(88)}${measured.padStart(14)}   ${promised}`)
}

function milliseconds(time: number): string {
  return `${time < 10 ? time.toFixed(2) : time.toFixed(0)} ms`
}

function kilobytes(file: string): string {
  return `${(gzipSync(readFileSync(join(dist, file))).length / 1000).toFixed(1)} kB`
}

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN
}

function timed(run: () => unknown): number {
  const start = performance.now()
  run()
  return performance.now() - start
}

function sizes(): void {
  line('functions.js, gzipped', `${(gzipSync(bundleText()).length / 1000).toFixed(1)} kB`, 'under 60 kB')
  line('taskpane.js, gzipped', kilobytes('taskpane.js'))
  line('workbench.js, gzipped', kilobytes('workbench.js'))
}

function calls(): void {
  const functions = loadBundle()
  const run = (id: string, ...args: unknown[]) => functions.get(id)!(...args)
  line(
    '100,000 calls of FILL through the bundle',
    milliseconds(
      timed(() => {
        for (let vessels = 0; vessels < 100_000; vessels++) run('FILL', vessels, 65.5, 0.1, 0.03)
      }),
    ),
    'under 2 s',
  )
  line(
    '10,000 calls of BAGS through the bundle',
    milliseconds(
      timed(() => {
        for (let need = 0; need < 10_000; need++) run('BAGS', need, 60, 1.9, 12, 4)
      }),
    ),
  )
  line(
    '1,000 calls of BREAKEVEN with interest four times a year',
    milliseconds(
      timed(() => {
        for (let cents = 1; cents <= 1000; cents++) run('BREAKEVEN', 0.45, 2 + cents / 1000, 0.12, 0, 0.01, 0, 0.05, 4)
      }),
    ),
  )
  line(
    'CUTTINGS for a million liners at 95 %, binomial',
    milliseconds(timed(() => run('CUTTINGS', 1e6, [[0.85]], 0.95, null))),
    'under 50 ms',
  )
  line(
    'ODDS, 100,000 draws of ROOTINGCOST with eleven arguments',
    milliseconds(timed(() => run('ODDS', 'ROOTINGCOST', ...uncertainRooting(), 100_000))),
    'under 1 s',
  )
  line(
    'ODDS, 1,000 draws of BREAKEVEN with interest',
    milliseconds(
      timed(() =>
        run(
          'ODDS',
          'BREAKEVEN',
          inColumn(['singleUseCost', 'firstCost', 'washCost', 'yearlyInterest', 'roundsPerYear']),
          inColumn([0.4, 2, 0.1, 0, 1]),
          inColumn([0.45, 2.4, 0.12, 0.05, 4]),
          inColumn([0.5, 3, 0.2, 0.1, 4]),
          1000,
        ),
      ),
    ),
  )
  line(
    'SWINGS of ROOTINGCOST with eleven arguments',
    milliseconds(timed(() => run('SWINGS', 'ROOTINGCOST', ...uncertainRooting()))),
  )
  line(
    'CUTTINGS for a million liners at 95 %, beta-binomial',
    milliseconds(timed(() => run('CUTTINGS', 1e6, [[0.85]], 0.95, 0.05))),
    'under 50 ms',
  )
  line(
    'CUTTINGS for ten million liners at 99.9999 %, beta-binomial',
    milliseconds(timed(() => run('CUTTINGS', 1e7, [[0.5]], 0.999999, 0.2))),
    'under 50 ms',
  )
  line(
    'OVERSTICK for a million liners, binomial',
    milliseconds(timed(() => run('OVERSTICK', 1e6, [[0.85]], 0.1, 1.5, 0.05, null))),
    'under 50 ms',
  )
  line(
    'OVERSTICK for ten million liners, beta-binomial',
    milliseconds(timed(() => run('OVERSTICK', 1e7, [[0.85]], 0.1, 1.5, 0.05, 0.05))),
    'under 50 ms',
  )
}

/** The purchases that tests/oracles/buyPlan.test.ts compares with a solver, and a season of a thousand periods. */
function buying(): void {
  const functions = loadBundle()
  const run = (id: string, ...args: readonly unknown[]) =>
    functions.get(id)!(...args.map((argument) => (Array.isArray(argument) ? inColumn(argument) : argument)))
  const random = randomFrom(1958)
  const times = Array.from({ length: 1000 }, () => argumentsOf(randomPurchase(random))).map((args) =>
    timed(() => {
      try {
        run('BUYPLAN', ...args)
      } catch {
        // Some of these needs are beyond what is available, which a cell shows as an error value.
      }
    }),
  )
  line('BUYPLAN, median of 1,000 purchases', milliseconds(median(times)), 'under 1 ms')
  line('BUYPLAN, the slowest of them', milliseconds(Math.max(...times)), 'under 500 ms')
  const needs = Array.from({ length: 1000 }, () => random(1000) / 10)
  line(
    'STOCKPLAN over 1,000 periods',
    milliseconds(
      timed(() =>
        run(
          'STOCKPLAN',
          needs,
          40,
          0.01,
          needs.map(() => 2 + random(50) / 100),
          100,
        ),
      ),
    ),
  )
}

function inColumn(cells: readonly unknown[]): readonly (readonly unknown[])[] {
  return cells.map((cell) => [cell])
}

/** The names, lows, likelies and highs of all arguments of ROOTINGCOST. */
function uncertainRooting(): readonly unknown[] {
  return [
    doubtful.words,
    [80, 5, 900, 0.7, 3, 0, 0, 0.06, -5, 0.02, 2],
    [90, 9, 1000, 0.85, 4.5, 0.05, 0.02, 0.072, 0, 0.05, 4],
    [120, 14, 1100, 0.95, 6, 0.1, 0.1, 0.09, 10, 0.08, 6],
  ].map(inColumn)
}

async function season(): Promise<void> {
  const book = demoSeason()
  const times: number[] = []
  for (let round = 0; round < 5; round++) {
    const start = performance.now()
    await calculateBook(book)
    times.push(performance.now() - start)
  }
  line('the demo season calculated without a screen, median of 5', milliseconds(median(times)))
}

function longBook(rows: number): OpenBook {
  const cell = (row: number, column: number, value: number, formula = ''): [string, OpenCell] => [
    addressOf(row, column),
    { row, column, value, formula, calls: [] },
  ]
  const cells = Array.from({ length: rows }, (_row, row) => [
    cell(row, 0, row),
    cell(row, 1, row * 2, `=A${row + 1}*2`),
    cell(row, 2, row * 2, `=SUM(A${row + 1},ROUND(B${row + 1}/2,2))`),
  ])
  return { names: [], sheets: [{ name: 'Long', cells: new Map(cells.flat()) }] }
}

/** Files of other programs can be long: how the time of recalc grows with their rows. */
async function rows(): Promise<void> {
  const kinds: readonly [what: string, counts: readonly number[], row: (row: number) => Cell[]][] = [
    ['rows of six STICK functions', [2000, 20_000], functionsIn],
    [
      'rows of two plain formulas',
      [2000, 20_000],
      (row) => [{ value: row % 13 }, { value: 2 }, { formula: `=A${row}*B${row}` }, { formula: `=ROUND(C${row}/3,2)` }],
    ],
    ['running totals', [1000, 4000], (row) => [{ value: row % 13 }, { formula: `=SUM(A$1:A${row})` }]],
  ]
  for (const [what, counts, cells] of kinds) {
    for (const count of counts) {
      const sheet = { name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0 }
      const book = {
        names: [],
        sheets: [{ ...sheet, rows: Array.from({ length: count }, (_, row) => cells(row + 1)) }],
      }
      const start = performance.now()
      resultsOf(book, await calculateBook(book))
      const time = performance.now() - start
      line(`${count} ${what}, calculated and labelled`, milliseconds(time), `${(time / count).toFixed(2)} ms a row`)
    }
  }
}

function functionsIn(row: number): Cell[] {
  const inputs = [`Line ${row}`, 100 + (row % 977), 0.5 + (row % 50) / 100, 1 + (row % 40) / 10]
  const formulas = [
    `CUTTINGS(B${row},C${row})`,
    `FILL(E${row},D${row},0.1,0.03)`,
    `BAGS(F${row},60,1.9,12,4)`,
    `FILL(B${row},D${row},0.1,0.05)`,
    `BAGS(H${row},70,1.8,11,3)`,
    `CUTTINGS(B${row},C${row},0.95)`,
  ]
  return [...inputs.map((value) => ({ value })), ...formulas.map((formula) => ({ formula: `=STICK.${formula}` }))]
}

/** What the second engine makes of 10,000 usual formulas: how long it takes, and in how many it differs. */
async function witness(): Promise<void> {
  const said: Testimony[] = []
  let took = 0
  for (const book of fc.sample(usualBook(250), { numRuns: 40, seed: 20_260_101 })) {
    const open = await calculateBook(book)
    took += timed(() => said.push(testimonyOf(open)))
  }
  for (const rows of [2_000, 20_000]) {
    const book = longBook(rows)
    line(`${rows} rows of two formulas calculated once more`, milliseconds(timed(() => testimonyOf(book))))
  }
  const sum = (of: (one: Testimony) => number) => String(said.reduce((total, one) => total + of(one), 0))
  line('10,000 usual formulas calculated once more by the second engine', milliseconds(took))
  line(
    'of them calculated',
    sum(({ judged }) => judged),
  )
  line(
    'of these with another result',
    sum(({ disagreements }) => disagreements.length),
    'at most 10',
  )
}

/** Ten times each, with the page's thread four times slower than it is. */
async function panes(): Promise<void> {
  const [inExcel, inWorkbench] = [
    await serve({ folder: dist, port: 0 }),
    await serve({ folder: dist, port: 0, headers: workbenchHeaders }),
  ]
  const browser = await launchChromium()
  // Each wait for the processor counts fully here: a busy machine gives no measure of the pane.
  line(
    'processes that wait for the processors of this machine',
    loadavg()[0]!.toFixed(1),
    `${availableParallelism()} processors`,
  )
  const pages: Readonly<Record<string, { readonly page: PanePage; readonly promised: string }>> = {
    "Excel's pane": {
      page: {
        address: `${inExcel.address}/taskpane.html`,
        pane: '#pane',
        width: 350,
        prepare: (page) => standInForExcel(page, inExcel.address),
      },
      promised: 'under 1 s',
    },
    "the workbench's pane": {
      page: { address: inWorkbench.address, pane: 'aside.functions', width: 1440 },
      promised: '',
    },
  }
  try {
    for (const [name, { page, promised }] of Object.entries(pages)) {
      for (const [ask, what] of [
        ['click', 'a click on the first tab'],
        ['letter', 'a letter in the search'],
      ] as const) {
        const answers: Awaited<ReturnType<typeof paneAnswers>>[] = []
        for (let round = 0; round < 10; round++) answers.push(await paneAnswers(browser, page, ask))
        const [ready, answered] = [answers.map((answer) => answer.ready), answers.map((answer) => answer.answered)]
        line(`${name} is ready for ${what}, processor 4x slower, median of 10`, milliseconds(median(ready)), promised)
        line('the slowest of them', milliseconds(Math.max(...ready)), promised)
        line(`${name} shows ${what}, seen from the bench, median of 10`, milliseconds(median(answered)))
        line('the slowest of them', milliseconds(Math.max(...answered)))
      }
    }
  } finally {
    await browser.close()
    await Promise.all([inExcel.close(), inWorkbench.close()])
  }
}

/** Opens the demo in windows of their own, then types into its first order and reads how long the page says that took. */
async function workbench(): Promise<void> {
  const served = await serve({ folder: dist, port: 0, headers: workbenchHeaders })
  const browser = await launchChromium()
  try {
    const openings = { pane: [] as number[], shown: [] as number[], calculated: [] as number[] }
    let page = await openWorkbench(browser, served.address, openings)
    for (let opening = 1; opening < 5; opening++) {
      await page.close()
      page = await openWorkbench(browser, served.address, openings)
    }
    line('the pane of the workbench is there, median of 5', milliseconds(median(openings.pane)))
    line('its sheet shows the season, median of 5', milliseconds(median(openings.shown)), 'under 1500 ms')
    line('the season is calculated, median of 5', milliseconds(median(openings.calculated)))
    await goTo(page, named('OrderLiners'))
    const measured = () =>
      page.evaluate((name) => performance.getEntriesByName(name).map(({ duration }) => duration), recalculationMeasure)
    const before = (await measured()).length
    for (let edit = 1; edit <= 12; edit++) {
      await page.keyboard.type(String(9000 + edit))
      await page.keyboard.press('Enter')
      await page.waitForFunction(([name, count]) => performance.getEntriesByName(name).length >= count, [
        recalculationMeasure,
        before + edit,
      ] as const)
      await page.keyboard.press('ArrowUp')
    }
    const times = (await measured()).slice(before)
    line('one input changed in the workbench, median of 12', milliseconds(median(times)), 'under 100 ms')
    line('the slowest of them', milliseconds(Math.max(...times)))
  } finally {
    await browser.close()
    await served.close()
  }
}

async function openWorkbench(
  browser: Browser,
  address: string,
  openings: Readonly<Record<'pane' | 'shown' | 'calculated', number[]>>,
): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage()
  const start = performance.now()
  const note = (what: keyof typeof openings) => openings[what].push(performance.now() - start)
  const there = [
    page
      .locator('[data-function="CUTTINGS"]')
      .waitFor()
      .then(() => note('pane')),
    selectedCell(page)
      .filter({ hasText: 'Season, A1' })
      .waitFor()
      .then(() => note('shown')),
    ready(page).then(() => note('calculated')),
  ]
  await page.goto(address)
  await Promise.all(there)
  return page
}

const groups = { sizes, calls, buying, season, rows, witness, panes, workbench }

const asked = process.argv.slice(2)
for (const [name, measure] of Object.entries(groups)) if (asked.length === 0 || asked.includes(name)) await measure()
