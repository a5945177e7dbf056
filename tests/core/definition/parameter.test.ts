import { expect, test } from 'vitest'
import {
  money,
  number,
  numbers,
  quantities,
  quantity,
  share,
  shares,
  signedNumbers,
  text,
  texts,
} from '../../../src/core/definition/parameter'

test('each kind of parameter says what it takes, its shape, unit and limits', () => {
  const [cell, line] = [
    { takes: 'number', shape: 'cell', optional: false },
    { takes: 'number', shape: 'line', optional: false },
  ]
  expect(number('days', { text: 'x' })).toStrictEqual({ ...cell, text: 'x', unit: 'days' })
  expect(money('money', { text: 'x' })).toStrictEqual({ ...cell, text: 'x', unit: 'money', atLeast: 0 })
  expect(quantity('mL', { text: 'x', above: 0 })).toStrictEqual({
    ...cell,
    text: 'x',
    unit: 'mL',
    dimension: 'volume',
    above: 0,
  })
  expect(share({ text: 'x', below: 1 })).toStrictEqual({
    ...cell,
    text: 'x',
    unit: 'share',
    share: true,
    atLeast: 0,
    below: 1,
  })
  expect(numbers('days', { text: 'x' })).toStrictEqual({ ...line, text: 'x', unit: 'days', atLeast: 0 })
  expect(signedNumbers('days', { text: 'x' })).toStrictEqual({ ...line, text: 'x', unit: 'days' })
  expect(quantities('kg', { text: 'x' })).toStrictEqual({ ...line, text: 'x', unit: 'kg', dimension: 'mass' })
  expect(shares({ text: 'x' })).toStrictEqual({ ...line, text: 'x', unit: 'share', share: true, atLeast: 0 })
  expect(text({ text: 'x' })).toStrictEqual({ takes: 'text', shape: 'cell', text: 'x', unit: 'text', optional: false })
  expect(texts({ text: 'x' })).toStrictEqual({ takes: 'text', shape: 'line', text: 'x', unit: 'text', optional: false })
})

test('a default or the word optional makes a parameter one that may be left out', () => {
  expect(number('days', { text: 'x', default: 0 })).toStrictEqual({
    takes: 'number',
    shape: 'cell',
    text: 'x',
    unit: 'days',
    optional: true,
    default: 0,
  })
  expect(number('days', { text: 'x', default: { sameAs: 'y' } })).toMatchObject({
    optional: true,
    default: { sameAs: 'y' },
  })
  expect(number('days', { text: 'x', optional: true })).toStrictEqual({
    takes: 'number',
    shape: 'cell',
    text: 'x',
    unit: 'days',
    optional: true,
  })
})

test('the narrower of two limits on one side is kept alone, and all others are kept', () => {
  expect(money('money', { text: 'x', above: 0 })).not.toHaveProperty('atLeast')
  expect(number('days', { text: 'x', atMost: 2, below: 1 })).not.toHaveProperty('atMost')
  expect(
    number('days', { text: 'x', atLeast: 1, atMost: 9, whole: true, notAllZero: true, oneForAll: true }),
  ).toMatchObject({ atLeast: 1, atMost: 9, whole: true, notAllZero: true, oneForAll: true })
})
