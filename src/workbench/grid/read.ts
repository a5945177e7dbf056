/** What the grid reads of the open workbook: cells, calls, names, and all of it. */
import { type Injector, numfmt, type Worksheet } from '@univerjs/core'
import type { FRange, FWorkbook, FWorksheet } from '@univerjs/preset-sheets-core'
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import type { DefinedName } from '../../workbook/book'
import type { OpenBook, ReadCell } from '../../workbook/openBook'
import { PortProblem, type WorkbookPort } from '../../workbook/port'
import type { CellCalls, Place } from './cellCalls'
import type { CellResult } from './cellResult'
import type { OpenGrid } from './open'
import { callsAt, readCells, resultAt } from './readCells'
import { refusedEntry } from './refusedEntry'

/** The selected cell as the line below the sheet tells it. */
export interface GridCell extends CellResult {
  readonly sheet: string
  /** Without dollar signs: "B4". */
  readonly address: string
  /** With its leading "="; empty where the cell holds no formula. */
  readonly formula: string
  /** The day or the hour that the number stands for, where the cell shows one: "2027-03-15". */
  readonly day?: string
  /** Why one of our own functions refused, or what may be typed here where something else was. */
  readonly sentence?: string
}

type Reading = Pick<
  WorkbookPort,
  'selectedCell' | 'callsOfSelectedCell' | 'selectedRange' | 'isEmpty' | 'read' | 'readRows' | 'names' | 'valuesOf'
>

export function reading(grid: OpenGrid): Reading {
  const { api, injector, calls, workbook } = grid
  return {
    async selectedCell() {
      const cell = shownCell(grid)
      if (cell === undefined) throw new PortProblem('noSelection')
      const { sheet, address, formula, value, error } = cell
      return { sheet, address, formula, value: error ?? value }
    },
    async callsOfSelectedCell() {
      const cell = api.getActiveWorkbook()?.getActiveCell()
      return cell ? callsAt(calls, placeOf(cell)) : []
    },
    async selectedRange() {
      const range = api.getActiveWorkbook()?.getActiveRange()
      if (!range) throw new PortProblem('noSelection')
      return { sheet: range.getSheetName(), address: range.getA1Notation() }
    },
    isEmpty: async () =>
      workbook()
        .getSheets()
        .every((sheet) => readCells(injector, sheet.getSheet(), calls).size === 0),
    read: async () => readBook(grid),
    async readRows(sheet, first, last) {
      const isMeant = (one: FWorksheet) => one.getSheetName().toLowerCase() === sheet.toLowerCase()
      const worksheet = workbook().getSheets().find(isMeant)?.getSheet()
      return worksheet && { name: worksheet.getName(), cells: readCells(injector, worksheet, calls, { first, last }) }
    },
    names: async () => namesOf(workbook()),
    valuesOf: async (reference, sheet) => valuesOf(grid, reference, sheet),
  }
}

/** Undefined while nothing is selected. */
export function shownCell({ api, injector, calls }: OpenGrid): GridCell | undefined {
  // There is none for a moment, while one workbook takes the place of another.
  const open = api.getActiveWorkbook()
  const cell = open?.getActiveCell()
  return open && cell ? read(injector, open.getActiveSheet().getSheet(), cell, calls) : undefined
}

export function readBook({ injector, calls, workbook }: OpenGrid): OpenBook {
  const open = workbook()
  return {
    names: namesOf(open),
    sheets: open
      .getSheets()
      .map((sheet) => ({ name: sheet.getSheetName(), cells: readCells(injector, sheet.getSheet(), calls) })),
  }
}

export function namesOf(open: FWorkbook): readonly DefinedName[] {
  return open
    .getDefinedNames()
    .map((name) => ({ name: name.getName(), refersTo: name.getFormulaOrRefString().replace(/^=/, '') }))
}

type Values = readonly (readonly ReadCell[])[]

function valuesOf({ injector, workbook }: OpenGrid, reference: string, sheet: string): Values | undefined {
  const [range, ...more] = rangesRead(`=${reference}`, sheet, namedRanges(namesOf(workbook())))
  const worksheet = range && workbook().getSheetByName(range.sheet)
  if (!worksheet || more.length > 0) return undefined
  const data = worksheet.getSheet()
  const rows = Math.min(range.bottom, data.getRowCount() - 1) - range.top + 1
  const columns = Math.min(range.right, data.getColumnCount() - 1) - range.left + 1
  if (rows < 1 || columns < 1) return undefined
  const at = { workbook: workbook().getId(), sheet: worksheet.getSheetId() }
  return Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_cell, column) => {
      const { value, error } = resultAt(injector, data, { ...at, row: range.top + row, column: range.left + column })
      return error === undefined ? value : ({ kind: 'cellError', code: error } as const)
    }),
  )
}

function read(injector: Injector, worksheet: Worksheet, cell: FRange, calls: CellCalls): GridCell {
  const place = placeOf(cell)
  const shown = resultAt(injector, worksheet, place)
  const sentence = shown.error ? calls.sentence(place, shown.error) : refusedEntry(injector, place)
  const [sheet, address, formula] = [cell.getSheetName(), cell.getA1Notation(), cell.getFormula()]
  const day = dayOf(worksheet, place, shown)
  return { sheet, address, formula, ...shown, ...(day && { day }), ...(sentence && { sentence }) }
}

function dayOf(worksheet: Worksheet, { row, column }: Place, { value }: CellResult): string | undefined {
  const { pattern } = worksheet.getComposedCellStyle(row, column).n ?? {}
  if (typeof value !== 'number' || !pattern || !numfmt.isDateFormat(pattern)) return undefined
  return numfmt.format(pattern, value, { locale: 'en-US', throws: false }).trim()
}

function placeOf(cell: FRange): Place {
  return { workbook: cell.getUnitId(), sheet: cell.getSheetId(), row: cell.getRow(), column: cell.getColumn() }
}
