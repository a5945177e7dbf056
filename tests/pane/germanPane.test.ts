// @vitest-environment jsdom
/** The pane in German, section by section, beside the demo season: what it says itself is German, and only what stands in cells is not. */
import { act } from 'react'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { isCellError } from '../../src/core/definition/problem'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import { catalogue } from '../../src/functions/catalogue'
import { bibliography } from '../../src/sources/bibliography'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { german } from '../../src/wording/de/words'
import { english } from '../../src/wording/en/words'
import type { CallInCell, OpenBook, OpenCell } from '../../src/workbook/openBook'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { MemoryPort } from './MemoryPort'
import { untilFetched } from './untilFetched'
import { valuesOf } from '../workbook/season/figuresOf'
import { SizeOf288 } from './SizeOf288'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

Object.assign(globalThis, { ResizeObserver: SizeOf288 })

/** The same word in both languages. */
const same = new Set(['Name'])
const spoken = new Set(plainTexts(english).filter((text) => text.length > 2 && !same.has(text)))
/** An argument has one name, which formulas show too. */
const argumentNames = new Set(catalogue.flatMap(({ parameters }) => Object.keys(parameters)))
/** Words that no German sentence has. */
const englishWord =
  /\b(the|of|and|with|is|are|for|this|that|from|which|what|where|when|not|has|have|your|each|its|per|or|to|on|by)\b/i

let open: OpenBook
/** What stands in cells or comes out of examples, and titles of sources, the longest first. */
let others: readonly string[]
let port: MemoryPort
let element: HTMLElement
let pane: MountedPane
let pageSpeaks: string[]

beforeAll(async () => {
  open = await calculateBook(demoSeason())
  const inCells = open.sheets.flatMap(({ name, cells }) => [name, ...[...cells.values()].map(({ value }) => value)])
  const sources = Object.values(bibliography).flatMap(({ title, detail }) => [title, detail])
  const given = catalogue.flatMap(({ examples }) => examples.flatMap(({ gives }) => [gives].flat(2)))
  // The headings of a table too stand in cells, though INDEX may take one cell of it.
  const headings = catalogue.flatMap(({ result: { columns = {} } }) =>
    Object.values(columns).map(({ heading }) => heading),
  )
  others = [...new Set([...inCells, ...sources, ...given, ...headings])]
    .filter((one): one is string => typeof one === 'string' && one.length > 2)
    .sort((a, b) => b.length - a.length)
  // Loaded when they are opened, and here without waiting then.
  await Promise.all([
    import('../../src/pane/CompareSection'),
    import('../../src/pane/SeasonSection'),
    import('../../src/pane/LibrarySection'),
    import('../../src/pane/SettingsSection'),
    import('../../src/pane/WriteWorking'),
    import('../../src/pane/TurnPlain'),
  ])
}, 120_000)

beforeEach(async () => {
  localStorage.setItem('sticksheet settings', JSON.stringify({ language: 'de' }))
  pageSpeaks = []
  port = new MemoryPort()
  port.book = open
  port.addChart = async () => undefined
  element = document.body.appendChild(document.createElement('main'))
  await act(async () => {
    pane = mountPane(element, port, {
      onLanguage: (language) => {
        pageSpeaks.push(language)
      },
    })
  })
  await until(() => tab('Functions') !== undefined)
  await untilFetched(element)
})

afterEach(() => {
  act(() => pane.unmount())
  element.remove()
  localStorage.clear()
})

function plainTexts(words: object): readonly string[] {
  return Object.values(words).flatMap((value: unknown) => {
    if (typeof value === 'string') return [value]
    return typeof value === 'object' && value !== null ? plainTexts(value) : []
  })
}

async function until(done: () => boolean): Promise<void> {
  await expect
    .poll(
      async () => {
        await act(async () => undefined)
        return done()
      },
      { timeout: 10_000 },
    )
    .toBe(true)
}

function tab(name: keyof typeof german.frame.sections): HTMLElement | undefined {
  return [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find(({ textContent }) =>
    textContent?.startsWith(german.frame.sections[name]),
  )
}

async function go(name: keyof typeof german.frame.sections, loaded: string): Promise<void> {
  await act(async () => tab(name)!.click())
  await until(() => element.textContent?.includes(loaded) === true)
}

async function press(label: string): Promise<void> {
  const buttons = [...element.querySelectorAll('button')].filter(({ textContent }) => textContent === label)
  expect(buttons.length, label).toBeGreaterThan(0)
  for (const button of buttons) await act(async () => button.click())
}

/** All that is said, seen or not, but for formulas. */
function said(): readonly string[] {
  const texts: string[] = []
  for (const one of element.querySelectorAll('*')) {
    texts.push(...['aria-label', 'placeholder', 'title'].flatMap((name) => one.getAttribute(name) ?? []))
    const isFormula = one.tagName === 'CODE' || (one.textContent?.includes(' = ') === true && one.children.length === 0)
    if (!isFormula)
      for (const node of one.childNodes) if (node.nodeType === Node.TEXT_NODE) texts.push(node.textContent ?? '')
  }
  return texts.map((text) => text.trim())
}

/** Whole words only: a rooting method may be called Tray, and an argument cellsPerTray. */
function without(text: string, other: string): string {
  return text
    .split(other)
    .reduce((left, right) =>
      /\p{L}$/u.test(left) || /^\p{L}/u.test(right) ? `${left}${other}${right}` : `${left} ${right}`,
    )
}

function leftInEnglish(): readonly string[] {
  return [...new Set(said())].filter((text) => {
    const ours = others.filter((other) => text.includes(other)).reduce(without, text)
    return (spoken.has(text) && !others.includes(text) && !argumentNames.has(text)) || englishWord.test(ours)
  })
}

test('tells its page what it speaks', () => {
  expect(pageSpeaks.at(-1)).toBe('de')
})

describe('nothing is left in English of', () => {
  test('Functions', async () => {
    for (const id of ['CUTTINGS', 'QUOTE']) {
      await act(async () => element.querySelector<HTMLElement>(`[data-function="${id}"] h4 button`)!.click())
      await untilFetched(element)
      expect(leftInEnglish()).toEqual([])
    }
  })

  test('Season, before it is built', async () => {
    await go('Season', german.season.build.demo)
    await press(german.season.build.demo)
    expect(leftInEnglish()).toEqual([])
  })

  test('Season, of a season that is there, with its weeks', async () => {
    port.values = Object.fromEntries(open.names.map(({ name }) => [name, valuesOf(open, name).map((value) => [value])]))
    await go('Season', german.season.today)
    await until(() => element.textContent?.includes(german.season.weeks.titles.bench) === true)
    expect(leftInEnglish()).toEqual([])
  })

  test('Check', async () => {
    port.witness = async () => ({
      disagreements: [{ sheet: 'Orders', address: 'E9', first: 110, second: null }],
      judged: 2,
      notJudged: { ownFunction: 1, unseenCall: 1, otherwise: 1, unknown: 1, error: 1, changing: 1 },
    })
    await go('Check', german.check.again)
    await until(() => element.textContent?.includes(german.check.witness.said(1, 2)) === true)
    expect(element.textContent).toContain(german.check.witness.notJudged(6))
    expect(leftInEnglish()).toEqual([])
  })

  test('Compare, as charts and as tables', async () => {
    await go('Compare', german.compare.readAgain)
    expect(element.querySelectorAll('figure').length).toBeGreaterThan(2)
    expect(leftInEnglish()).toEqual([])
    await press(german.compare.asTable)
    expect(leftInEnglish()).toEqual([])
  })

  test('Library', async () => {
    await go('Library', german.library.about)
    expect(leftInEnglish()).toEqual([])
  })

  test('Settings', async () => {
    await go('Settings', german.settings.about)
    expect(leftInEnglish()).toEqual([])
  })

  test('Working, of a call of each function in the season', async () => {
    await go('Working', german.working.withoutTheAddIn)
    const first = new Map(cellsWithCalls().flatMap((cell) => cell.calls.map(({ id }) => [id, cell] as const)))
    expect(first.size).toBeGreaterThan(10)
    for (const cell of first.values()) {
      await select(cell)
      expect(leftInEnglish(), `${cell.sheet}!${cell.address}`).toEqual([])
    }
  })
})

test('writes a working into the workbook in English, as all that stands there', async () => {
  await go('Working', german.working.withoutTheAddIn)
  const cell = cellsWithCalls().find(({ calls }) => calls.some(({ id }) => id === 'CUTTINGS'))!
  await select(cell)
  await press(german.working.write)
  await until(() => port.added.length === 1)
  const [sheet] = port.added[0]!.sheets
  const texts = sheet!.rows.flatMap((row) => row.map((one) => one?.value))
  expect(sheet!.name).toBe(`Calculation of ${cell.address}`)
  const { summary, convention } = catalogue.find(({ id }) => id === 'CUTTINGS')!
  expect(texts).toEqual(expect.arrayContaining(['What went in', summary, convention]))
})

interface CellWithCalls extends OpenCell {
  readonly sheet: string
  readonly address: string
  readonly calls: readonly CallInCell[]
}

function cellsWithCalls(): readonly CellWithCalls[] {
  return open.sheets.flatMap(({ name, cells }) =>
    [...cells].map(([address, cell]) => ({ ...cell, sheet: name, address, calls: cell.calls ?? [] })),
  )
}

async function select({ sheet, address, formula, value, calls }: CellWithCalls): Promise<void> {
  port.calls = calls
  await act(async () => port.select({ sheet, address, formula, value: isCellError(value) ? value.code : value }))
  await until(() => element.querySelector('article') !== null)
}
