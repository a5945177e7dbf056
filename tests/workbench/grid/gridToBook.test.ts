import { describe, expect, it } from 'vitest'
import { bookToGrid } from '../../../src/workbench/grid/bookToGrid'
import { gridToBook } from '../../../src/workbench/grid/gridToBook'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import type { Book, Cell } from '../../../src/workbook/book'
import { openGrid } from './univerInNode'

const small: Book = {
  names: [{ name: 'Price', refersTo: "'Price list'!$A$1" }],
  sheets: [
    {
      name: 'Price list',
      widths: [20, 8.5],
      frozenRows: 1,
      frozenColumns: 2,
      rows: [
        [
          { value: 12.5, look: 'input', format: '#,##0.00', allowed: { from: 0, sentence: 'Type a price.' } },
          undefined,
          { value: true },
        ],
        [],
        [
          { formula: '=SEQUENCE(2)*Price', spills: true, look: 'result' },
          { value: '60' },
          { value: '15%', look: 'text' },
        ],
      ],
    },
  ],
}

describe('a book in the grid', () => {
  it('comes back as it went in', () => {
    expect(gridToBook(bookToGrid(small, 'book'))).toEqual(small)
  })

  it('comes back with every look, format, formula and note of the demo season, and no results', () => {
    const season = demoSeason()
    const read = gridToBook(bookToGrid(season, 'book'))
    expect(read.names).toEqual(season.names)
    for (const [index, sheet] of season.sheets.entries()) {
      const { rows, ...rest } = read.sheets[index]!
      expect({ ...rest, widths: [] }).toEqual({
        name: sheet.name,
        frozenRows: sheet.frozenRows,
        frozenColumns: sheet.frozenColumns,
        widths: [],
        ...(sheet.tables && { tables: sheet.tables }),
      })
      for (const [row, cells] of sheet.rows.entries()) {
        for (const [column, cell] of cells.entries()) {
          // An empty text is nothing typed, and a cell with nothing at all needs no place.
          const { value, ...rest } = cell ?? {}
          const expected: Cell = value === undefined || value === '' ? rest : { value, ...rest }
          if (Object.keys(expected).length > 0) expect(rows[row]?.[column]).toEqual(expected)
        }
      }
    }
  })

  it('comes back with a table that grew with a row inserted into it and moved with one above it', async () => {
    const headings: Cell[] = [{ value: 'Species' }, { value: 'Liners' }]
    const lines: Cell[][] = [1, 2, 3].map((liners) => [{ value: 'Hebe' }, { value: liners }])
    const book: Book = {
      names: [],
      sheets: [
        {
          name: 'Mine',
          widths: [],
          frozenRows: 0,
          frozenColumns: 0,
          rows: [headings, ...lines],
          tables: [{ name: 'Lines', range: 'A1:B4' }],
        },
      ],
    }
    const grid = openGrid()
    try {
      await grid.calculated(() => grid.replace(book, 'book'))
      const workbook = grid.api.getActiveWorkbook()!
      workbook.getActiveSheet().insertRows(3)
      expect(gridToBook(workbook.save()).sheets[0]?.tables).toEqual([{ name: 'Lines', range: 'A1:B5' }])
      workbook.getActiveSheet().insertRows(0)
      expect(gridToBook(workbook.save()).sheets[0]?.tables).toEqual([{ name: 'Lines', range: 'A2:B6' }])
      expect(gridToBook(workbook.save()).names).toEqual([])
    } finally {
      grid.close()
    }
  })

  it('keeps the frozen columns that a narrow window does not show', () => {
    const grid = bookToGrid(small, 'book', { isNarrow: true })
    expect(grid.sheets['sheet1']?.freeze?.xSplit).toBe(0)
    expect(gridToBook(grid)).toEqual(small)
  })

  it('comes back with what the user changed, and still without results', async () => {
    const grid = openGrid()
    try {
      await grid.calculated(() => grid.replace(small, 'book'))
      const workbook = grid.api.getActiveWorkbook()!
      await grid.calculated(() => {
        workbook.getActiveSheet().getRange('A1').setValue(14)
        workbook.getActiveSheet().insertRows(1, 1)
      })
      expect(workbook.getActiveSheet().getRange('A4').getRawValue()).toBe(14)
      const [sheet] = gridToBook(workbook.save()).sheets
      expect(sheet!.rows[0]![0]).toEqual({
        value: 14,
        look: 'input',
        format: '#,##0.00',
        allowed: { from: 0, sentence: 'Type a price.' },
      })
      expect(sheet!.rows[3]![0]).toEqual({ formula: '=SEQUENCE(2)*Price', spills: true, look: 'result' })
      expect(sheet!.rows[4]).toBeUndefined()
    } finally {
      grid.close()
    }
  })
})
