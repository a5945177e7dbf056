import { expect, it } from 'vitest'
import type { Cell, Sheet } from '../../../src/workbook/book'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { partsOf } from './sampleBook'

const row = (line: number, times: string): Cell[] => [
  { value: line },
  { formula: `=A${line + 2}*${times}` },
  { formula: `=STICK.BAGS(A${line + 2},60)` },
  { formula: `=A${line + 2}&"{<"` },
]
const orders: Sheet = {
  name: 'Orders',
  widths: [],
  frozenRows: 0,
  frozenColumns: 0,
  rows: [[], ['Line', 'By hand', 'Bags', 'Text'].map((value) => ({ value })), row(1, '2'), row(2, '3'), row(3, '2')],
  tables: [{ name: 'OrderBook', range: 'A2:D5' }],
}

it('A table in a file names the formula of each column that has one in all rows, as it stands in the first of them', async () => {
  const { 'xl/tables/table1.xml': xml = '' } = await partsOf(await writeXlsx({ names: [], sheets: [orders] }))
  // ISO/IEC 29500-1, 18.5.1.1. A function of an add-in is stored as an array formula, see arrayEvaluation.
  expect([...xml.matchAll(/<tableColumn [^>]*name="([^"]*)"[^>]*?(?:\/>|>(.*?)<\/tableColumn>)/g)]).toEqual([
    expect.objectContaining({ 1: 'Line', 2: undefined }),
    expect.objectContaining({ 1: 'By hand', 2: undefined }),
    expect.objectContaining({
      1: 'Bags',
      2: '<calculatedColumnFormula array="1">_xldudf_STICK_BAGS(A3,60)</calculatedColumnFormula>',
    }),
    expect.objectContaining({
      1: 'Text',
      2: '<calculatedColumnFormula>A3&amp;&quot;{&lt;&quot;</calculatedColumnFormula>',
    }),
  ])
})

it('A file whose tables name formulas comes back with the same cells and tables, and nothing is lost', async () => {
  const { book, lost } = await readXlsx(await writeXlsx({ names: [], sheets: [orders] }))
  const formulas = (sheet: Sheet | undefined) =>
    sheet?.rows.slice(1).map((cells) => cells.map((cell) => cell?.formula ?? cell?.value))
  expect(formulas(book.sheets[0])).toEqual(formulas(orders))
  expect(book.sheets[0]?.tables).toEqual(orders.tables)
  expect(lost).toEqual([])
})
