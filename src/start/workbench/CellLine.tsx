import { useLayoutEffect, useState } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { Grid } from '../../workbench/grid/grid'
import type { GridCell } from '../../workbench/grid/read'
import type { Words } from '../../wording/words'

interface CellLineProps {
  readonly grid: Grid | undefined
  readonly words: Words
  readonly decimalMark: DecimalMark
  /** Whether something was typed that the sheet could not take yet. */
  readonly typedEarly: boolean
  /** Shows the sheet, where a narrow window shows the pane. */
  readonly onShow: () => void
}

/** Says what the selected cell holds: the canvas of the grid says nothing to a screen reader. */
export function CellLine({
  grid,
  words: { language, workbench: words },
  decimalMark,
  typedEarly,
  onShow,
}: CellLineProps) {
  const [cell, setCell] = useState<GridCell>()
  // With the drawing that shows the sheet: whoever looks at the one may read the other.
  useLayoutEffect(() => {
    if (grid === undefined) return
    const show = () => setCell(grid.shownCell())
    show()
    return grid.onSelectionChange(show)
  }, [grid])
  const isRefused = typedEarly || cell?.sentence !== undefined
  return (
    <div className="line" data-refused={isRefused} lang={language}>
      <p className="cell" role="status" aria-label={words.selectedCell} data-refused={isRefused}>
        {typedEarly ? words.typedEarly : cell && cellText(cell, words, decimalMark)}
      </p>
      <button type="button" className="show" onClick={onShow}>
        {words.showInSheet}
      </button>
    </div>
  )
}

function cellText(cell: GridCell, words: Words['workbench'], decimalMark: DecimalMark): string {
  const { sheet, address, formula, sentence } = cell
  const shown = shownResult(cell, words, decimalMark)
  const content = formula === '' ? shown : words.gives(formula, shown)
  return `${sheet}, ${address}: ${content}${sentence === undefined ? '' : `: ${sentence}`}`
}

function shownResult({ value, day, error }: GridCell, words: Words['workbench'], decimalMark: DecimalMark): string {
  if (error !== undefined) return error
  if (value === null) return words.empty
  if (day !== undefined) return day
  if (typeof value !== 'number') return String(value)
  return value.toLocaleString(decimalMark === ',' ? 'de-DE' : 'en-US', { maximumSignificantDigits: 12 })
}
