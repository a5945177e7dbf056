/** A chart of a sheet's own, which its host draws from the cells that it names. */
export interface SheetChart {
  readonly sheet: string
  readonly kind: 'bars' | 'line' | 'tornado' | 'curve'
  readonly title: string
  /** Cells of the names of the bars, or of the values along the line. */
  readonly along: string
  readonly series: readonly SheetSeries[]
  readonly alongTitle: string
  readonly valueTitle: string
  /** Where the bars of a tornado begin. */
  readonly from?: number
  /** Nothing stands in this cell, right of it or below it. */
  readonly free: string
}

export interface SheetSeries { readonly name: string; readonly values: string }
