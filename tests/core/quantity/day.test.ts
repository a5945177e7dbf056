import { describe, expect, it } from 'vitest'
import { dateOf, daySerial, dayText, serialOf } from '../../../src/core/quantity/day'

describe('A day as a number', () => {
  // "January 1, 2008 is serial number 39448": Microsoft, DATE function; "latest date allowed for calculation:
  // December 31, 9999": Microsoft, Excel specifications and limits. Both from memory.
  it.each([
    ['2008-01-01', 39_448],
    ['9999-12-31', 2_958_465],
    // By counting from there.
    ['2026-11-30', 46_356],
    ['1900-03-01', 61],
  ])('%s is %s, and back', (text, serial) => {
    expect(serialOf(text)).toBe(serial)
    expect(daySerial(text)).toBe(serial)
    expect(dayText(serial)).toBe(text)
  })

  it('keeps the hour of a moment, to the millisecond', () => {
    expect(serialOf(new Date('2008-01-01T12:00:00Z'))).toBe(39_448.5)
    expect(dateOf(39_448.5).toISOString()).toBe('2008-01-01T12:00:00.000Z')
    expect(dateOf(serialOf(new Date('2026-11-30T09:35:12.345Z'))).toISOString()).toBe('2026-11-30T09:35:12.345Z')
    expect(dayText(39_448.99)).toBe('2008-01-01')
  })

  it.each([
    '2008-1-1',
    '08-01-01',
    ' 2008-01-01',
    '2008-01-01 ',
    '2008-01-01T00',
    '12008-01-01',
    '2008-02-30',
    '2008-13-01',
    '',
    'x',
  ])('is not read from "%s"', (text) => expect(daySerial(text)).toBeUndefined())

  // 1 is the first day of the count; a cell that holds 0 shows no day of a calendar.
  it.each([0, 0.999, -1, 2_958_466, 1e9, Number.NaN, Number.POSITIVE_INFINITY])('has no text for %s', (serial) =>
    expect(dayText(serial)).toBeUndefined(),
  )

  it('has a text from the first day of the count on', () => {
    expect(dayText(1)).toBe('1899-12-31')
    expect(dayText(2_958_465.5)).toBe('9999-12-31')
  })
})
