import { expect, test } from 'vitest'
import { holds, rangesRead } from '../../src/formula/rangesRead'

const names = new Map([
  ['orderliners', "'Order book'!$B$4:$B$9"],
  ['half', '0.5'],
])

test('A formula reads its cells, ranges, names, and whole columns, each on its own sheet.', () => {
  expect(rangesRead("=SUM($B2:C3,OrderLiners)+'Six ways'!A1+SUM(D:D)+SUM(2:3)", 'Ways', names)).toEqual([
    { sheet: 'Ways', top: 1, left: 1, bottom: 2, right: 2 },
    { sheet: 'Order book', top: 3, left: 1, bottom: 8, right: 1 },
    { sheet: 'Six ways', top: 0, left: 0, bottom: 0, right: 0 },
    { sheet: 'Ways', top: 0, left: 3, bottom: Infinity, right: 3 },
    { sheet: 'Ways', top: 1, left: 0, bottom: 2, right: Infinity },
  ])
})

test('Texts, names that stand for a number, unknown names and other workbooks are no cells that a formula reads.', () => {
  expect(rangesRead('="A1"&Half&Unknown&[1]Prices!A1', 'Ways', names)).toEqual([])
})

test('A range holds the cells between its corners, on its sheet in any spelling of the name, and no others.', () => {
  const [range] = rangesRead('=B2:C3', 'Ways', names)
  const inside = [
    [1, 1],
    [2, 2],
    [1, 2],
  ].map(([row, column]) => holds(range!, 'WAYS', row!, column!))
  const outside = [
    [0, 1],
    [3, 1],
    [1, 0],
    [1, 3],
  ].map(([row, column]) => holds(range!, 'Ways', row!, column!))
  expect([...inside, ...outside, holds(range!, 'Orders', 1, 1)]).toEqual([
    true,
    true,
    true,
    false,
    false,
    false,
    false,
    false,
  ])
})
