import { expect, test } from 'vitest'
import type { Allowed, CellContent } from '../../src/workbook/book'
import { isAllowed } from '../../src/workbook/isAllowed'

const share: Allowed = { from: 0, to: 1, sentence: 'Type a share.' }
const count: Allowed = { from: 0, whole: true, sentence: 'Type a count.' }
const way: Allowed = { list: 'WayName', sentence: 'Type a way.' }

test.each<[boolean, CellContent, Allowed]>([
  [true, 0, share],
  [true, 1, share],
  [false, 1.01, share],
  [false, -0.1, share],
  [false, '0.5', share],
  [false, true, share],
  [true, 12_000, count],
  [false, 1.5, count],
  [true, 'Water', way],
  [true, ' water', way],
  [false, 'Sand', way],
])('It is %s that %s may be typed where %o is the rule.', (expected, typed, allowed) => {
  expect(isAllowed(allowed, typed, ['Water', 'Premix'])).toBe(expected)
})
