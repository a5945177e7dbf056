// @vitest-environment jsdom
/** How often the pane asks Excel: on the web each message goes to a server and back. */
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import { ExcelHost } from '../contract/ExcelHost'
import { untilFetched } from './untilFetched'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

let host: ExcelHost
let log: CallLog
let element: HTMLElement
let pane: MountedPane

beforeEach(async () => {
  host = new ExcelHost('Orders', 'Prices')
  Object.assign(globalThis, host.start())
  for (const [address, content] of Object.entries({ A1: 'Litres', A2: 650, A3: 700 })) host.type(address, content)
  host.select('A1', 'Prices')
  for (const [address, content] of Object.entries({ A1: 'Bag', A2: 60, A3: 70 })) host.type(address, content)
  host.select('C2', 'Orders')
  host.type('C2', '=STICK.BAGS(Orders!A2,Prices!A2)+SUM(Prices!A2:A3)', 141)
  log = new CallLog()
  log.made('Orders!C2', { id: 'BAGS', args: [650, 60] })
  element = document.body.appendChild(document.createElement('main'))
  await act(async () => {
    pane = mountPane(element, excelPort(log))
  })
  await untilFetched(element)
})

afterEach(async () => {
  act(() => pane.unmount())
  element.remove()
  await untilFetched(element)
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

async function click(found: HTMLElement | null | undefined): Promise<void> {
  if (!found) throw new Error('nothing to click')
  await act(async () => found.click())
  await untilFetched(element)
}

const tab = (name: string) =>
  [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find(({ textContent }) => textContent?.startsWith(name))

async function messagesFor(doing: () => void | Promise<void>): Promise<number> {
  const before = host.messages.length
  await act(async () => doing())
  await untilFetched(element)
  return host.messages.length - before
}

describe('Excel is asked', () => {
  it('five times at most when a cell is selected whose formula reads two sheets, and its working is shown', async () => {
    await click(tab('Calculation'))
    host.select('B9')
    await untilFetched(element)
    const messages = await messagesFor(() => host.select('C2'))
    expect(element.textContent).toContain('STICK.BAGS(Orders!A2,Prices!A2)')
    expect(element.textContent).toContain('Bag')
    // The cell, its calls with the names, and of the cells that are read their place, contents and spills.
    expect(messages).toBeLessThanOrEqual(5)
  })

  it('as often for ten cells that are passed with an arrow key held down as for two', async () => {
    const cells = ['B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'B7', 'B8', 'B9', 'C2']
    const messages = await messagesFor(() => cells.forEach((address) => host.select(address)))
    expect(messages).toBeLessThanOrEqual(5)
    expect(element.textContent).toContain('C2')
  })

  it('for nothing but what the form reads at each key that is typed into it', async () => {
    // The form of the function that the selected cell uses is open already.
    const [first, second] = element.querySelectorAll<HTMLInputElement>('[data-function="BAGS"] input')
    const type = async (input: HTMLInputElement | undefined, text: string) => {
      const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!
      return messagesFor(() => {
        setValue.call(input, text)
        input!.dispatchEvent(new Event('input', { bubbles: true }))
      })
    }
    expect(await type(first, '6')).toBe(0)
    expect(await type(first, 'A2')).toBe(1)
    // Both cells go in one message.
    expect(await type(second, 'Prices!A2')).toBe(1)
    expect(await messagesFor(() => host.select('B9'))).toBeLessThanOrEqual(5)
    expect(host.listeners()).toBe(5)
  })
})
