/** The plain formula of QUOTE gives the whole table, its warnings included: both spill side by side in the grid's engine. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { plainFormula } from '../../src/derived/plainFormula'
import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Cell } from '../../src/workbook/book'
import type { OpenCell } from '../../src/workbook/openBook'
import { definition } from '../golden/golden'

interface Offer {
  readonly cost: number
  readonly quantities: readonly number[]
  readonly margins: readonly number[]
  readonly setup: number | undefined
  readonly step: number | undefined
}

const rowsOfTable = 5
const columnsOfTable = 7
const [ourFirst, plainFirst, inputsFirst] = [0, 8, 16]

/** Prices in whole steps tie now and then, such as 3 at 0.35 and 5 at 0.21, and a double holds neither exactly. */
const offer: fc.Arbitrary<Offer> = fc
  .uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: rowsOfTable - 1, maxLength: rowsOfTable - 1 })
  .chain((quantities) =>
    fc.record({
      cost: fc.integer({ min: 1, max: 200 }).map((cents) => cents / 100),
      quantities: fc.constant(quantities),
      margins: fc.array(fc.constantFrom(0, 0.1, 0.2, 0.25, 0.35, 0.4, 0.5, 0.6), {
        minLength: quantities.length,
        maxLength: quantities.length,
      }),
      setup: fc.option(fc.constantFrom(0, 2.5, 25), { nil: undefined, freq: 3 }),
      step: fc.option(fc.constantFrom(0, 0.01, 0.05, 0.07), { nil: undefined, freq: 4 }),
    }),
  )

const column = (index: number) => String.fromCharCode(65 + index)

/** Blank cells among the quantities are skipped on both sides, so one stands before the last. */
function cellsOf({ cost, quantities, margins, setup, step }: Offer): readonly (Cell | undefined)[] {
  const withBlank = (values: readonly number[]) => [...values.slice(0, -1), undefined, values.at(-1)]
  return [cost, setup, step, ...withBlank(quantities), ...withBlank(margins)].map((value) =>
    value === undefined ? undefined : { value },
  )
}

/** Cost, setup, step and quantities lie beside the first row of the tables, the margins beside the second. */
function argumentsOf(row: number): readonly string[] {
  const cell = (place: number, below: number) => `$${column(inputsFirst + place)}$${row + below}`
  return [
    cell(0, 0),
    `${cell(3, 0)}:${cell(2 + rowsOfTable, 0)}`,
    `${cell(0, 1)}:${cell(rowsOfTable - 1, 1)}`,
    cell(1, 0),
    cell(2, 0),
  ]
}

test('both tables agree, cell by cell and word by word, over random offers', async () => {
  const offers = fc.sample(offer, { numRuns: 50, seed: 21 })
  const rows: (Cell | undefined)[][] = []
  for (const one of offers) {
    const texts = argumentsOf(rows.length + 1)
    const plain = plainFormula(definition('QUOTE'), texts)
    if (!('formula' in plain)) throw new Error(plain.reason)
    const cells = cellsOf(one)
    const first: (Cell | undefined)[] = []
    first[ourFirst] = { formula: `=STICK.QUOTE(${texts.join(',')})` }
    first[plainFirst] = { formula: plain.formula }
    cells.slice(0, 3 + rowsOfTable).forEach((cell, index) => {
      first[inputsFirst + index] = cell
    })
    const second: (Cell | undefined)[] = []
    cells.slice(3 + rowsOfTable).forEach((cell, index) => {
      second[inputsFirst + index] = cell
    })
    rows.push(first, second, ...Array.from({ length: rowsOfTable - 1 }, () => []))
  }
  const { cells } = (
    await calculateBook({
      sheets: [
        { name: 'Quotes', widths: [], frozenRows: 0, frozenColumns: 0, rows: rows.map((row) => Array.from(row)) },
      ],
      names: [],
    })
  ).sheets[0]!
  let warnings = 0
  offers.forEach((one, index) => {
    for (let row = 0; row < rowsOfTable; row++) {
      for (let place = 0; place < columnsOfTable; place++) {
        const at = index * (rowsOfTable + 1) + row + 1
        const [ours, plain] = [
          cells.get(`${column(ourFirst + place)}${at}`),
          cells.get(`${column(plainFirst + place)}${at}`),
        ]
        const what = `${JSON.stringify(one)}, row ${row}, column ${place}`
        expectSame(ours, plain, what)
        if (typeof ours?.value === 'string' && ours.value.includes('more than')) warnings++
      }
    }
  })
  expect(warnings, 'zones that were met').toBeGreaterThan(50)
})

function expectSame(ours: OpenCell | undefined, plain: OpenCell | undefined, what: string): void {
  if (typeof ours?.value === 'number' && typeof plain?.value === 'number') {
    expect(Math.abs(plain.value - ours.value), what).toBeLessThanOrEqual(1e-9 * Math.abs(ours.value) + 1e-12)
    return
  }
  expect(ours?.value, what).toBeTypeOf('string')
  expect(plain?.value, what).toBe(ours?.value)
}
