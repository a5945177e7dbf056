// @vitest-environment jsdom
import { act, createElement } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { useEarlyKeys } from '../../../src/start/workbench/useEarlyKeys'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

let root: Root
let wasEarly: boolean

beforeEach(() => {
  root = createRoot(document.body.appendChild(document.createElement('main')))
})

afterEach(() => {
  act(() => root.unmount())
  document.body.replaceChildren()
})

function Page({ isReady }: { readonly isReady: boolean }) {
  wasEarly = useEarlyKeys(isReady, (target) => target === document.body)
  return null
}

const show = (isReady: boolean) => act(async () => root.render(createElement(Page, { isReady })))

/** Whether the key gets to the sheet, some milliseconds after now. */
function gets(key: string, after: number, target: Element = document.body): boolean {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })
  Object.defineProperty(event, 'timeStamp', { value: performance.now() + after })
  act(() => {
    target.dispatchEvent(event)
  })
  return !event.defaultPrevented
}

it('Of 1,50 that is begun before the sheet is ready nothing gets there, and what is typed after a pause does.', async () => {
  await show(false)
  expect([gets('1', 0), gets(',', 100)]).toEqual([false, false])
  expect(wasEarly).toBe(true)
  await show(true)
  expect([gets('5', 200), gets('0', 300), gets('Enter', 400)]).toEqual([false, false, false])
  expect(wasEarly).toBe(true)
  expect(gets('2', 2000)).toBe(true)
  expect(wasEarly).toBe(false)
})

it('A sheet that is ready gets the first key.', async () => {
  await show(false)
  await show(true)
  expect(gets('1', 0)).toBe(true)
  expect(wasEarly).toBe(false)
})

it('F6 and Tab move on before the sheet is ready, and what is typed elsewhere gets there.', async () => {
  const box = document.body.appendChild(document.createElement('input'))
  await show(false)
  expect([gets('F6', 0), gets('Tab', 0), gets('1', 0, box)]).toEqual([true, true, true])
  expect(wasEarly).toBe(false)
})
