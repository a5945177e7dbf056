import { expect, test } from 'vitest'
import { absoluteAddress, blockAddress } from '../../src/formula/address'
import { quotedSheet } from '../../src/formula/reference'

test.each([
  ['B4', { top: 3, left: 1, bottom: 3, right: 1 }],
  ['B4:C9', { top: 3, left: 1, bottom: 8, right: 2 }],
  ['B:C', { top: 0, left: 1, bottom: Infinity, right: 2 }],
  ['4:9', { top: 3, left: 0, bottom: 8, right: Infinity }],
])('A block of cells has the address %s.', (expected, block) => {
  expect(blockAddress(block)).toBe(expected)
})

test.each([
  ['$B$4', { top: 3, left: 1, bottom: 3, right: 1 }],
  ['$B$4:$C$9', { top: 3, left: 1, bottom: 8, right: 2 }],
])('A block of cells that is not to move with a copied formula has the address %s.', (expected, block) => {
  expect(absoluteAddress(block)).toBe(expected)
})

test.each([
  ['Orders', 'Orders'],
  ["'Order book'", 'Order book'],
  ["'Dan''s'", "Dan's"],
  ["'2027'", '2027'],
  // Without quotes these would be cells.
  ["'Q1'", 'Q1'],
  ["'R1C1'", 'R1C1'],
  ["'C'", 'C'],
])('A formula writes %s for the sheet called %s.', (expected, sheet) => {
  expect(quotedSheet(sheet)).toBe(expected)
})
