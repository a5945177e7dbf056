/**
 * What a host is tried with: every example of every function, and what hosts are known to hand over in their own ways. All
 * of it stands on one sheet: each case in the first columns, its inputs and the many calls to the right.
 */
import { isCellError } from '../../core/definition/problem'
import { exampleFormula } from '../../derived/exampleFormula'
import { catalogue } from '../../functions/catalogue'
import { addressOf, blockAddress, positionOf } from '../../formula/address'
import type { Cell, Sheet } from '../book'
import type { OpenCell, ReadCell } from '../openBook'

type Shown = string | number

export interface Case {
  readonly what: string
  readonly formula: string
  /** From the cell of the formula on, row by row. */
  readonly expected: readonly (readonly Shown[])[]
  /** Rows and columns count from 0. */
  readonly row: number
}

export const columnOfFormulas = 1

/** Of the sheet, in columns that no result reaches. */
const inputs: Readonly<Record<string, Cell>> = {
  AA2: { formula: '=1/0' },
  AA3: { value: '60' },
  AA4: { value: 46062, format: 'yyyy-mm-dd' },
  AA5: { value: '300,5' },
  AA6: { value: 5 },
  AA7: { value: 10 },
  AC1: { value: 'Litres' },
  AC2: { value: 120 },
  AC3: { value: 180 },
  AD1: { value: 'Bags' },
  AD2: { formula: '=STICK.BAGS(AC2,60)' },
  AD3: { formula: '=STICK.BAGS(AC3,60)' },
}

/** A table to Excel alone. */
export const triedTable = { name: 'SticksheetTry', range: 'AC1:AD3' }

const calls = 5000
const blockOfCalls = { top: 0, left: 31, bottom: calls - 1, right: 31 }
/** Of 1 L, 2 L and so on in bags of 60 L, in whole numbers. */
const bagsOfCalls = Array.from({ length: calls }, (_, index) => Math.floor((index + 60) / 60)).reduce((a, b) => a + b)

const awkward: readonly (readonly [what: string, formula: string, expected: Shown])[] = [
  ['a blank cell for what may be left out', '=STICK.BAGS(300,60,AA1)', 5],
  ['a blank cell in a range', '=SUM(STICK.BLENDPARTS(90,AA6:AA8))', 90],
  ['an error that goes in comes out', '=STICK.BAGS(AA2,60)', '#DIV/0!'],
  ['a refused input', '=STICK.BAGS(-1,60)', '#VALUE!'],
  ['no answer', '=STICK.BREAKEVEN(1,10,5)', '#N/A'],
  ['a number as text', '=STICK.BAGS(300,AA3)', 5],
  ['a text with a unit', '=STICK.BAGS("0.3 m3","60 L")', 5],
  ['a text with a decimal comma', '=STICK.BAGS(AA5,60)', 6],
  ['a day', '=STICK.PEAK(AA4,1,5)', 5],
  ['a call within a call', '=STICK.BAGS(STICK.FILL(1000,60),60)', 1],
  ['5,000 calls', `=SUM(${blockAddress(blockOfCalls)})`, bagsOfCalls],
]

/** Excel alone has tables, and takes the formula once the table is there. */
const ofTables = ['a reference to a column of a table', `=SUM(${triedTable.name}[Bags])`, 5] as const

export function casesFor(host: 'excel' | 'workbench'): readonly Case[] {
  const examples = catalogue.flatMap((definition) =>
    definition.examples.map((example) => {
      const headings = Object.values(definition.result.columns ?? {}).map(({ heading }) => heading)
      const gives = typeof example.gives === 'number' ? [[example.gives]] : example.gives
      return {
        what: `${definition.id}: ${example.text}`,
        formula: exampleFormula(definition, example),
        expected: headings.length === 0 ? gives : [headings, ...gives],
      }
    }),
  )
  const others = [...awkward, ...(host === 'excel' ? [ofTables] : [])].map(([what, formula, expected]) => ({
    what,
    formula,
    expected: [[expected]],
  }))
  let row = 0
  return [...others, ...examples].map((one) => {
    const placed = { ...one, row }
    // A row between, so that no result is in the way of the next.
    row += one.expected.length + 1
    return placed
  })
}

export function sheetFor(name: string, cases: readonly Case[]): Sheet {
  const rows: (Cell | undefined)[][] = []
  const put = (row: number, column: number, cell: Cell) => ((rows[row] ??= [])[column] = cell)
  for (const { row, what, formula, expected } of cases) {
    put(row, 0, { value: what })
    if (!formula.includes(triedTable.name))
      put(row, columnOfFormulas, { formula, ...(expected.flat().length > 1 && { spills: true as const }) })
  }
  for (const [address, cell] of Object.entries(inputs)) {
    const { row, column } = positionOf(address)
    put(row, column, cell)
  }
  const { top, bottom, left } = blockOfCalls
  for (let row = top; row <= bottom; row += 1) put(row, left, { formula: `=STICK.BAGS(${row + 1},60)` })
  return {
    name,
    rows: Array.from(rows, (row = []) => Array.from(row)),
    widths: [60, 40],
    frozenRows: 0,
    frozenColumns: 0,
    tables: [triedTable],
  }
}

/** To 12 digits: examples are written with 15, and hosts count some sums in binary numbers. */
const isSame = (shown: ReadCell, expected: Shown): boolean => {
  if (isCellError(shown)) return shown.code === expected
  if (typeof shown === 'number' && typeof expected === 'number')
    return Math.abs(shown - expected) <= 1e-12 * Math.max(1, Math.abs(expected))
  return (shown ?? '') === expected
}

/** What the cells of a case show where that is not what is expected; undefined where all of it is. */
export function wrongIn({ row, expected }: Case, cells: ReadonlyMap<string, OpenCell>): string | undefined {
  for (const [down, inRow] of expected.entries()) {
    for (const [across, wanted] of inRow.entries()) {
      const address = addressOf(row + down, columnOfFormulas + across)
      const shown = cells.get(address)?.value ?? null
      if (isSame(shown, wanted)) continue
      const text = isCellError(shown) ? shown.code : JSON.stringify(shown)
      return `${address} shows ${text}, not ${JSON.stringify(wanted)}`
    }
  }
  return undefined
}
