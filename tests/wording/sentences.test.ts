/** What a sentence says of odd cells: it shows them as the cell does, and blames the argument that is to blame. */
import { expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { catalogue } from '../../src/functions/catalogue'

function sentenceOf(id: string, ...args: unknown[]): string {
  const outcome = call(
    catalogue.find((one) => one.id === id)!,
    args,
  )
  return outcome.kind === 'error' ? outcome.sentence : ''
}

test('a logical value where a name is taken is shown as its cell shows it', () => {
  expect(sentenceOf('SWINGS', true, 'weeks', 1, 2, 3)).toMatch(/^functionName takes text; it is TRUE\. /)
  expect(sentenceOf('LINERCOST', [[false], [1]], [[0.5], [0.5]])).toMatch(
    /^stageCosts, row 1, takes a number; it is FALSE\. /,
  )
  expect(sentenceOf('BUYPLAN', 100, [[false]], 60, 9)).toMatch(/^packNames, row 1, takes text; it is FALSE\. /)
})

test('a long text is cut between two signs, never within an emoji', () => {
  expect(sentenceOf('SWINGS', `${'x'.repeat(39)}🌱🌱`, 'weeks', 1, 2, 3)).toContain(`"${'x'.repeat(39)}🌱…"`)
  expect(sentenceOf('SWINGS', `${'x'.repeat(39)}🌱`, 'weeks', 1, 2, 3)).toContain(`"${'x'.repeat(39)}🌱", which`)
})

test('where cuttings cost nothing, the sentence asks for their cost first', () => {
  expect(sentenceOf('OVERSTICK', 100, 0.8, 0, 1.5)).toMatch(
    / Check costPerCutting, lower valuePerSurplusLiner, or take CUTTINGS\.$/,
  )
})

test.each([
  ['neededL', [1e15, 'A', 60, 9]],
  ['packLitres', [100, 'A', 1e15, 9]],
  ['orderMultiples', [100, 'A', 60, 9, null, null, null, 1e15]],
  ['packPrices', [100, 'A', 60, 1e15]],
])('a purchase beyond exact sums is blamed on %s where that is too large', (name, args) => {
  expect(sentenceOf('BUYPLAN', ...args)).toMatch(new RegExp(`^${name} has so many digits, or is so large,`))
})
