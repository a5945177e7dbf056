/** A workbook of a few cells in the engine, for what a mend repairs. */
import { expect } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import type { Book, Cell } from '../../../../src/workbook/book'
import { positionOf } from '../../../../src/formula/address'
import { openGrid, type OpenGrid } from '../univerInNode'

export type Content = string | number | boolean

export interface OpenCells {
  readonly grid: OpenGrid
  value(address: string): unknown
  values(...addresses: readonly string[]): readonly unknown[]
  type(address: string, content: Content): Promise<void>
}

/** Calculates the cells and hands them to `look`; closes the workbook in the end. */
export async function withCells<Seen>(
  cells: Readonly<Record<string, Content>>,
  look: (open: OpenCells) => Seen | Promise<Seen>,
  mends = engineMends,
  names: Book['names'] = [],
): Promise<Seen> {
  const grid = openGrid(mends)
  try {
    const sheet = { name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows: rowsOf(cells) }
    await grid.calculated(() => grid.replace({ names, sheets: [sheet] }, 'book'))
    const at = (address: string) => grid.api.getActiveWorkbook()!.getActiveSheet().getRange(address)
    const value = (address: string): unknown => at(address).getValue()
    return await look({
      grid,
      value,
      values: (...addresses) => addresses.map(value),
      type: (address, content) =>
        grid.calculated(() =>
          at(address).setValue(isFormula(content) ? { f: content, v: null } : { f: null, v: content }),
        ),
    })
  } finally {
    grid.close()
  }
}

/** What formulas give beside these cells, in their order. */
export function resultsOf(
  formulas: readonly string[],
  cells: Readonly<Record<string, Content>> = {},
  mends = engineMends,
  names: Book['names'] = [],
): Promise<readonly unknown[]> {
  const places = formulas.map((formula, index) => [`Z${index + 1}`, formula] as const)
  return withCells(
    { ...cells, ...Object.fromEntries(places) },
    (open) => open.values(...places.map(([place]) => place)),
    mends,
    names,
  )
}

/** That each formula gives its result beside these cells. */
export async function expectResults(
  right: readonly (readonly [formula: string, result: unknown])[],
  cells: Readonly<Record<string, Content>> = {},
): Promise<void> {
  const results = await resultsOf(
    right.map(([formula]) => formula),
    cells,
  )
  expect(Object.fromEntries(right.map(([formula], place) => [formula, results[place]]))).toEqual(
    Object.fromEntries(right),
  )
}

function rowsOf(cells: Readonly<Record<string, Content>>): Cell[][] {
  const rows: Cell[][] = []
  for (const [address, content] of Object.entries(cells)) {
    const { row, column } = positionOf(address)
    while (rows.length <= row) rows.push([])
    while (rows[row]!.length <= column) rows[row]!.push({})
    rows[row]![column] = isFormula(content) ? { formula: content, spills: true } : { value: content }
  }
  return rows
}

function isFormula(content: Content): content is string {
  return typeof content === 'string' && content.startsWith('=')
}
