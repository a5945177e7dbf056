/** A cell, or a block of cells, of one sheet. */
export interface CellPlace {
  readonly sheet: string
  /** Without dollar signs: "B4". */
  readonly address: string
}
