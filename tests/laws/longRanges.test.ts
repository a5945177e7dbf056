/** A cell that computes for minutes freezes the spreadsheet: whole columns are computed soon, or refused by a sentence. */
import { describe, expect, test } from 'vitest'
import type { ExampleArgument } from '../../src/core/definition/definition'
import { call } from '../../src/derived/call'
import { catalogue } from '../../src/functions/catalogue'

const rows = 10_000
/** Far more than is needed on a busy machine, and far less than what froze: 40 seconds and more. */
const mostSeconds = 15

/** The cells of the example over and over, each number a little larger than the one before, so that none stands twice. */
function lengthened(argument: readonly (number | string)[]): unknown[][] {
  return Array.from({ length: rows }, (_, row) => {
    const cell = argument[row % argument.length]
    const isWhole = Number.isInteger(cell)
    return [typeof cell !== 'number' ? cell : cell === 1 ? 1 : isWhole ? cell + row : cell * (1 - row / 1e9)]
  })
}

describe.each(
  catalogue
    .filter(({ parameters }) => Object.values(parameters).some(({ shape }) => shape === 'line'))
    .map((definition) => [definition.id, definition] as const),
)('STICK.%s', (_, definition) => {
  test(`answers or refuses ranges of ${rows} rows within ${mostSeconds} seconds`, () => {
    for (const { given } of definition.examples) {
      const args = given.map((argument: ExampleArgument) =>
        Array.isArray(argument) ? lengthened(argument as readonly (number | string)[]) : argument,
      )
      const start = performance.now()
      const outcome = call(definition, args)
      expect((performance.now() - start) / 1000).toBeLessThan(mostSeconds)
      if (outcome.kind === 'error') expect(outcome.sentence).not.toMatch(/fault of its own/)
    }
  })
})

test.each([
  [
    'BUYPLAN',
    'packNames',
    100,
    (n: number) => [195, column(n, (row) => `pack ${row}`), column(n, () => 60), column(n, () => 9)],
  ],
  ['QUOTE', 'quantities', 200, (n: number) => [0.4, column(n, (row) => row + 1), column(n, () => 0.3)]],
  ['ONTRACK', 'growing', 1000, (n: number) => [195, column(n, () => 1), 0.5]],
  [
    'COMPARE',
    'names',
    1000,
    (n: number) => [
      column(n, (row) => `way ${row}`),
      column(n, () => 8),
      column(n, () => 1),
      column(n, () => 100),
      column(n, () => 0.8),
    ],
  ],
  [
    'SWINGS',
    'argumentNames',
    50,
    (n: number) => [
      'PERLINER',
      column(n, (row) => (row === 0 ? 'costPerCutting' : 'stageRates')),
      column(n, () => 0.9),
      column(n, () => 0.95),
      column(n, () => 1),
    ],
  ],
  [
    'ODDS',
    'argumentNames',
    50,
    (n: number) => [
      'PERLINER',
      column(n, (row) => (row === 0 ? 'costPerCutting' : 'stageRates')),
      column(n, () => 0.9),
      column(n, () => 0.95),
      column(n, () => 1),
      100,
    ],
  ],
] as const)('%s takes as many rows of %s as it says, %d, and no more', (id, name, most, argumentsOf) => {
  const definition = catalogue.find((one) => one.id === id)!
  expect(call(definition, argumentsOf(most))).toHaveProperty('kind', 'value')
  expect(call(definition, argumentsOf(most + 1))).toEqual({
    kind: 'error',
    code: '#VALUE!',
    sentence: `${name} has ${most + 1} rows; it takes at most ${most}. Point it at a shorter range.`,
  })
})

function column<T>(length: number, cell: (row: number) => T): T[][] {
  return Array.from({ length }, (_, row) => [cell(row)])
}
