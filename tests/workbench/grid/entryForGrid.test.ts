import { expect, test } from 'vitest'
import { entryForGrid } from '../../../src/workbench/grid/entryForGrid'

test.each([
  ['1,5', '1.5'],
  ['1.234,5', '1234.5'],
  ['2,200', '2.200'],
  ['15,5 %', '15.5 %'],
  ['1,5e3', '1.5e3'],
  ['3.5.2026', '2026-5-3'],
  ['3.5.26', '2026-5-3'],
  ['3.5.86', '1986-5-3'],
  ['Beet 1,5', 'Beet 1,5'],
  ['=SUM(1,5)', '=SUM(1,5)'],
])('with the comma for the decimal mark, %s is handed to the grid as %s', (entry, expected) => {
  expect(entryForGrid(entry, ',')).toBe(expected)
})

test.each([
  '2,200',
  '1,234,567.5',
  '$12,500',
  '-1,000',
  '12,500 %',
  '1.5',
  '3/4',
  'peat, perlite',
  'May 5, 2026',
  '=(1,5)',
])('with the point for the decimal mark, the grid reads %s itself', (entry) => {
  expect(entryForGrid(entry, '.')).toBe(entry)
})

test.each(['1,5', '15,5%', '0,500', '1,5e3', '1,2345', '-0,5 %', '$1,5', ',5', '5,'])(
  'with the point for the decimal mark, %s stays a text, because its comma parts no thousands',
  (entry) => {
    expect(entryForGrid(entry, '.')).toBeUndefined()
  },
)
