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
  /** Writes a formula in en-US form, with its leading "=", into the active cell. */
  putFormula(formula: string): Promise<void>
  /** Calls back whenever the active cell or its content changed; returns the way to stop. */
  onSelectionChange(listener: () => void): () => void
}

export interface SelectedCell {
  readonly sheet: string
  /** Without dollar signs: "B4". */
  readonly address: string
  /** With its leading "="; empty where the cell holds no formula. */
  readonly formula: string
  readonly value: string | number | boolean | null
}

export interface CallInCell {
  /** Of the function: "BAGS". */
  readonly id: string
  readonly args: readonly unknown[]
}

/** What a host could not do, as data. The pane words it. */
export class PortProblem extends Error {
  constructor(readonly code: 'cellEditMode' | 'protectedSheet' | 'noSelection' | 'hostFailed', readonly detail = '') {
    super(detail === '' ? code : `${code}: ${detail}`)
    this.name = 'PortProblem'
  }
}
