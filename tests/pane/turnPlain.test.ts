// @vitest-environment jsdom
/** All sheets of a workbook turned plain, as in Excel, whose port gives out no copy. */
import { act } from 'react'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import type { OpenBook, OpenCell } from '../../src/workbook/openBook'
import { PortProblem } from '../../src/workbook/port'
import { MemoryPort } from './MemoryPort'
import { untilFetched } from './untilFetched'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

let port: MemoryPort
let element: HTMLElement
let pane: MountedPane

const cell = (formula: string, value: number): OpenCell => ({ row: 0, column: 0, formula, value, calls: [] })

/** FILL has a plain formula, CUTTINGS has none: see their definitions. */
const book: OpenBook = {
  names: [],
  sheets: [
    { name: 'Trays', cells: new Map([['A1', cell('=STICK.FILL(10,50)', 0.5)]]) },
    { name: 'Orders', cells: new Map([['A1', cell('=STICK.CUTTINGS(90,{0.9})', 100)]]) },
  ],
}

beforeEach(async () => {
  port = new MemoryPort()
  port.book = book
  port.bookAfterChange = book
  element = document.body.appendChild(document.createElement('main'))
  await act(async () => {
    pane = mountPane(element, port)
  })
  await act(async () => port.select({ sheet: 'Trays', address: 'A1', formula: '=STICK.FILL(10,50)', value: 0.5 }))
  await press('Calculation')
  await untilFetched(element)
})

afterEach(() => {
  act(() => pane.unmount())
  element.remove()
})

async function press(name: string): Promise<void> {
  // This part of the section is loaded when it is opened.
  await expect
    .poll(
      async () => {
        await act(async () => undefined)
        return buttonNamed(name)
      },
      { timeout: 5_000 },
    )
    .toBeDefined()
  await act(async () => buttonNamed(name)!.click())
}

const buttonNamed = (name: string) =>
  [...element.querySelectorAll<HTMLElement>('button')].find(({ textContent }) => textContent?.startsWith(name))

test('It is said first what becomes of the cells of all sheets; then they change at once, and a sheet lists what became a value.', async () => {
  await press('Turn all sheets into plain formulas')
  expect(element.textContent).toContain('In this workbook, 1 cell gets a plain formula.')
  expect(element.textContent).toContain('In this workbook, 1 cell becomes a value')
  expect(port.changed).toEqual([])
  await press('Change these 2 cells')
  expect(port.changed.map(({ sheet, address, was }) => [sheet, address, was])).toEqual([
    ['Trays', 'A1', '=STICK.FILL(10,50)'],
    ['Orders', 'A1', '=STICK.CUTTINGS(90,{0.9})'],
  ])
  expect(port.changed.map(({ now }) => now)).toEqual([
    { formula: expect.not.stringContaining('STICK') },
    { value: 100 },
  ])
  expect(port.added.map(({ sheets }) => sheets.map(({ name }) => name))).toEqual([['Without the add-in']])
  expect(element.textContent).toContain('What became a value is listed on the sheet “Without the add-in”.')
})

test('Where the list is refused, it is still said that the cells are changed.', async () => {
  await press('Turn all sheets into plain formulas')
  port.add = () => Promise.reject(new PortProblem('protectedWorkbook'))
  await press('Change these 2 cells')
  expect(port.changed).toHaveLength(2)
  expect(element.textContent).toMatch(/2 cells are changed\..*protected/)
})
