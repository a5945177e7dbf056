/**
 * The one door through which the pane and the season builder reach a workbook.
 * Excel and the workbench each implement it; tests/contract runs one suite over both.
 */
export interface WorkbookPort {
  readonly host: 'excel' | 'workbench'
  /** The active cell: the top left one where a block is selected. */
  selectedCell(): Promise<SelectedCell>
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

/** What a host could not do, as data. The pane words it. */
export class PortProblem extends Error {
  constructor(readonly code: 'cellEditMode' | 'protectedSheet' | 'noSelection' | 'hostFailed', readonly detail = '') {
    super(detail === '' ? code : `${code}: ${detail}`)
    this.name = 'PortProblem'
  }
}
