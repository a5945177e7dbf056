import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import { call } from '../../src/derived/call'
import type { CallLog } from '../../src/excel/callLog'
import { catalogue } from '../../src/functions/catalogue'
import { CallingHost, type AnswerToCell, type CallFromCell } from './CallingHost'
import { dist } from './loadBundle'

let host: CallingHost
beforeAll(() => {
  host = new CallingHost()
})

const { functions } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as {
  functions: { id: string; parameters: { dimensionality: 'scalar' | 'matrix' }[] }[]
}

/** As Excel hands them over: every parameter has its place, and a cell for a range comes as one row of one cell. */
function asExcelSends(id: string, given: readonly unknown[]): CallFromCell {
  const { parameters } = functions.find((entry) => entry.id === id)!
  return {
    id,
    args: parameters.map(({ dimensionality }, index) => {
      const argument = given[index] ?? null
      if (dimensionality === 'scalar' || argument === null) return argument
      return Array.isArray(argument) ? (argument as readonly unknown[]).map((cell) => [cell]) : [[argument]]
    }),
  }
}

async function ask(id: string, ...given: readonly unknown[]): Promise<AnswerToCell> {
  const [answer] = await host.ask([{ id, args: given }])
  return answer!
}

test("Excel's client knows every function that functions.json names, and answers the first example of each in one message.", async () => {
  const first = (id: string) => catalogue.find((definition) => definition.id === id)!.examples[0]!
  const answers = await host.ask(functions.map(({ id }) => asExcelSends(id, first(id).given)))
  expect(functions).toHaveLength(catalogue.length)
  for (const [index, { id }] of functions.entries()) {
    expect(rowsOf(answers[index]!, id), id).toEqual(tableOf(first(id).gives))
  }
})

/** The rows below the headings, as examples give them. */
function rowsOf(answer: AnswerToCell, id: string): unknown {
  if (!('value' in answer)) throw new Error(`${id} refused: ${answer.sentence}`)
  const { columns } = catalogue.find((definition) => definition.id === id)!.result
  return columns === undefined ? tableOf(answer.value) : tableOf((answer.value as unknown[]).slice(1))
}

/** To 15 digits, as Excel shows a cell and as examples are written. */
function tableOf(value: unknown): unknown {
  if (!Array.isArray(value)) return tableOf([[value]])
  return (value as unknown[][]).map((row) =>
    row.map((cell) => (typeof cell === 'number' ? Number(cell.toPrecision(15)) : cell)),
  )
}

test('A refused call of any function arrives with the sentence that its source gives, and with the error value that shows it.', async () => {
  const wrong = (definition: Definition) => [
    [],
    Object.keys(definition.parameters).map(() => 'plenty'),
    Object.keys(definition.parameters).map(() => -1),
  ]
  const calls = catalogue.flatMap((definition) => wrong(definition).map((args) => ({ definition, args })))
  const answers = await host.ask(calls.map(({ definition: { id }, args }) => ({ id, args })))
  for (const [index, { definition, args }] of calls.entries()) {
    const outcome = call(definition, args)
    if (outcome.kind !== 'error') throw new Error(`${definition.id} did not refuse`)
    expect(answers[index]).toEqual({ error: outcome.code, sentence: outcome.sentence })
  }
})

test('Where a call has no answer, the cell shows #N/A with the reason.', async () => {
  const answer = await ask('BREAKEVEN', 1, 10, 5, null, null, null, null, null, null, null, null)
  expect(answer).toMatchObject({ error: '#N/A', sentence: expect.stringMatching(/^.{20,}\.$/) as string })
})

// Source: exact division; 1 part in 3 of 90 L is 30 L.
test('A range of results arrives as rows, in the shape of the range that was given.', async () => {
  expect(await ask('BLENDPARTS', 90, [[1, 2]], null)).toEqual({ value: [[30, 60]] })
  expect(await ask('BLENDPARTS', 90, [[1], [2]], null)).toEqual({ value: [[30], [60]] })
})

test('A table of results arrives as rows of one width, its headings first.', async () => {
  const definition = catalogue.find(({ result }) => result.columns !== undefined)!
  const columns = Object.values(definition.result.columns!)
  const answer = await ask(definition.id, ...asExcelSends(definition.id, definition.examples[0]!.given).args)
  const rows = (answer as { value: unknown[][] }).value
  expect(rows[0]).toEqual(columns.map(({ heading }) => heading))
  expect(rows.length).toBeGreaterThan(1)
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]))
})

// Source: exact division, 300 / 60 = 5, and 5 parts in 15 of 90 L are 30 L.
test('Arguments that were left out, blank cells and single cells for a range are read as in the grid.', async () => {
  expect(
    await host.ask([
      // Excel writes null for what was left out; a message that does not is read alike.
      { id: 'BAGS', args: [300, 60] },
      { id: 'BAGS', args: [300, 60, null, null, null, null] },
      { id: 'BAGS', args: ['0.3 m3', '60 L', '', null, null, null] },
      { id: 'BLENDPARTS', args: [90, [[5], [10], [null], ['']], null] },
      { id: 'BLENDPARTS', args: [90, [[7]], null] },
    ]),
  ).toEqual([{ value: 5 }, { value: 5 }, { value: 5 }, { value: [[30], [60], [0], [0]] }, { value: [[90]] }])
})

test.each(['#DIV/0!', '#N/A', '#NUM!', '#NULL!', '#VALUE!'])(
  'The error value %s of an input cell comes through as that same error value.',
  async (code) => {
    const error = { type: 'CustomFunctionError', code }
    expect(await ask('FILL', error, 65, null, null)).toMatchObject({ error: code })
    expect(await ask('BLENDPARTS', 90, [[1], [error]], null)).toMatchObject({ error: code })
  },
)

test.each(['#REF!', '#NAME?', '#SPILL!', '#CALC!', '#BUSY!', '#GETTING_DATA'])(
  'The error value %s, which a function cannot give, comes out as #VALUE! with a sentence that names it.',
  async (code) => {
    expect(await ask('FILL', { type: 'CustomFunctionError', code }, 65, null, null)).toEqual({
      error: '#VALUE!',
      sentence: `An input cell shows ${code}. Mend it first.`,
    })
  },
)

test('The page keeps what each cell was calculated with, by the address that the client hands over.', async () => {
  await host.ask([{ id: 'BAGS', args: [300, 60], address: "'[Season.xlsx]Order book'!B4" }])
  const log = (host.page as unknown as Record<symbol, CallLog>)[Symbol.for('sticksheet.callLog')]!
  expect(log.of('Order book!B4')).toEqual([{ id: 'BAGS', args: [300, 60] }])
})

// Source: the least whole number of bags of 60 L that hold n L is (n + 59) / 60 without the remainder, in whole numbers.
test('5,000 calls in one message are all answered, in order and right, and one bad call among them stops no other.', async () => {
  const bad = 2500
  const calls = Array.from({ length: 5000 }, (_, index) => ({
    id: 'BAGS',
    args: [index === bad ? -1 : index + 1, 60],
    address: `Sheet1!A${index + 1}`,
  }))
  const answers = await host.ask(calls)
  expect(answers).toHaveLength(5000)
  for (const [index, answer] of answers.entries()) {
    const litres = index + 1
    if (index === bad)
      expect(answer).toMatchObject({ error: '#VALUE!', sentence: expect.stringContaining('-1') as string })
    else expect(answer).toEqual({ value: (litres + 59 - ((litres + 59) % 60)) / 60 })
  }
  // Excel on the web takes no message above 5 MB. Source: Microsoft's page on the limits of add-ins, from memory.
  expect(host.messageLength).toBeLessThan(5 * 1024 * 1024)
})
