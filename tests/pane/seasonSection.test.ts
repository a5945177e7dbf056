// @vitest-environment jsdom
import { act } from 'react'
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import { PortProblem } from '../../src/workbook/port'
import { blankSeason } from '../../src/workbook/season/blankSeason'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { MemoryPort } from './MemoryPort'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

let port: MemoryPort
let element: HTMLElement
let pane: MountedPane

async function open(isEmpty: boolean): Promise<void> {
  port = new MemoryPort()
  port.empty = isEmpty
  element = document.body.appendChild(document.createElement('main'))
  await act(async () => {
    pane = mountPane(element, port)
  })
}

afterEach(() => {
  act(() => pane.unmount())
  element.remove()
})

/** What a screen reader would find; a hidden section is not part of it. */
function shownSection(): string {
  return element.querySelector('[role="tab"][aria-selected="true"]')?.textContent ?? ''
}

function button(label: string): HTMLButtonElement | undefined {
  return [...element.querySelectorAll('button')].find(({ textContent }) => textContent === label)
}

async function click(label: string): Promise<void> {
  await act(async () => button(label)!.click())
}

// The pane loads the section when it is first shown; here it is at hand by then.
beforeAll(() => import('../../src/pane/SeasonSection'))

/** It shows a moment after it was asked for all the same. */
async function untilShown(label: string): Promise<void> {
  await expect
    .poll(async () => {
      await act(async () => undefined)
      return button(label) !== undefined
    })
    .toBe(true)
}

const demo = demoSeason()
const addDemo = `Add these ${demo.sheets.length} sheets`

it('The pane begins with the season beside an empty workbook, and with the functions beside any other.', async () => {
  await open(true)
  await untilShown('Build the demo season')
  expect(shownSection()).toBe('Season')
  act(() => pane.unmount())
  element.remove()
  await open(false)
  expect(shownSection()).toBe('Functions')
  expect(button('Build the demo season')).toBeUndefined()
})

describe('the season section', () => {
  beforeEach(async () => {
    await open(true)
    await untilShown('Build the demo season')
  })

  it('says what it will add and where, and adds nothing before that is agreed to', async () => {
    await click('Build the demo season')
    const status = button(addDemo)!.closest('section')!.querySelector('[role="status"]')?.textContent ?? ''
    expect(status).toContain(`This adds ${demo.sheets.length} sheets after your own: Season, Orders, `)
    expect(status).toContain(`They bring ${demo.names.length} names for cells`)
    expect(status).toContain('All figures in it are invented')
    expect(port.added).toEqual([])
    await click('Do not add')
    expect(button(addDemo)).toBeUndefined()
    expect(port.added).toEqual([])
  })

  it('builds the demo season, lists its sheets with the keyboard on the outcome, and goes to one', async () => {
    await click('Build the demo season')
    await click(addDemo)
    expect(port.added).toEqual([demo])
    expect(document.activeElement?.textContent).toBe(
      `Added ${demo.sheets.length} sheets. Type into the cells in boxes; all else follows.`,
    )
    await click('Orders')
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Orders', address: 'A1' })
  })

  it('builds the empty season as well', async () => {
    await click('Build an empty season')
    await click(addDemo)
    expect(port.added).toEqual([blankSeason()])
  })

  it('says why nothing was added, and tries again', async () => {
    port.refuse(new PortProblem('nameTaken', 'the sheet Orders'))
    await click('Build the demo season')
    await click(addDemo)
    expect(element.querySelector('[role="alert"]')?.textContent).toBe(
      'The workbook already holds the sheet Orders, and nothing of yours is overwritten: rename or delete that first, or open an empty workbook.',
    )
    port.refuse(undefined)
    await click(addDemo)
    expect(element.querySelector('[role="alert"]')).toBeNull()
    expect(port.added).toHaveLength(1)
  })

  it('adds an order line above the last one, goes there and says what to type', async () => {
    port.book = { sheets: [], names: [{ name: 'OrderSpecies', refersTo: "'My orders'!$A$8:$A$24" }] }
    await click('Add an order line')
    expect(port.insertedRows).toEqual([{ sheet: 'My orders', address: 'A24' }])
    expect(await port.selectedCell()).toMatchObject({ sheet: 'My orders', address: 'A24' })
    expect(element.textContent).toContain('The line is ready at A24 on My orders: type its species')
  })

  it('says that there is no order book yet, and why a line could not be added', async () => {
    await click('Add an order line')
    expect(element.querySelector('[role="alert"]')?.textContent).toBe(
      'This workbook has no order book yet: build a season first.',
    )
    port.book = { sheets: [], names: [{ name: 'OrderSpecies', refersTo: 'Orders!$A$8:$A$24' }] }
    port.refuse(new PortProblem('cellEditMode'))
    await click('Add an order line')
    expect(element.querySelector('[role="alert"]')?.textContent).toBe(
      'Press Enter or Esc in the cell first, then try again.',
    )
  })

  it('shows while it adds, takes no second order meanwhile, and goes on when another section is looked at', async () => {
    let finish = (): void => undefined
    port.whenAdding = new Promise((resolve) => {
      finish = resolve
    })
    await click('Build the demo season')
    await click(addDemo)
    expect(element.textContent).toContain('Adding the sheets')
    await click(addDemo)
    await act(async () =>
      [...element.querySelectorAll<HTMLElement>('[role="tab"]')]
        .find(({ textContent }) => textContent?.startsWith('Functions'))!
        .click(),
    )
    await act(async () => finish())
    expect(port.added).toHaveLength(1)
    expect(element.textContent).toContain(`Added ${demo.sheets.length} sheets.`)
  })
})
