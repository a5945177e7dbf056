// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { followEdits } from '../../../src/start/workbench/followEdits'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
  vi.restoreAllMocks()
})

/** A grid that is edited by the test, and what was heard of it. */
function followed() {
  let edit = (): void => undefined
  const onEdit = vi.fn()
  const keep = vi.fn()
  const grid = {
    onEdit(listener: () => void) {
      edit = listener
      return () => {
        edit = () => undefined
      }
    },
  }
  const stop = followEdits(grid, { onEdit, keep })
  return { edit: () => edit(), onEdit, keep, stop }
}

function hide(): void {
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden')
  document.dispatchEvent(new Event('visibilitychange'))
}

test('An edit is told at once and kept three seconds later, however many follow it meanwhile.', () => {
  const { edit, onEdit, keep, stop } = followed()
  for (let time = 0; time < 6; time += 1) {
    edit()
    vi.advanceTimersByTime(499)
  }
  expect(onEdit).toHaveBeenCalledTimes(6)
  expect(keep).toHaveBeenCalledTimes(0)
  vi.advanceTimersByTime(6)
  expect(keep).toHaveBeenCalledTimes(1)
  vi.advanceTimersByTime(60_000)
  expect(keep).toHaveBeenCalledTimes(1)
  edit()
  vi.advanceTimersByTime(3000)
  expect(keep).toHaveBeenCalledTimes(2)
  stop()
})

test('A page that is hidden keeps at once, and does not keep the same edit again.', () => {
  const { edit, keep, stop } = followed()
  edit()
  hide()
  expect(keep).toHaveBeenCalledTimes(1)
  vi.advanceTimersByTime(60_000)
  expect(keep).toHaveBeenCalledTimes(1)
  stop()
})

test('Nothing is kept any more once the page no longer follows.', () => {
  const { edit, onEdit, keep, stop } = followed()
  edit()
  stop()
  edit()
  hide()
  vi.advanceTimersByTime(60_000)
  expect([onEdit.mock.calls.length, keep.mock.calls.length]).toEqual([1, 0])
})
