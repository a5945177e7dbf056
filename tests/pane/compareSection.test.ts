// @vitest-environment jsdom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import type { SheetChart } from '../../src/workbook/sheetChart'
import type { OpenCell } from '../../src/workbook/openBook'
import { PortProblem } from '../../src/workbook/port'
import { MemoryPort } from './MemoryPort'
import { SizeOf288 } from './SizeOf288'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

Object.assign(globalThis, { ResizeObserver: SizeOf288 })

let port: MemoryPort
let element: HTMLElement
let pane: MountedPane

beforeEach(() => {
  port = new MemoryPort()
  element = document.body.appendChild(document.createElement('main'))
})

afterEach(() => {
  act(() => pane.unmount())
  element.remove()
})

/** A cell that holds the example of a function and nothing else. */
function exampleCell(id: string, row: number, index = 0): OpenCell {
  const { given } = catalogue.find((definition) => definition.id === id)!.examples[index]!
  const args = given.map((value) => (Array.isArray(value) ? value.map((cell: unknown) => [cell]) : value))
  return { row, column: 0, formula: `=STICK.${id}(B1)`, value: 'first heading', calls: [{ id, args }] }
}

function hold(...cells: readonly OpenCell[]): void {
  port.book = { names: [], sheets: [{ name: 'Ways', cells: new Map(cells.map((cell) => [`A${cell.row + 1}`, cell])) }] }
}

async function openCompare(): Promise<void> {
  await act(async () => {
    pane = mountPane(element, port)
  })
  await act(async () => {
    tab('Compare').click()
    // The section comes with a chunk of its own.
    await import('../../src/pane/CompareSection')
  })
  await until(() => button('Read the workbook again') !== undefined)
}

async function until(done: () => boolean): Promise<void> {
  await expect
    .poll(
      async () => {
        await act(async () => undefined)
        return done()
      },
      { timeout: 5_000 },
    )
    .toBe(true)
}

function text(): string {
  return element.textContent ?? ''
}

function tab(name: string): HTMLElement {
  return [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find(({ textContent }) =>
    textContent?.startsWith(name),
  )!
}

function button(name: string): HTMLButtonElement | undefined {
  return [...element.querySelectorAll('button')].find(({ textContent }) => textContent === name)
}

async function click(target: HTMLElement): Promise<void> {
  await act(async () => target.click())
}

function figure(title: string): HTMLElement {
  return [...element.querySelectorAll('figure')].find((one) => one.querySelector('figcaption')?.textContent === title)!
}

/** The words of a heading without the unit below them. */
async function tableOf(title: string): Promise<readonly (readonly string[])[]> {
  await click(
    [...figure(title).querySelectorAll('button')].find(({ textContent }) => textContent === 'Show as a table')!,
  )
  return [...figure(title).querySelectorAll('tr')].map((row) =>
    [...row.children].map((cell) => cell.firstChild?.textContent ?? ''),
  )
}

/** A table of the catalogue's example as the pane writes numbers. */
function givenBy(id: string): readonly (readonly string[])[] {
  const { gives } = catalogue.find((definition) => definition.id === id)!.examples[0]!
  return (gives as readonly (readonly (number | string)[])[]).map((row) =>
    row.map((cell) =>
      typeof cell === 'number' ? cell.toLocaleString('en-US', { maximumSignificantDigits: 10 }) : cell,
    ),
  )
}

describe('the section Compare', () => {
  it('says which function to put into a sheet where there is none to draw', async () => {
    await openCompare()
    expect(element.querySelectorAll('figure')).toHaveLength(0)
    for (const id of ['COMPARE', 'ROOTINGCOST', 'BREAKEVEN', 'REUSELEDGER', 'SWINGS', 'ODDS'])
      expect(text()).toContain(`STICK.${id}`)
  })

  it('stacks the parts of every way, and its table holds the figures of the cell', async () => {
    hold(exampleCell('COMPARE', 0))
    await openCompare()
    const title = 'Cost of a saleable liner, part by part'
    const bars = [...figure(title).querySelectorAll('[role="img"] svg')]
      .slice(0, 2)
      .map((svg) => [...svg.querySelectorAll('rect')].map((rect) => Number(rect.getAttribute('width'))))
    const [tray, plug] = [
      [0.05, 0.025, 0.0285, 0.0345],
      [0.08, 0.04, 0.03],
    ]
    const perUnit = bars[0]![0]! / 0.05
    expect(bars.map((widths) => widths.map((width) => Number((width / perUnit).toFixed(10))))).toEqual([tray, plug])
    expect(figure(title).textContent).toContain(
      'Tray is cheapest: 0.138 for a saleable liner. Its largest part is “Medium” with 0.05. Plug comes next with 0.15.',
    )
    expect(figure(title).textContent).toContain(
      'Tray, Plug: bench and labour are within “Other costs”, because the workbook does not tell them apart.',
    )
    const table = await tableOf(title)
    expect(table.slice(1)).toEqual([
      ['Tray', '0.05', '0.025', '0.0285', '0.0345', '0.138'],
      ['Plug', '0.08', '0', '0.04', '0.03', '0.15'],
    ])
  })

  it('marks the round from which the tray beats single use', async () => {
    hold(exampleCell('COMPARE', 0))
    await openCompare()
    const title = 'Cost by the rounds it serves'
    expect([...figure(title).querySelectorAll('[role="img"] text')].map(({ textContent }) => textContent)).toContain(
      'round 5',
    )
    expect(figure(title).textContent).toContain('Plug, the cheapest single use, costs 0.15.')
    const table = await tableOf(title)
    expect(table[0]).toEqual(['rounds', 'Tray', 'Plug, single use'])
    expect(table.slice(5)).toEqual([
      ['5', '0.15', '0.15'],
      ['6', '0.138', '0.15'],
      ['costs no more from', '5', '–'],
    ])
  })

  it('compares with another single use when that is chosen, and says with which', async () => {
    hold(exampleCell('COMPARE', 0, 1))
    await openCompare()
    const title = 'Cost by the rounds it serves'
    const select = [...element.querySelectorAll('select')].find(
      ({ id }) => element.querySelector(`label[for="${id}"]`)?.textContent === 'Compare with',
    )!
    expect([...select.options].map(({ text: option }) => option)).toEqual([
      'Plug: the cheapest single use',
      'Block: single use',
    ])
    expect(figure(title).textContent).toContain('and does not beat Plug in its 3 rounds.')
    await act(async () => {
      select.value = '1'
      select.dispatchEvent(new Event('change', { bubbles: true }))
    })
    expect(figure(title).textContent).toContain('Block, used once, costs 0.2.')
    expect(figure(title).textContent).toContain('and does not beat Block in its 3 rounds.')
    expect((await tableOf(title))[0]).toEqual(['rounds', 'Bed', 'Block, single use'])
  })

  it.each([
    ['SWINGS', 'What moves MEDIUMCOST most'],
    ['ODDS', 'How likely each PERLINER is'],
  ])('shows the table of %s with the numbers of its example', async (id, title) => {
    hold(exampleCell(id, 0))
    await openCompare()
    const drawn = figure(title)
    expect(drawn.querySelectorAll('[role="img"] svg').length).toBeGreaterThan(0)
    expect((await tableOf(title)).slice(1)).toEqual(givenBy(id))
    expect(drawn.querySelector('[role="img"]')).toBeNull()
    await click([...drawn.querySelectorAll('button')].find(({ textContent }) => textContent === 'Show as a chart')!)
    expect(drawn.querySelector('[role="img"]')).not.toBeNull()
  })

  it('names every chart and describes it with its summary', async () => {
    hold(exampleCell('COMPARE', 0), exampleCell('SWINGS', 20), exampleCell('ODDS', 40))
    await openCompare()
    const images = [...element.querySelectorAll('[role="img"]')]
    expect(images).toHaveLength(4)
    const named = (image: Element, by: string) => document.getElementById(image.getAttribute(by)!)?.textContent ?? ''
    for (const image of images) {
      expect(named(image, 'aria-labelledby')).not.toBe('')
      expect(named(image, 'aria-describedby')).toMatch(/\.$/)
    }
  })

  it('lets one choose among several cells, and go to the one that is shown', async () => {
    hold(exampleCell('BREAKEVEN', 0), exampleCell('REUSELEDGER', 4))
    await openCompare()
    const select = element.querySelector('select')!
    expect([...select.options].map(({ text: option }) => option)).toEqual([
      'BREAKEVEN in A1 on Ways',
      'REUSELEDGER in A5 on Ways',
    ])
    expect(text()).toContain('costs no more than single use from round 9 on.')
    await act(async () => {
      select.value = '1'
      select.dispatchEvent(new Event('change', { bubbles: true }))
    })
    expect(text()).toContain('Used again goes from 2.4 over 1 round to 0.88 over 3.')
    await click(button('Go to the cell')!)
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Ways', address: 'A5' })
  })

  it('says why there is no chart where the cell shows an error', async () => {
    hold({
      row: 0,
      column: 0,
      formula: '=STICK.BREAKEVEN(1,2,3)',
      value: { kind: 'cellError', code: '#N/A' },
      calls: [{ id: 'BREAKEVEN', args: [0.1, 2.4, 0.12] }],
    })
    await openCompare()
    expect(element.querySelectorAll('figure')).toHaveLength(0)
    expect(text()).toContain('There is no chart of this cell. ')
  })

  it('calculates and reads again where the host has not seen the functions calculated', async () => {
    const cell = exampleCell('COMPARE', 0)
    hold({ ...cell, calls: undefined })
    await openCompare()
    expect(element.querySelectorAll('figure')).toHaveLength(0)
    hold(cell)
    await click(button('Calculate and read again')!)
    await until(() => element.querySelectorAll('figure').length === 2)
    expect(text()).not.toContain('have not been calculated')
  })

  it('puts a chart into the sheet where sheets hold charts, and says where', async () => {
    const put: SheetChart[] = []
    port.addChart = async (chart) => {
      put.push(chart)
    }
    hold(exampleCell('SWINGS', 2))
    await openCompare()
    await click(button('Put this chart into the sheet')!)
    expect(put.map(({ sheet, kind, along }) => ({ sheet, kind, along }))).toEqual([
      { sheet: 'Ways', kind: 'tornado', along: 'A4:A5' },
    ])
    expect(text()).toContain('The chart is on Ways, at C3 or below.')
  })

  it('says what to do where the sheet takes no chart', async () => {
    port.addChart = () => Promise.reject(new PortProblem('protectedSheet'))
    hold(exampleCell('SWINGS', 2))
    await openCompare()
    await click(button('Put this chart into the sheet')!)
    expect(text()).toContain('This sheet is protected')
  })

  it('tells which function gives Excel cells to draw from, where the chosen one gives none', async () => {
    port.addChart = async () => undefined
    hold(exampleCell('BREAKEVEN', 0))
    await openCompare()
    expect(button('Put this chart into the sheet')).toBeUndefined()
    expect(text()).toContain('put STICK.REUSELEDGER by itself into a cell')
  })

  it('has no such button where sheets hold no charts, and says so', async () => {
    hold(exampleCell('SWINGS', 2))
    await openCompare()
    expect(button('Put this chart into the sheet')).toBeUndefined()
    expect(text()).toContain('The sheets here hold no charts of their own')
  })

  it('says what to do where the workbook cannot be read', async () => {
    port.read = () => Promise.reject(new PortProblem('cellEditMode'))
    await openCompare()
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
  })
})
