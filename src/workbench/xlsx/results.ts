/** The results of a calculated book as a person reads them: sheet by sheet, each with its label. */
import { numfmt } from '@univerjs/core'
import { isCellError } from '../../core/definition/problem'
import { addressOf, blockIn, type Position, positionsIn } from '../../formula/address'
import type { Book, Cell, Sheet } from '../../workbook/book'
import { labelsOf } from '../../workbook/labels'
import type { OpenBook, OpenCell, OpenSheet } from '../../workbook/openBook'
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
export function resultsOf(book: Book, open: OpenBook): SheetResults[] {
  return book.sheets.flatMap((sheet) => {
    const calculated = sheetNamed(open, sheet.name)
    const results = calculated === undefined ? [] : resultsOfSheet(sheet, calculated)
    return results.length === 0 ? [] : [{ name: sheet.name, results }]
  })
}

function resultsOfSheet(sheet: Sheet, calculated: OpenSheet): Result[] {
  const labels = labelsOf(calculated.cells)
  return sheet.rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) => {
      if (cell?.formula === undefined) return []
      const address = addressOf(row, column)
      const result = calculated.cells.get(address)
      const value = result?.value ?? null
      const spill = spillOf(result)
      return [
        {
          address,
          label: labels.textOf({ top: row, left: column, bottom: row, right: column }),
          formula: cell.formula,
          value: isCellError(value) ? null : value,
          shown: shownAs(result, cell),
          ...(isCellError(value) && { error: value.code }),
          ...(result?.sentence !== undefined && { sentence: result.sentence }),
          ...(spill !== undefined && { rows: spilledRows(sheet, calculated, spill) }),
        },
      ]
    }),
  )
}

function spilledRows(sheet: Sheet, calculated: OpenSheet, spill: string): string[][] {
  const rows = new Map<number, string[]>()
  for (const place of positionsIn(blockIn(spill))) {
    const row = rows.get(place.row) ?? []
    row.push(shownAs(calculated.cells.get(addressOf(place.row, place.column)), cellAt(sheet, place)))
    rows.set(place.row, row)
  }
  return [...rows.values()]
}

function shownAs(result: OpenCell | undefined, cell: Cell | undefined): string {
  const value = result?.value ?? null
  if (isCellError(value)) return value.code
  if (value === null) return ''
  return numfmt.format(cell?.format ?? 'General', value, { locale: 'en-US', throws: false }).trim()
}

function cellAt(sheet: Sheet, { row, column }: Position): Cell | undefined {
  return sheet.rows[row]?.[column]
}
