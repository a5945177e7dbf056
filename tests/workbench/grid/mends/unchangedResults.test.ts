import fc from 'fast-check'
import { IFormulaRuntimeService, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { describe, expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { goOnFromChanges } from '../../../../src/workbench/grid/mends/unchangedResults'
import type { Book, Cell } from '../../../../src/workbook/book'
import { openGrid, type OpenGrid, without } from '../univerInNode'

type Content = number | string

const columns = 'ABCDEF'
const rowCount = 6

function book(contents: readonly (readonly Content[])[]): Book {
  const rows = contents.map((row) => row.map(cellOf))
  return { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
}

function cellOf(content: Content): Cell {
  if (typeof content === 'string' && content.startsWith('=')) return { formula: content, spills: true }
  return content === '' ? {} : { value: content }
}

const at = (grid: OpenGrid, address: string) => grid.api.getActiveWorkbook()!.getActiveSheet().getRange(address)

/** As a person types it; a formula and a value each take the place of the other. */
const type = (grid: OpenGrid, address: string, content: Content) =>
  grid.calculated(() => {
    const cell = at(grid, address)
    return typeof content === 'string' && content.startsWith('=')
      ? cell.setValue({ f: content, v: null })
      : cell.setValue({ f: null, v: content === '' ? null : content })
  })

function resultsOf(grid: OpenGrid): Record<string, unknown> {
  const cells = [...columns, 'G', 'H', 'I', 'J', 'K'].flatMap((column) =>
    Array.from({ length: rowCount + 6 }, (_, row) => `${column}${row + 1}`),
  )
  return Object.fromEntries(cells.map((address) => [address, at(grid, address).getValue()]))
}

/** How many formulas an edit calculates. */
async function calculatedBy(grid: OpenGrid, edit: () => Promise<void>): Promise<number> {
  const runtime = grid.injector.get(IFormulaRuntimeService)
  const set = runtime.setRuntimeData.bind(runtime)
  let count = 0
  runtime.setRuntimeData = (value) => {
    count += 1
    set(value)
  }
  await edit()
  return count
}

describe('A formula whose inputs give what they gave', () => {
  // B1 is the same for all positive numbers, and a hundred formulas read it.
  const contents = [[5, '=A1>0', ...Array.from({ length: 100 }, () => '=IF(B1,1,2)')]]
  const count = async (mends = engineMends) => {
    const grid = openGrid(mends)
    try {
      await grid.calculated(() => grid.replace(book(contents), 'book'))
      return await calculatedBy(grid, () => type(grid, 'A1', 7))
    } finally {
      grid.close()
    }
  }

  it('is not calculated again.', async () => {
    expect(await count()).toBe(1)
  })

  it('Without the mend the library calculates it and all that follow.', async () => {
    expect(await count(without(goOnFromChanges))).toBe(101)
  })
})

const inputs = fc.constantFrom<Content>(0, 1, 2, 3, -1, 0.1, 1e9, 'text', '', '1', '=NA()', '=1/0', '=2')

type FormulaOf = (a: string, b: string, column: string) => string

const formulas: readonly FormulaOf[] = [
  (a) => `=${a}`,
  (a, b) => `=${a}>${b}`,
  (a, b) => `=IF(${a}>1,${b},"none")`,
  (a, b) => `=IFERROR(${a}+${b},-1)`,
  (a, b) => `=MAX(${a}:${b})`,
  (a) => `=ISBLANK(${a})`,
  (a, b) => `=LEN(${a}&${b})>1`,
  (a) => `=ROUND(N(${a})/10,0)`,
  (_a, _b, column) => `=SUM(${column}1:${column}${rowCount})`,
  (_a, _b, column) => `=COUNT(${column}:${column})`,
  (a, _b, column) => `=INDEX(${column}1:${column}${rowCount},MIN(3,MAX(1,N(${a}))))`,
]

/** The engine calculates ahead what these need to know what they read. */
const findingCells: readonly FormulaOf[] = [(a) => `=OFFSET(${a},0,0)`, (a) => `=INDIRECT("${a}")`]

/** Reads only to the left, so that nothing goes round in a circle. */
function formulaIn(column: number, pool: readonly FormulaOf[]): fc.Arbitrary<string> {
  const left = fc.constantFrom(...columns.slice(0, column))
  const cell = fc.tuple(left, fc.integer({ min: 1, max: rowCount })).map((place) => place.join(''))
  return fc.tuple(fc.constantFrom(...pool), cell, cell, left).map(([formula, ...read]) => formula(...read))
}

/** F1 spills into F and G, and what stands in H reads that. */
function contentsWith(pool: readonly FormulaOf[]): fc.Arbitrary<Content[][]> {
  const row = fc.tuple(inputs, ...[1, 2, 3, 4].map((column) => formulaIn(column, pool)))
  const rows = fc.array(row, { minLength: rowCount, maxLength: rowCount })
  return fc.tuple(rows, formulaIn(5, pool)).map(([left, last]) =>
    left.map((cells, index) => {
      const spill = index === 0 ? '=SEQUENCE(MIN(5,MAX(1,N(A1))),2)*N(E1)' : ''
      return [...cells, spill, '', ['=SUM(F1:G9)', '=G2', '=F3>0', '=COUNT(F:G)', '=H1>3', last][index]!]
    }),
  )
}

function editsWith(pool: readonly FormulaOf[]): fc.Arbitrary<[string, Content][]> {
  const edit = fc.tuple(fc.nat({ max: 4 }), fc.integer({ min: 1, max: rowCount })).chain(([column, row]) => {
    const content = column === 0 ? inputs : fc.oneof(inputs, formulaIn(column, pool))
    return fc.tuple(fc.constant(`${columns[column]}${row}`), content)
  })
  return fc.array(edit, { minLength: 1, maxLength: 8 })
}

it.each([
  ['formulas that know what they read', formulas],
  ['formulas that find out what they read', [...formulas, ...findingCells]],
])('After any edits of %s every cell holds what a calculation of the whole workbook gives.', async (_, pool) => {
  await fc.assert(
    fc.asyncProperty(contentsWith(pool), editsWith(pool), async (contents, edits) => {
      const grid = openGrid()
      try {
        await grid.calculated(() => grid.replace(book(contents), 'book'))
        for (const [address, content] of edits) await type(grid, address, content)
        const after = resultsOf(grid)
        await grid.calculated(() => grid.execute(SetFormulaCalculationStartMutation.id, { forceCalculation: true }))
        expect(after).toEqual(resultsOf(grid))
      } finally {
        grid.close()
      }
    }),
    // To make a case smaller would take minutes.
    { numRuns: 20, endOnFailure: true },
  )
})
