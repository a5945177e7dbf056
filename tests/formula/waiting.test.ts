import { expect, test } from 'vitest'
import { waitedFor } from '../../src/formula/waiting'

test.each([
  ['=B9+C9', '=IF($A9="ready", B9+C9, "")'],
  ['=B9+C9', '=IF(LEN(B9)=0,"",B9+C9)'],
  ['=STICK.BAGS(B9,{60,70})', '=IF(A1="ready",IF(OR(B1>0,B2=0),"Doubts are not complete",STICK.BAGS(B9,{60,70})),"")'],
])('What is waited for is %s in %s.', (expected, formula) => {
  expect(waitedFor(formula)).toBe(expected)
})

test.each(['=B9+C9', '=IF(A1>0,B9,C9)', '=IF(A1>0,B9,"")+1', '=IF(A1>0,B9)', ''])(
  '%s waits for nothing.',
  (formula) => {
    expect(waitedFor(formula)).toBe(formula)
  },
)
