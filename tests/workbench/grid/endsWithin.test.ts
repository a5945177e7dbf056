import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { endsWithin } from '../../../src/workbench/grid/endsWithin'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

it('What ends in time, what fails and what never ends are told apart, and no timer is left.', async () => {
  expect(await endsWithin(100, Promise.resolve())).toBe(true)
  expect(await endsWithin(100, Promise.reject(new Error('broken')))).toBe(false)
  expect(vi.getTimerCount()).toBe(0)
  const late = endsWithin(100, new Promise(() => undefined))
  await vi.advanceTimersByTimeAsync(99)
  expect(vi.getTimerCount()).toBe(1)
  await vi.advanceTimersByTimeAsync(1)
  expect(await late).toBe(false)
})
