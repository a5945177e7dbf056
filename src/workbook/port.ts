import type { DecimalMark } from '../core/quantity/decimalMark'
import type { NoTestimony, Testimony } from './check/testimony'
import type { Book, CellContent, DefinedName } from './book'
import type { CellPlace } from './cellPlace'
import type { SheetChart } from './sheetChart'
import type { CallInCell, OpenBook, OpenSheet, ReadCell } from './openBook'

/**
 * The one door through which the pane and the season builder reach a workbook.
 * Excel and the workbench each implement it; tests/contract runs one suite over both.
 */
export interface WorkbookPort {
  readonly host: 'excel' | 'workbench'
  /** The active cell: the top left one where a block is selected. */
  selectedCell(): Promise<SelectedCell>
  /**
   * The calls of our functions that the formula of the active cell made when it was last calculated, in the order
   * in which they were made. Undefined where the host has not seen that calculation: calculate() then helps.
   */
  callsOfSelectedCell(): Promise<readonly CallInCell[] | undefined>
  /** Calculates the whole workbook anew. */
  calculate(): Promise<void>
  /** Writes a formula in en-US form, with its leading "=", into a cell; without a place into the active one. */
  putFormula(formula: string, place?: CellPlace): Promise<void>
  /**
   * Changes cells, of several sheets too: all of them or none, and one undo takes it back where the host can. Where one
   * no longer holds the formula that it is said to hold, nothing is changed, with 'cellChanged'.
   */
  putCells(changes: readonly CellChange[]): Promise<void>
  /** The selected cells, as a formula on their sheet names them: "B4:B9". */
  selectedRange(): Promise<CellPlace>
  /** Whether nothing stands in any cell. */
  isEmpty(): Promise<boolean>
  /** The whole workbook as it stands. */
  read(): Promise<OpenBook>
  /** The same of some rows of a sheet, from 0, both included; undefined where there is no such sheet. */
  readRows(sheet: string, first: number, last: number): Promise<OpenSheet | undefined>
  /** The names of cells alone, which takes a host less than reading everything. */
  names(): Promise<readonly DefinedName[]>
  /**
   * Adds the sheets of a book after those of the workbook, and its names; all of it or nothing, and one undo takes
   * it back where the host can. What the workbook holds is never overwritten: a sheet or name that is already
   * there makes it refuse, with 'nameTaken', before anything is written.
   */
  add(book: Book): Promise<void>
  /** Takes a sheet away with all that stands on it, without a question. */
  removeSheet(sheet: string): Promise<void>
  /** What the workbook is open in, line by line and in English, for a report. */
  describeHost(): readonly string[]
  /** Puts a chart of cells into their sheet, all of it or nothing; absent where sheets hold no charts. */
  addChart?(chart: SheetChart): Promise<void>
  /** What a second engine makes of the formulas of the workbook as it was read; absent where there is none. */
  witness?(this: void, book: OpenBook): Promise<Testimony | NoTestimony>
  /** Gives the user a copy of the workbook as a file, changed on the way; the open one stays as it is. Absent where the host cannot. */
  saveCopy?(change: (book: Book, open: OpenBook) => BookCopy): Promise<void>
  /**
   * Inserts rows above that of the cell, all or none and in one undo where the host can, with the formulas, the looks
   * and the rules of the row before them, and nothing typed in. A range that reaches from above to below them grows.
   */
  insertRows(place: CellPlace, count: number): Promise<void>
  /** Shows a cell and selects it. */
  select(place: CellPlace): Promise<void>
  /**
   * What the cells hold that a reference names: "B4:B9", "Prices!B4" or a defined name. A reference without a sheet
   * is read on the given one. Undefined where it names no cells.
   */
  valuesOf(reference: string, sheet: string): Promise<readonly (readonly ReadCell[])[] | undefined>
  /** Says with which decimal mark numbers are typed into cells; absent where the host has a setting of its own. */
  setDecimalMark?(mark: DecimalMark): void
  /** Calls back whenever the active cell or its content changed; returns the way to stop. */
  onSelectionChange(listener: () => void): () => void
}

export interface BookCopy {
  readonly book: Book
  /** What it shows, for programs that calculate nothing. */
  readonly calculated: OpenBook
}

export interface CellChange extends CellPlace {
  /** The formula that stands there now; absent for a cell that only shows what a formula elsewhere spills into it. */
  readonly was?: string
  /** What is to stand there: a formula with its leading "=", or what would be typed; null leaves the cell empty. */
  readonly now: { readonly formula: string } | { readonly value: CellContent | null }
}

export interface SelectedCell extends CellPlace {
  /** With its leading "="; empty where the cell holds no formula. */
  readonly formula: string
  readonly value: string | number | boolean | null
}

export type PortProblemCode =
  | 'cellEditMode'
  | 'protectedSheet'
  | 'protectedWorkbook'
  | 'noSelection'
  | 'hostFailed'
  /** The detail names the cell that holds something else than before. */
  | 'cellChanged'
  /** Only a part of the cells was changed, and not changed back; the detail says where. */
  | 'partChanged'
  /** Excel fills the columns of tables by itself, and did so in the one that the detail names; nothing is changed. */
  | 'columnFilled'
  /** The detail lists what is already there. */
  | 'nameTaken'
  /** A book was not taken; the workbook is as before. */
  | 'bookRefused'
  /** A book was not taken, and what the detail lists could not be taken away again. */
  | 'partLeft'

/** What a host could not do, as data. The pane words it. */
export class PortProblem extends Error {
  constructor(
    readonly code: PortProblemCode,
    readonly detail = '',
    options?: ErrorOptions,
  ) {
    super(detail === '' ? code : `${code}: ${detail}`, options)
    this.name = 'PortProblem'
  }
}
