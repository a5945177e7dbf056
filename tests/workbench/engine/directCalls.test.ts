import fc from 'fast-check'
import { expect, test } from 'vitest'
import { callDirectly } from '../../../src/workbench/engine/directCalls'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book, Cell } from '../../../src/workbook/book'
import type { OpenCell } from '../../../src/workbook/openBook'

type Content = string | number | boolean | null

function bookOf(rows: readonly (readonly Content[])[]): Book {
  const cell = (content: Content): Cell | undefined => {
    if (content === null) return undefined
    return typeof content === 'string' && content.startsWith('=') ? { formula: content } : { value: content }
  }
  const sheet = { name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows: rows.map((row) => row.map(cell)) }
  return { names: [], sheets: [sheet] }
}

/** How many formulas are left to the engine. */
function leftIn(book: Book): number {
  return callDirectly(book)
    .book.sheets.flatMap(({ rows }) => rows.flat())
    .filter((cell) => cell?.formula !== undefined).length
}

async function cellsOf(book: Book): Promise<ReadonlyMap<string, OpenCell>> {
  return (await calculateBook(book)).sheets[0]!.cells
}

const content = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 1, max: 400 }) },
  { weight: 2, arbitrary: fc.double({ min: 0.1, max: 0.99, noNaN: true }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Content>(null, '', 'x', '60', '60 L', '#N/A', true, false, -5, 0, '=B2', '=A2:B3'),
  },
)

const argument = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom('A1', 'B1', '$A$2', 'B$2', 'C3', 'A3') },
  { weight: 2, arbitrary: fc.constantFrom('60', '0.85', '12', '0.05') },
  {
    weight: 1,
    arbitrary: fc.constantFrom('', ' A1 ', 'A1:B2', 'A1:A3', 'D1', 'A:A', '"2 L"', 'TRUE', '-1', '1E2', 'A1+1'),
  },
)

const anyCall = fc
  .tuple(
    fc.constantFrom('CUTTINGS', 'BAGS', 'TRAYS', 'FILL', 'PERLINER', 'BATCHSPREAD'),
    fc.array(argument, { minLength: 1, maxLength: 5 }),
  )
  .map(([id, args]) => `=STICK.${id}(${args.join(',')})`)

const likelyCall = fc
  .tuple(
    fc.constantFrom('CUTTINGS(@,0.85)', 'BAGS(@,60)', 'BAGS(120,60,@)', 'FILL(@,1.5,0.1,0.03)', 'PACKPRICE(@,60)'),
    argument,
  )
  .map(([call, cell]) => `=STICK.${call.replace('@', cell)}`)

const formula = fc.oneof(anyCall, likelyCall)

test('What is called without the engine is called with the same arguments, and has the same result, as in it.', async () => {
  // The engine takes names of functions in small letters too, which are not called without it.
  const asEngine = (text: string) => text.replace('STICK.', 'stick.')
  let direct = 0
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(content, content, content), { minLength: 3, maxLength: 3 }),
      fc.array(formula, { minLength: 8, maxLength: 8 }),
      async (typed, formulas) => {
        const column = (spelled: (text: string) => string) =>
          bookOf([
            ...typed,
            ...formulas.map((text, index) => [
              null,
              null,
              null,
              spelled(text),
              spelled(`=STICK.BAGS(D${index + 4},60)`),
            ]),
          ])
        direct += 16 - leftIn(column((text) => text))
        const seen = await cellsOf(column((text) => text))
        const expected = await cellsOf(column(asEngine))
        expect([...seen.keys()]).toEqual([...expected.keys()])
        for (const [address, cell] of expected)
          expect({ address, ...seen.get(address), formula: '' }).toEqual({ address, ...cell, formula: '' })
      },
    ),
    { numRuns: 60 },
  )
  // So many that the comparison tells something.
  expect(direct).toBeGreaterThan(100)
})

test('A call that reads a cell which another formula fills waits for the engine.', async () => {
  // 62 of 120 litres are on hand, so 58 are short: one bag of 60. Were the cell blank, it would be two.
  const book = bookOf([['={60,61,62}'], ['=STICK.BAGS(120,60,C1)', null, '=STICK.BAGS(60,60)']])
  expect(leftIn(book)).toBe(2)
  const cells = await cellsOf(book)
  expect(cells.get('A2')?.value).toBe(1)
  expect(cells.get('C2')?.value).toBe(1)
})

test('Calls over the results of calls above and below them need no engine.', async () => {
  const down = bookOf([[100], ...Array.from({ length: 500 }, (_, index) => [`=STICK.BAGS(A${index + 1},1)`])])
  expect(leftIn(down)).toBe(0)
  expect((await cellsOf(down)).get('A501')?.value).toBe(100)
  const up = bookOf([...Array.from({ length: 500 }, (_, index) => [`=STICK.BAGS(A${index + 2},1)`]), [100]])
  expect(leftIn(up)).toBe(0)
  expect((await cellsOf(up)).get('A1')?.value).toBe(100)
})
