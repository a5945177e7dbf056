/** Something in a workbook that was forgotten or looks wrong. */
export interface Finding {
  readonly sheet: string
  /** Without dollar signs: "B4". */
  readonly address: string
  /** 'error' where a number is missing or refused; 'warning' where a number stands that may mislead. */
  readonly kind: 'error' | 'warning'
  /** What was found, and what to do. */
  readonly sentence: string
}
