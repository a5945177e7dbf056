/** One walk through the workbench in each browser engine of this machine, with real keys and a real mouse. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Served } from '../../../src/start/server.mjs'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { sections, type Section } from '../../../src/pane/sections'
import { frame } from '../../../src/wording/en/frame'
import { sheets } from '../seasonPlaces'
import { engines } from './engines'
import { serveListening } from './serveListening'
import type { Tab } from './tab'

let served: Served

beforeAll(async () => {
  served = await serveListening()
})

afterAll(() => served?.close())

const cellLine = (tab: Tab) => tab.evaluate<string>(`document.querySelector('.sheet .cell')?.textContent ?? ''`)

async function atCell(tab: Tab, begins: string | RegExp): Promise<string> {
  await expect.poll(() => cellLine(tab)).toMatch(begins)
  return cellLine(tab)
}

async function pressOften(tab: Tab, key: string, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) await tab.press(key)
}

/**
 * In the middle of its list and at rest, as a hand does it: a list goes on moving while texts in it open and close. On
 * a busy machine it may move once more before the click is there, so that the click goes elsewhere, and is made again.
 */
async function click(tab: Tab, xpath: string): Promise<void> {
  await expect
    .poll(
      async () => {
        const { x, y } = await placeAtRest(tab, xpath)
        await tab.click(x, y)
        return tab.evaluate('window.clicked')
      },
      { message: xpath },
    )
    .toBe(true)
}

async function placeAtRest(tab: Tab, xpath: string): Promise<Middle> {
  let middle: Middle | null = null
  await expect
    .poll(
      async () => {
        const before = middle
        middle = await tab.evaluate<Middle | null>(`(() => {
      const element = document.evaluate(${JSON.stringify(xpath)}, document, null, XPathResult.FIRST_ORDERED_NODE_TYPE).singleNodeValue
      if (element === null || element.disabled) return null
      element.scrollIntoView({ block: 'center' })
      const { left, top, width, height } = element.getBoundingClientRect()
      const [x, y] = [Math.round(left + width / 2), Math.round(top + height / 2)]
      window.clicked = false
      document.addEventListener('click', ({ target }) => { window.clicked = element.contains(target) }, { once: true, capture: true })
      return element.contains(document.elementFromPoint(x, y)) ? { x, y } : null
    })()`)
        return middle !== null && middle.x === before?.x && middle.y === before?.y
      },
      { message: xpath, interval: 100 },
    )
    .toBe(true)
  return middle!
}

interface Middle {
  readonly x: number
  readonly y: number
}

const numberIn = (line: string) => Number(/(-?[\d,.]+)$/.exec(line)?.[1]?.replaceAll(',', ''))

const inPane = (xpath: string) => `//aside[contains(@class, "functions")]${xpath}`

/** Whether something of the page stands out of the window, or of the pane. */
const tooWide = (tab: Tab) =>
  tab.evaluate<
    string[]
  >(`[...document.querySelectorAll('.bar, .cell, aside.functions :is(h1, h2, h3, h4, h5, p, li, dt, dd, code, label, button, input, select)')]
  .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5).map((element) => element.outerHTML.slice(0, 200))`)

/** The heading of what is shown in the tab's panel. */
async function chooseSection(tab: Tab, name: Section): Promise<void> {
  const section = frame.sections[name]
  await click(tab, inPane(`//*[@role="tab"][starts-with(normalize-space(), "${section}")]`))
  await expect
    .poll(
      () =>
        tab.evaluate(`[...document.querySelectorAll('aside.functions [role="tabpanel"]')]
    .filter((panel) => getComputedStyle(panel).display !== 'none').map((panel) => panel.querySelector('h2')?.textContent).join()`),
      { message: section },
    )
    .toMatch(new RegExp(`^${section}`))
}

/** Types an order as a grower does and reads what follows from it. */
async function changeFirstOrder(tab: Tab, liners: number): Promise<void> {
  await atCell(tab, /^Season, A1:/)
  // Before Orders stand the sheets of what is bought and of what it is stuck in.
  for (const { name } of sheets.slice(1, sheets.findIndex(({ name }) => name === 'Orders') + 1)) {
    await tab.press('Alt+PageDown')
    await atCell(tab, new RegExp(`^${name}, A1:`))
  }
  await pressOften(tab, 'ArrowDown', 8)
  await pressOften(tab, 'ArrowRight', 21)
  const before = numberIn(await atCell(tab, /^Orders, V9: .* gives [\d,]+$/))
  await pressOften(tab, 'ArrowLeft', 17)
  const ordered = numberIn(await atCell(tab, /^Orders, E9:/))
  await tab.type(String(liners))
  await tab.press('Enter')
  await atCell(tab, /^Orders, E10:/)
  await tab.press('ArrowUp')
  expect(numberIn(await atCell(tab, /^Orders, E9: [\d,]+$/))).toBe(liners)
  await pressOften(tab, 'ArrowRight', 17)
  await expect.poll(async () => numberIn(await atCell(tab, /^Orders, V9:/)) / before).toBeCloseTo(liners / ordered, 2)
}

/** Beside the one that the selected cell uses, which is open. */
async function openThreeFunctions(tab: Tab): Promise<void> {
  for (const id of ['BATCHSPREAD', 'BUYPLAN', 'UNITS']) {
    await click(tab, inPane(`//*[@data-function="${id}"]//h4/button`))
    await expect
      .poll(() => tab.evaluate(`document.querySelector('[data-function="${id}"] h5')?.textContent`), { message: id })
      .toBe('Example')
    // The name of the function that was opened is in sight, at the top of its text.
    await expect
      .poll(
        () =>
          tab.evaluate(`(() => {
      const name = document.querySelector('[data-function="${id}"] h4').getBoundingClientRect()
      const list = document.querySelector('[data-function="${id}"]').closest('div').getBoundingClientRect()
      return name.top >= list.top - 1 && name.bottom <= list.bottom + 1
    })()`),
        { message: `${id} in sight` },
      )
      .toBe(true)
  }
}

/** Into the cell that is selected, and back by one undo. */
async function putAndUndo(tab: Tab): Promise<void> {
  const before = await cellLine(tab)
  await click(tab, inPane('//*[@data-function="FILL"]//h4/button'))
  const put = inPane('//*[@data-function="FILL"]//button[normalize-space()="Put into the selected cell"][1]')
  await click(tab, `(${put})[1]`)
  await atCell(tab, /=STICK\.FILL\(72,"4\.38 in3"\) gives 5\.167/)
  for (const part of ['.bar', 'main.sheet']) {
    await tab.press('F6')
    await expect
      .poll(() => tab.evaluate(`document.querySelector('${part}').contains(document.activeElement)`), { message: part })
      .toBe(true)
  }
  await tab.press('Control+z')
  await expect.poll(() => cellLine(tab)).toBe(before)
}

/** Loads the page again before anything is saved, and takes what the browser has kept. */
async function keepOverReload(tab: Tab): Promise<void> {
  const count = `(() => {
    const opening = indexedDB.open('sticksheet')
    opening.onsuccess = () => {
      const counting = opening.result.transaction('unsaved work').objectStore('unsaved work').count()
      counting.onsuccess = () => { window.kept = counting.result; opening.result.close() }
    }
    return window.kept
  })()`
  await expect.poll(() => tab.evaluate(count), { message: 'kept' }).toBe(1)
  // Drivers answer the browser's own question each in another way.
  await tab.evaluate(`addEventListener('beforeunload', (event) => event.stopImmediatePropagation(), true)`)
  await tab.evaluate(`setTimeout(() => location.reload())`)
  await expect
    .poll(() => tab.evaluate(`document.querySelector('dialog h2')?.textContent`))
    .toBe('season.xlsx was not saved')
  await click(tab, '//dialog//button[normalize-space()="Open it"]')
  await expect.poll(() => tab.evaluate('document.title')).toBe('season.xlsx, not saved – Sticksheet')
}

async function showInNarrowWindow(tab: Tab): Promise<void> {
  await tab.resize(320, 800)
  await expect.poll(() => tab.evaluate<number>('innerWidth')).toBeLessThanOrEqual(320)
  await click(tab, '//button[normalize-space()="Pane"]')
  for (const section of sections) {
    await chooseSection(tab, section)
    expect(await tooWide(tab), section).toEqual([])
  }
  await click(tab, '//button[normalize-space()="Sheet"]')
  await expect
    .poll(() => tab.evaluate(`getComputedStyle(document.querySelector('.sheet .grid')).visibility`))
    .toBe('visible')
}

describe.each(engines.filter(({ version }) => version !== undefined))('$name $version', (engine) => {
  it('takes an order, shows functions and sections, puts a formula and takes it back, keeps what was typed over a reload, saves the workbook, and fits 320 pixels.', async () => {
    await engine.visit(served.address, async (tab) => {
      await tab.resize(1440, 900)
      await changeFirstOrder(tab, 12_345)
      await openThreeFunctions(tab)
      for (const section of sections) await chooseSection(tab, section)
      await chooseSection(tab, 'Functions')
      expect(await tooWide(tab)).toEqual([])
      await putAndUndo(tab)
      await keepOverReload(tab)
      const saved = await tab.download(() => click(tab, '//button[normalize-space()="Save .xlsx"]'))
      const orders = (await readXlsx(saved)).book.sheets.find(({ name }) => name === 'Orders')!
      expect(orders.rows[8]![4]!.value).toBe(12_345)
      await showInNarrowWindow(tab)
      expect(await tab.evaluate('window.faults')).toEqual([])
    })
  })
})
