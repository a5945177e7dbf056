/**
 * Excel hands a blank cell over as null, as an empty text or, in some builds on the desktop, as 0 (issues 1951, 4702 and
 * 5262 of office-js). A cell differs only where a call gives something else, so each call of a season is made again.
 */
import { expect, test } from 'vitest'
import { isCellError } from '../../../src/core/definition/problem'
import { call } from '../../../src/derived/call'
import { catalogue } from '../../../src/functions/catalogue'
import type { Book } from '../../../src/workbook/book'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { emptySeason } from '../../../src/workbook/season/emptySeason'

/** What was left out stays null: only cells come as rows. */
function withBlanksAs(blank: unknown, argument: unknown): unknown {
  if (!Array.isArray(argument)) return argument
  return (argument as unknown[][]).map((row) => row.map((cell) => (cell === null ? blank : cell)))
}

test.each<[name: string, book: () => Book, least: number]>([
  ['demo', demoSeason, 240],
  // Its rows wait to be typed, so nothing is called but in branches that are not taken.
  ['empty', () => emptySeason('EUR'), 0],
])(
  'No cell of the %s season differs where blank cells are handed over as null, as an empty text or as 0.',
  async (_, bookOf, least) => {
    const { sheets } = await calculateBook(bookOf())
    const cells = sheets.flatMap(({ name, cells }) =>
      [...cells].map(([address, cell]) => ({ place: `${name}!${address}`, ...cell })),
    )
    expect(cells.filter(({ value }) => isCellError(value))).toEqual([])
    // The grid also calculates the branch of an IF that is not taken. What is refused there no cell shows.
    const given = cells.flatMap(({ place, calls = [] }) =>
      calls.flatMap(({ id, args }) => {
        const definition = catalogue.find((one) => one.id === id)!
        const outcome = call(definition, args)
        return outcome.kind === 'value' ? [{ place, definition, args, outcome }] : []
      }),
    )
    const different = given.flatMap(({ place, definition, args, outcome }) =>
      [null, '', 0].flatMap((blank) => {
        const again = call(
          definition,
          args.map((argument) => withBlanksAs(blank, argument)),
        )
        return JSON.stringify(again) === JSON.stringify(outcome) ? [] : [{ place, id: definition.id, blank, again }]
      }),
    )
    expect(different).toEqual([])
    expect(given.length).toBeGreaterThanOrEqual(least)
  },
)
