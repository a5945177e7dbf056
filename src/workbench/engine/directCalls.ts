/**
 * Calculates the formulas that are one call of ours and nothing else, over typed cells or over each other, without the
 * grid's engine, which takes five times as long for them and keeps ten kilobytes of each. Whatever is not as plain as
 * that stays a formula, for the engine: a refusal and a table too, and what may read a cell that another formula fills.
 */
import type { CellFunction } from '../../core/definition/definition'
import { fillsOneCell } from '../../core/definition/definition'
import { call } from '../../derived/call'
import { type Block, blockOf } from '../../formula/address'
import { catalogue } from '../../functions/catalogue'
import type { Book, Cell, CellContent, Sheet } from '../../workbook/book'
import type { CallInCell } from '../../workbook/openBook'

export interface DirectCalls {
  /** The book with a result in the place of each formula that was calculated. */
  readonly book: Book
  /** The calculated cells of each sheet by row and column, from 0. */
  readonly called: readonly Called[]
}

export type Called = ReadonlyMap<number, ReadonlyMap<number, CalledCell>>

export interface CalledCell {
  readonly formula: string
  readonly call: CallInCell
}

/** An argument as it is written: a number, nothing, or cells of the same sheet. */
type Written = number | null | Block

interface Candidate {
  readonly row: number
  readonly column: number
  readonly cell: Cell & { readonly formula: string }
  readonly definition: CellFunction
  readonly args: readonly Written[]
}

/** No more cells in a range: the engine takes whole columns as far as they are filled. */
const mostCells = 10_000

const functions = new Map<string, CellFunction>(
  catalogue.filter(({ result }) => fillsOneCell(result)).map((one) => [one.id, one]),
)

export function callDirectly(book: Book): DirectCalls {
  const sheets = book.sheets.map(callInSheet)
  return { book: { ...book, sheets: sheets.map(({ sheet }) => sheet) }, called: sheets.map(({ called }) => called) }
}

function callInSheet(sheet: Sheet): { readonly sheet: Sheet; readonly called: Called } {
  const rows: (Cell | undefined)[][] = sheet.rows.map((row) => [...row])
  const called = new Map<number, Map<number, CalledCell>>()
  const candidates: Candidate[] = []
  /** By column, the first row with a formula that may fill cells below it and to its right. */
  const spillsFrom: number[] = []
  sheet.rows.forEach((cells, row) =>
    cells.forEach((cell, column) => {
      if (cell?.formula === undefined) return
      const candidate = candidateIn(cell, row, column)
      if (candidate !== undefined) candidates.push(candidate)
      else spillsFrom[column] ??= row
    }),
  )
  const mayBeFilled = (row: number, column: number): boolean =>
    spillsFrom.some((first, from) => from <= column && first <= row)

  /** Undefined where only the engine can tell. */
  function valueAt(row: number, column: number): CellContent | null | undefined {
    const cell = rows[row]?.[column]
    if (cell?.formula !== undefined) return undefined
    if (cell?.value === undefined) return mayBeFilled(row, column) ? undefined : null
    return isPlain(cell.value) ? cell.value : undefined
  }

  function calculate({ row, column, cell, definition, args }: Candidate): boolean {
    const given = args.map((written) => argumentFor(written, valueAt))
    if (given.includes(undefined)) return false
    const outcome = call(definition, given)
    if (outcome.kind !== 'value' || typeof outcome.value === 'object' || !isPlain(outcome.value)) return false
    const { formula, ...rest } = cell
    rows[row]![column] = { ...rest, value: outcome.value }
    const inRow = called.get(row) ?? new Map<number, CalledCell>()
    called.set(row, inRow.set(column, { formula, call: { id: definition.id, args: given } }))
    return true
  }

  // What reads the rows above is ready in the first pass, what reads those below in the second.
  const left = candidates.filter((candidate) => !calculate(candidate))
  left.reverse().forEach(calculate)
  return { sheet: { ...sheet, rows }, called }
}

/** A text that shows as an error, or is empty, means something else to the engine. */
function isPlain(value: CellContent): boolean {
  return typeof value !== 'string' || (value !== '' && !value.startsWith('#'))
}

/** In the capitals in which files have it; without brackets, texts, names and other sheets in its arguments. */
const onlyCall = /^=STICK\.([A-Z]+)\(([^()"'{}!#@]+)\)$/

function candidateIn(cell: Cell, row: number, column: number): Candidate | undefined {
  const { formula } = cell
  const [, id, list] = (formula !== undefined && !cell.spills && !cell.fills && onlyCall.exec(formula)) || []
  const definition = id === undefined ? undefined : functions.get(id)
  const args = list?.split(',').map(writtenIn)
  if (formula === undefined || definition === undefined || args === undefined || !args.every(isWritten))
    return undefined
  return { row, column, cell: { ...cell, formula }, definition, args }
}

function isWritten(written: Written | undefined): written is Written {
  return written !== undefined
}

function writtenIn(text: string): Written | undefined {
  const trimmed = text.trim()
  if (trimmed === '') return null
  if (/^\d{1,9}(?:\.\d{1,9})?$/.test(trimmed)) return Number(trimmed)
  const block = blockOf(trimmed)
  return block !== undefined && sizeOf(block) <= mostCells ? block : undefined
}

function sizeOf({ top, left, bottom, right }: Block): number {
  return (bottom - top + 1) * (right - left + 1)
}

type Given = number | null | readonly (readonly (CellContent | null)[])[]

/** As the engine hands it over: a single cell is a range too. Undefined where a cell of it is not known yet. */
function argumentFor(
  written: Written,
  valueAt: (row: number, column: number) => CellContent | null | undefined,
): Given | undefined {
  if (written === null || typeof written === 'number') return written
  const range: (CellContent | null)[][] = []
  for (let row = written.top; row <= written.bottom; row++) {
    const inRow: (CellContent | null)[] = []
    for (let column = written.left; column <= written.right; column++) {
      const value = valueAt(row, column)
      if (value === undefined) return undefined
      inRow.push(value)
    }
    range.push(inRow)
  }
  return range
}
