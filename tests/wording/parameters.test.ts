import { describe, expect, it } from 'vitest'
import { defineByMethod } from '../../src/core/definition/definition'
import { money, number, numbers, quantities, quantity, share, shares, text } from '../../src/core/definition/parameter'
import { signature } from '../../src/derived/signature'
import { defaultText, rangeText, takesText } from '../../src/wording/en/parameters'

describe('the text of a parameter', () => {
  const ranges = [
    ['0 to below 1', share({ text: 'a', below: 1 })],
    ['above 0 to 1', share({ text: 'a', above: 0, atMost: 1 })],
    ['above 0 and below 1', share({ text: 'a', above: 0, below: 1 })],
    ['above 0', quantity('mL', { text: 'a', above: 0 })],
    ['from 0', number('days', { text: 'a', atLeast: 0 })],
    ['at most 5', number('days', { text: 'a', atMost: 5 })],
    ['below 5', number('days', { text: 'a', below: 5 })],
    ['1 to 10,000', number('draws', { text: 'a', atLeast: 1, atMost: 10_000 })],
    ['any number', number('days', { text: 'a' })],
    ['whole number', number('days', { text: 'a', whole: true })],
    ['whole number from 1', number('rounds', { text: 'a', atLeast: 1, whole: true })],
    ['whole number above 0', number('rounds', { text: 'a', above: 0, whole: true })],
    ['whole number from 1 to 200', number('rounds', { text: 'a', atLeast: 1, atMost: 200, whole: true })],
    ['each a whole number from 1', numbers('rounds', { text: 'a', atLeast: 1, whole: true })],
    ['each from 0, not all 0', numbers('parts', { text: 'a', notAllZero: true })],
    ['each above 0 to 1', shares({ text: 'a', above: 0, atMost: 1 })],
    ['date from 1 March 1900', number('day', { text: 'a', atLeast: 61 })],
    ['each a date from 1 March 1900', numbers('day', { text: 'a', atLeast: 61 })],
    ['text', text({ text: 'a' })],
  ] as const
  it.each(ranges)('says "%s" for the range of such a parameter', (expected, parameter) => {
    expect(rangeText(parameter)).toBe(expected)
  })

  it('names the default, the argument that it is taken from, or nothing', () => {
    expect(defaultText(share({ text: 'a', default: 0.05, below: 1 }))).toBe('0.05')
    expect(defaultText(quantity('mm', { text: 'a', default: { sameAs: 'topLengthMm' }, above: 0 }))).toBe(
      'the same as topLengthMm',
    )
    expect(defaultText(share({ text: 'a', optional: true }))).toBeUndefined()
    expect(defaultText(share({ text: 'a' }))).toBeUndefined()
  })

  it('puts shape, unit, range and omission on one line', () => {
    expect(takesText(money('money per L', { text: 'a' }))).toBe('money per L, from 0')
    expect(takesText(quantities('L', { text: 'a', above: 0 }))).toBe(
      'a row or column, L or text with its unit, each above 0',
    )
    expect(takesText(share({ text: 'a', default: 0, below: 1 }))).toBe(
      'share (0.15 or 15%), 0 to below 1; left out, it is 0',
    )
    expect(takesText(share({ text: 'a', above: 0, below: 1, optional: true }))).toBe(
      'share (0.15 or 15%), above 0 and below 1; may be left out',
    )
    expect(takesText(text({ text: 'a' }))).toBe('text')
    expect(takesText(number('any', { text: 'a' }))).toBe('any number')
  })
})

describe('the signature of a function', () => {
  it('sets what may be left out in brackets', () => {
    const definition = defineByMethod({
      id: 'SAMPLE',
      subject: 'volume',
      parameters: {
        litres: quantity('L', { text: 'a' }),
        spill: share({ text: 'a', default: 0 }),
        batch: share({ text: 'a', optional: true }),
      },
      result: { name: 'litres', unit: 'L' },
      method: ({ litres }) => ({ value: litres, working: () => [] }),
    })
    expect(signature(definition)).toBe('STICK.SAMPLE(litres, [spill], [batch])')
  })
})
