import { expect, test } from 'vitest'
import { readNumberText } from '../../../src/core/definition/readNumber'

const read = (text: string) => {
  const found = readNumberText(text)
  return found === undefined || 'unclear' in found ? found : [found.value.toString(), found.rest]
}

test('a number and what stands behind it are parted, whatever blanks lie between and around', () => {
  expect(['65', ' 65 mL ', '-1.5L', '+.5', '3.8  cu ft', '15 %', '2.', '1e3 L', '1E-2', '5 e'].map(read)).toEqual([
    ['65', ''],
    ['65', 'mL'],
    ['-1.5', 'L'],
    ['0.5', ''],
    ['3.8', 'cu ft'],
    ['15', '%'],
    ['2', ''],
    ['1000', 'L'],
    ['0.01', ''],
    ['5', 'e'],
  ])
})

test('a comma is a decimal comma, but before exactly three digits it may part thousands', () => {
  expect(['0,15', '1,5', '0,125', '1,2345', '1234,567'].map(read)).toEqual([
    ['0.15', ''],
    ['1.5', ''],
    ['0.125', ''],
    ['1.2345', ''],
    ['1234.567', ''],
  ])
  for (const unclear of ['1,500', '15,000 L', '150,000', ' 999,999'])
    expect(read(unclear), unclear).toEqual({ unclear: 'unclearComma' })
})

test('several marks, fractions and other digits are told apart from what is no number', () => {
  for (const several of [' 1.500.000', '1,500.25 L']) expect(read(several)).toEqual({ unclear: 'severalMarks' })
  for (const fraction of [' 1/2', '½ L']) expect(read(fraction)).toEqual({ unclear: 'notPlainDigits' })
  for (const none of ['', 'plenty', '-', '5 -', 'L 5']) expect(read(none), none).toBeUndefined()
})
