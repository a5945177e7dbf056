/** The results of a calculated book as a person reads them: sheet by sheet, each with its label. */
import { numfmt } from '@univerjs/core'
import { addressOf, blockIn, type Position, positionsIn } from '../../formula/address'
import type { Book, Cell, Sheet } from '../../workbook/book'
import type { CalculatedBook, CalculatedCell, CalculatedSheet } from '../../workbook/calculated'
import { labelsOf, type SheetLabels } from '../../workbook/labels'
import { openBookOf } from '../../workbook/openBookOf'
import { sheetNamed } from '../../workbook/sheetNamed'
import { spillOf } from './spill'

export interface SheetResults {
  readonly name: string
  readonly results: readonly Result[]
}

export interface Result {
  readonly address: string
  /** What the sheet calls the cell: "Peat, Cost per liner, EUR". */
  readonly label: string
  readonly formula: string
  readonly value: string | number | boolean | null
  /** The value in the cell's number format. */
  readonly shown: string
  readonly error?: string
  readonly sentence?: string
  /** The shown values of a formula that fills several cells, its own cell first. */
  readonly rows?: readonly (readonly string[])[]
}

/** Only the formulas: what was typed is known. Sheets without a formula are left out. */
export function resultsOf(book: Book, calculated: CalculatedBook): SheetResults[] {
  const open = openBookOf(book, calculated)
  return book.sheets.flatMap((sheet) => {
    const cells = calculated.sheets.find(({ name }) => name === sheet.name)
    const results = cells === undefined ? [] : resultsOfSheet(sheet, cells, labelsOf(sheetNamed(open, sheet.name)!.cells))
    return results.length === 0 ? [] : [{ name: sheet.name, results }]
  })
}

function resultsOfSheet(sheet: Sheet, calculated: CalculatedSheet, labels: SheetLabels): Result[] {
  return sheet.rows.flatMap((cells, row) => cells.flatMap((cell, column) => {
    if (cell?.formula === undefined) return []
    const address = addressOf(row, column)
    const result: CalculatedCell = calculated.cells.get(address) ?? { value: null }
    const spill = spillOf(result)
    return [{
      address,
      label: labels.textOf({ top: row, left: column, bottom: row, right: column }),
      formula: cell.formula,
      value: result.value,
      shown: shownAs(result, cell),
      ...(result.error !== undefined && { error: result.error }),
      ...(result.sentence !== undefined && { sentence: result.sentence }),
      ...(spill !== undefined && { rows: spilledRows(sheet, calculated, spill) }),
    }]
  }))
}

function spilledRows(sheet: Sheet, calculated: CalculatedSheet, spill: string): string[][] {
  const rows = new Map<number, string[]>()
  for (const place of positionsIn(blockIn(spill))) {
    const row = rows.get(place.row) ?? []
    row.push(shownAs(calculated.cells.get(addressOf(place.row, place.column)), cellAt(sheet, place)))
    rows.set(place.row, row)
  }
  return [...rows.values()]
}

function shownAs(result: CalculatedCell | undefined, cell: Cell | undefined): string {
  if (result?.error !== undefined) return result.error
  if (result === undefined || result.value === null) return ''
  return numfmt.format(cell?.format ?? 'General', result.value, { locale: 'en-US', throws: false }).trim()
}

function cellAt(sheet: Sheet, { row, column }: Position): Cell | undefined {
  return sheet.rows[row]?.[column]
}
