import type { CallInCell } from './openBook'

/** A workbook after its calculation, as plain data: what the recalc command and the tests read. */
export interface CalculatedBook {
  readonly sheets: readonly CalculatedSheet[]
  /** Every cell in which a function of the catalogue refused, in the order of the sheets, row by row. */
  readonly refusals: readonly CellRefusal[]
}

export interface CalculatedSheet {
  readonly name: string
  /** By address without dollar signs ("B4"): typed cells, results and the cells they spill over. */
  readonly cells: ReadonlyMap<string, CalculatedCell>
  /** The calls of our functions that each formula made, by its address. */
  readonly calls: ReadonlyMap<string, readonly CallInCell[]>
}

export interface CalculatedCell {
  /** Null for an empty cell and for an error. */
  readonly value: string | number | boolean | null
  /** Where a formula spills: the whole range that it fills, its own cell included ("B4:E9"). */
  readonly spill?: string
  /** The error value as the spreadsheet writes it: "#VALUE!". */
  readonly error?: string
  /** What to type instead, where one of our own functions refused. */
  readonly sentence?: string
}

export interface CellRefusal {
  readonly sheet: string
  readonly address: string
  readonly code: string
  readonly sentence: string
}
