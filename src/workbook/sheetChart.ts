/** A chart of a sheet's own, which its host draws from the cells that it names. */
export interface SheetChart {
  readonly sheet: string
  readonly kind: 'bars' | 'stack' | 'line' | 'tornado' | 'curve'
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
  /** Cells that come with the chart, which draws them; nothing may stand in them yet. */
  readonly table?: ChartCells
}

/** Headings and formulas. */
export interface ChartCells {
  readonly place: string
  readonly rows: readonly (readonly string[])[]
  /** Of the figures below the headings and beside the first column. */
  readonly format: string
}

export interface SheetSeries {
  readonly name: string
  readonly values: string
}
