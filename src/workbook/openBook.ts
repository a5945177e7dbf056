/** A workbook as it stands in its host, with results: what the checks read. */
import type { CellError } from '../core/definition/problem'
import type { DefinedName } from './book'

export interface OpenBook {
  readonly sheets: readonly OpenSheet[]
  readonly names: readonly DefinedName[]
}

export interface OpenSheet {
  readonly name: string
  /** By address without dollar signs ("B4"); an empty cell is missing. */
  readonly cells: ReadonlyMap<string, OpenCell>
}

export interface OpenCell {
  /** From 0. */
  readonly row: number
  readonly column: number
  /** With its leading "="; empty where the cell holds no formula. */
  readonly formula: string
  readonly value: ReadCell
  /** Of our own sheets what they mark as a heading, on others what is bold; left out where the host cannot tell. */
  readonly isHeading?: true
  /** Where a formula of ours spills: the whole range that it fills, its own cell included ("B4:E9"). */
  readonly spill?: string
  /** The calls of our functions when it was last calculated; undefined where the host has not seen that. */
  readonly calls: readonly CallInCell[] | undefined
  /** Why one of our functions refused, where the host knows it. */
  readonly sentence?: string
}

/** A value as a cell function is given it; an error value of a cell comes as such. */
export type ReadCell = string | number | boolean | null | CellError

/** A call of one of our functions as a cell's formula made it. */
export interface CallInCell {
  /** Of the function: "BAGS". */
  readonly id: string
  readonly args: readonly unknown[]
}
