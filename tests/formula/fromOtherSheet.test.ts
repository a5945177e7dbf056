import { expect, test } from 'vitest'
import { fromOtherSheet } from '../../src/formula/fromOtherSheet'

test.each([
  ['=Orders!A1+SUM(Orders!B$2:B9)*Rate', '=A1+SUM(B$2:B9)*Rate', 'Orders'],
  ['=\'Order book\'!A1&"A1"&Prices!B2', '=A1&"A1"&Prices!B2', 'Order book'],
  ["=SUM('Q1'!B:B)", '=SUM(B:B)', 'Q1'],
  ['=Orders!A1:INDEX(Orders!B1:B9,2)', '=A1:INDEX(B1:B9,2)', 'Orders'],
  ['=SUM(Orders!A1#)', '=SUM(A1#)', 'Orders'],
])('%s is, seen from another sheet, what %s is on the sheet %3$s.', (expected, formula, sheet) => {
  expect(fromOtherSheet(formula, sheet)).toBe(expected)
})

test('A name can be replaced by the cell that it stands for.', () => {
  expect(fromOtherSheet('=ROUND(plan,0)>=A1', 'Orders', new Map([['plan', 'Orders!B4']]))).toBe(
    '=ROUND(Orders!B4,0)>=Orders!A1',
  )
})
