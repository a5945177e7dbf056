import { expect, test } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { callsOfFormula } from '../../src/pane/callsOfFormula'

const shown = (formula: string, ...calls: readonly (readonly [id: string, first: number])[]) =>
  callsOfFormula(
    formula,
    calls.map(([id, first]) => ({ id, args: [first] })),
    catalogue,
  ).map(({ definition, args }) => [definition.id, args[0]])

test('Of a function that the formula calls once, only the last call counts.', () => {
  expect(shown('=STICK.BAGS(A1,60)', ['BAGS', 1], ['BAGS', 2])).toEqual([['BAGS', 2]])
})

test('Calls within calls stand in the order in which they were made, older calculations left out.', () => {
  expect(shown('=STICK.BAGS(STICK.FILL(A1,65),60)', ['FILL', 1], ['BAGS', 2], ['FILL', 3], ['BAGS', 4])).toEqual([
    ['FILL', 3],
    ['BAGS', 4],
  ])
})

test('A function that the formula calls twice is shown twice, in any letters.', () => {
  expect(shown('=stick.bags(A1,60)+STICK.BAGS (A2,60)', ['BAGS', 1], ['BAGS', 2], ['BAGS', 3])).toEqual([
    ['BAGS', 2],
    ['BAGS', 3],
  ])
})

test('A call that the formula only names in a text, or no longer has, is not shown.', () => {
  expect(shown('=STICK.FILL(A1,65)&"STICK.BAGS("', ['BAGS', 1], ['FILL', 2])).toEqual([['FILL', 2]])
})
