// @vitest-environment jsdom
import { act } from 'react'
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import { PortProblem } from '../../src/workbook/port'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { emptySeason } from '../../src/workbook/season/emptySeason'
import { MemoryPort } from './MemoryPort'
import { SizeOf288 } from './SizeOf288'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

// The weeks are drawn as wide as the pane is.
Object.assign(globalThis, { ResizeObserver: SizeOf288 })

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

function fieldOf<Field extends HTMLElement>(label: string): Field {
  const { id } = [...element.querySelectorAll('label')]
    .filter(({ textContent }) => textContent === label)
    .map(({ htmlFor }) => ({ id: htmlFor }))[0]!
  return element.ownerDocument.getElementById(id) as Field
}

async function type(label: string, typed: string): Promise<void> {
  const input = fieldOf<HTMLInputElement>(label)
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, typed)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  })
}

async function choose(label: string, option: string): Promise<void> {
  const select = fieldOf<HTMLSelectElement>(label)
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')?.set?.call(select, option)
    select.dispatchEvent(new Event('change', { bubbles: true }))
  })
}

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
    expect(status).toContain(`This adds ${demo.sheets.length} sheets after your own: Season, Calendar, Monday, `)
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

  it('builds the empty season as well, in the usual currency, and goes to the sheet that is filled in first', async () => {
    await click('Build an empty season')
    expect(element.textContent).toContain('Its currency is EUR; on Setup you type another.')
    await click(addDemo)
    expect(port.added).toEqual([emptySeason('EUR')])
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Setup', address: 'A1' })
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

  it('adds as many rows as are asked for to the table that is chosen, above its last one, and goes to the first', async () => {
    port.book = { sheets: [], names: [{ name: 'MediumState', refersTo: "'My media'!$A$8:$A$24" }] }
    await choose('Sheet', 'Media')
    await type('Rows', '3')
    await click('Add rows')
    expect(port.insertedRows).toEqual([{ place: { sheet: 'My media', address: 'B24' }, count: 3 }])
    expect(await port.selectedCell()).toMatchObject({ sheet: 'My media', address: 'B24' })
    expect(element.textContent).toContain('The rows are ready, the first at B24 on My media: type into their boxes.')
  })

  it('takes 1 to 100 rows at a time, and says so of anything else', async () => {
    port.book = { sheets: [], names: [{ name: 'OrderState', refersTo: 'Orders!$A$8:$A$24' }] }
    for (const typed of ['0', '101', '2.5', '-1', '']) {
      await type('Rows', typed)
      expect(element.textContent, typed).toContain('Type a whole number from 1 to 100.')
      await click('Add rows')
    }
    expect(port.insertedRows).toEqual([])
    await type('Rows', '100')
    expect(element.textContent).not.toContain('Type a whole number from 1 to 100.')
    await click('Add rows')
    expect(port.insertedRows).toMatchObject([{ count: 100 }])
  })

  it('says that there is no such table yet, and why rows could not be added', async () => {
    await click('Add rows')
    expect(element.querySelector('[role="alert"]')?.textContent).toBe(
      'This workbook has no sheet Orders of a season yet: build a season first.',
    )
    port.book = { sheets: [], names: [{ name: 'OrderState', refersTo: 'Orders!$A$8:$A$24' }] }
    port.refuse(new PortProblem('cellEditMode'))
    await click('Add rows')
    expect(element.querySelector('[role="alert"]')?.textContent).toBe(
      'Press Enter or Esc in the cell first, then try again.',
    )
  })

  it('shows nothing of a season that is not there', () => {
    expect(element.textContent).not.toContain('This season now')
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

describe('beside the workbook of a season', () => {
  const column = (...values: readonly (string | number)[]) => values.map((value) => [value])

  beforeEach(async () => {
    port = new MemoryPort()
    port.empty = true
    port.values = {
      SeasonComplete: column('Not complete: 1 on Media'),
      SetupState: column('ready'),
      ContainerState: column('ready', 'ready', ''),
      MediumState: column('ready', 'Price: type number', ''),
      BlendState: column('', ''),
      ComponentState: column('ready'),
      MethodState: column('ready'),
      OrderState: column('ready'),
      CalendarWeek: column('2026-W52', '2026-W53', '2027-W01', '2027-W02'),
      CalendarBench: column(0, 80, 130, 0),
      CalendarGround: column(0, 0, 0, 0),
      CalendarHours: column(0, 0, 0, 0),
      SetupBenchArea: column(100),
      SetupBedArea: column(0),
      SetupHours: column(40),
      SeasonLiners: column(1200),
      SeasonExpected: column(1260.4),
      SeasonBuying: column(310.5),
      SeasonRooting: column(150),
      SetupCurrency: column('EUR'),
      MondayState: column('ready'),
      MondayWeek: column('2027-W01'),
      MondayLitres: column(96.5),
      MondayHours: column(4.2),
      MondayDeliver: column(300),
      MondayNote: column('everything fits'),
      MondayToStick: column('line'),
      MondayToStickLine: column(12, '14', ''),
      MondayToStickSpecies: column('Fuchsia', 'Hebe', ''),
      MondayToStickCuttings: column(4030, 60, ''),
      MondayToStickPieces: column(39, 8, ''),
      MondayToStickContainer: column('Tray 104', 'Vessel', ''),
      MondayToStickMedium: column('Peat and perlite', '', ''),
      MondayStanding: column('line'),
      MondayStandingLine: column('none', ''),
      MondayStandingSpecies: column('', ''),
      MondayStandingPieces: column('', ''),
      MondayStandingContainer: column('', ''),
      MondayStandingUntil: column('', ''),
    }
    element = document.body.appendChild(document.createElement('main'))
    await act(async () => {
      pane = mountPane(element, port)
    })
    await untilShown('Build the demo season')
    await expect
      .poll(async () => {
        await act(async () => undefined)
        return element.textContent
      })
      .toContain('This season now')
  })

  it('says what the season comes to, each figure beside what it is', () => {
    const [terms, values] = ['dt', 'dd'].map((tag) => [...element.querySelectorAll(tag)].map((one) => one.textContent))
    expect(terms!.map((term, index) => `${term}: ${values![index]}`)).toEqual([
      'Liners ordered: 1,200',
      'Saleable liners to expect: 1,260',
      'Buying, everything: EUR 310.50',
      'Rooting cost of the season: EUR 150.00',
      // 150 / 1,200.
      'For each liner ordered: EUR 0.1250',
    ])
  })

  it('says how far each sheet is, what the first row that is not complete lacks, and goes to the sheet', async () => {
    expect(element.textContent).toContain('Not complete: 1 on Media')
    const lines = [...element.querySelectorAll('li')].map(({ textContent }) => textContent)
    expect(lines.find((line) => line?.startsWith('Containers'))).toBe('Containers2 rows, complete')
    expect(lines.find((line) => line?.startsWith('Components'))).toBe('Components1 row, complete')
    expect(lines.find((line) => line?.startsWith('Blends'))).toBe('Blendsnothing typed yet')
    expect(lines.find((line) => line?.startsWith('Media'))).toContain('Price: type number')
    await click('Media')
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Media', address: 'A1' })
  })

  it('lists the work of the week, and says where there is none', async () => {
    const of = (title: string): readonly (string | null)[] =>
      [...element.querySelectorAll('h4')]
        .filter(({ textContent }) => textContent === title)
        .flatMap(({ nextElementSibling: next }) => [...(next?.querySelectorAll('li') ?? [])])
        .map(({ textContent }) => textContent)
    expect(element.textContent).toContain('The week 2027-W01')
    expect(of('To stick')).toEqual([
      '12 Fuchsia: 4,030 cuttings, into 39 × Tray 104, filled with Peat and perlite',
      '14 Hebe: 60 cuttings, into 8 × Vessel',
    ])
    expect(of('Standing since before')).toEqual([])
    expect(element.textContent).toContain('Standing since beforenothing')
    expect(element.textContent).toContain(
      'To mix: 96.5 L loose. Setting out and sticking: 4.2 hours. To deliver: 300 liners.',
    )
    expect(element.textContent).toContain('Rooting hormone harms eyes')
    await click('Ask about another week')
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Monday', address: 'A1' })
  })

  it('says what Monday lacks, or its error, in the place of the work', async () => {
    port.values = { ...port.values, MondayState: column('Week of: not on the calendar') }
    await click('Read the season again')
    expect(element.textContent).toContain(
      'The sheet Monday cannot say what is to be done: Week of: not on the calendar.',
    )
    expect(element.textContent).not.toContain('To stick')
    port.values = {
      ...port.values,
      MondayState: column('ready'),
      MondayLitres: [[{ kind: 'cellError', code: '#N/A' }]],
    }
    await click('Read the season again')
    expect(element.textContent).toContain('The sheet Monday cannot say what is to be done: To mix: #N/A.')
  })

  it('draws the weeks of what is taken, and says which does not fit', () => {
    expect(element.textContent).toContain('Bench, week by week')
    expect(element.textContent).toContain('The fullest week is 2027-W01 with 130 m2 of 100.')
    expect(element.textContent).toContain('One week does not fit: 2027-W01.')
    expect(element.textContent).not.toContain('Ground for beds, week by week')
  })

  it('says after a change that cells may differ from what it shows, until it is read again', async () => {
    const mayBeOld = 'Cells may have changed since this was read.'
    expect(element.textContent).not.toContain(mayBeOld)
    await act(() => port.select({ sheet: 'Media', address: 'B9' }))
    expect(element.textContent).toContain(mayBeOld)
    await click('Read the season again')
    await act(async () => undefined)
    expect(element.textContent).not.toContain(mayBeOld)
  })

  it('reads again what changed in the workbook, where that is asked for', async () => {
    port.values = { ...port.values, SeasonComplete: column('Every sheet is complete.') }
    await click('Read the season again')
    expect(element.textContent).toContain('Every sheet is complete.')
  })
})
