/** A workbook for people without the add-in: plain formulas or values in place of our functions, and a sheet that says where. */
import type { Definition } from '../../core/definition/definition'
import { isCellError } from '../../core/definition/problem'
import { blockOf } from '../../formula/address'
import { plainCell } from '../../derived/plainCell'
import type { Book, Cell, DefinedName, Sheet } from '../book'
import type { OpenBook, OpenSheet } from '../openBook'
import type { BookCopy } from '../port'
import { listOfValues } from './listOfValues'
import { cellsFilledBy, plainFates, type PlainFate } from './plainCells'

export interface PlainCopy extends BookCopy {
  readonly formulas: number
  readonly values: number
  /** The sheet that lists the values. */
  readonly listedOn: string
}

/** @param book The workbook as it would be saved. @param open The same with its results. */
export function plainCopy(book: Book, open: OpenBook, definitions: readonly Definition[]): PlainCopy {
  const fates = open.sheets.flatMap((sheet) => plainFates(sheet, 'formulas', definitions))
  const names = book.names.map((name) => plainName(name, definitions))
  const list = listOfValues(
    fates,
    book.sheets.map(({ name }) => name),
  )
  const values = fates.filter(({ becomes }) => becomes !== 'formula')
  const sheets = book.sheets.map((sheet) =>
    plainSheet(
      sheet,
      open,
      fates.filter((fate) => fate.sheet === sheet.name),
    ),
  )
  return {
    book: { ...book, sheets: [...sheets, list], names },
    calculated: open,
    formulas: fates.length - values.length,
    values: values.length,
    listedOn: list.name,
  }
}

/** A name may stand for a formula, which plain Excel must know as well. */
function plainName(name: DefinedName, definitions: readonly Definition[]): DefinedName {
  const plain = plainCell(`=${name.refersTo}`, definitions)
  return { ...name, refersTo: 'formula' in plain ? plain.formula.slice(1) : '#N/A' }
}

function plainSheet(sheet: Sheet, open: OpenBook, fates: readonly PlainFate[]): Sheet {
  const shown = open.sheets.find(({ name }) => name === sheet.name)
  if (shown === undefined || fates.length === 0) return sheet
  const rows = sheet.rows.map((row) => [...row])
  const put = (address: string, cell: Cell) => {
    const { top, left } = blockOf(address)!
    const row = (rows[top] ??= [])
    const { value: _value, formula: _formula, spills: _spills, ...looks } = row[left] ?? {}
    row[left] = { ...looks, ...cell }
  }
  for (const { address, cell, formula } of fates) {
    if (formula !== undefined) put(address, { formula, ...(cell.spill !== undefined && { spills: true }) })
    else for (const filled of [address, ...cellsFilledBy(cell.spill)]) put(filled, valueOf(shown, filled))
  }
  return { ...sheet, rows: Array.from(rows, (row) => row ?? []) }
}

const errorsOfFormulas = new Set(['#VALUE!', '#N/A', '#DIV/0!', '#REF!', '#NAME?', '#NUM!', '#NULL!'])

function valueOf({ cells }: OpenSheet, address: string): Cell {
  const value = cells.get(address)?.value ?? null
  // A formula that is an error value and nothing else: a cell keeps no error otherwise.
  if (isCellError(value)) return { formula: `=${errorsOfFormulas.has(value.code) ? value.code : '#N/A'}` }
  return value === null ? {} : { value }
}
