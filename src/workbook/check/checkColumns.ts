/** Columns that were filled down and then changed in one place. */
import { relativeFormula } from '../../formula/relativeFormula'
import type { Words } from '../../wording/words'
import type { OpenCell, OpenSheet } from '../openBook'
import type { Finding } from './finding'

/** Above and below the place that differs, so that a column of two kinds is no finding. */
const rowsOfEachSide = 2

export function checkColumns(sheet: OpenSheet, found: Words['found']): readonly Finding[] {
  const byColumn = new Map<number, Map<number, { readonly address: string; readonly cell: OpenCell }>>()
  for (const [address, cell] of sheet.cells) {
    // Units of money follow the cell of the currency, each in its own words.
    if (cell.isHeading) continue
    const column = byColumn.get(cell.column) ?? new Map<number, { address: string; cell: OpenCell }>()
    byColumn.set(cell.column, column.set(cell.row, { address, cell }))
  }
  return [...byColumn.values()].flatMap((column) =>
    [...column.values()].flatMap(({ address, cell }): Finding[] => {
      const relative = (row: number) => {
        const other = column.get(row)
        return other === undefined || other.cell.formula === ''
          ? undefined
          : relativeFormula(other.cell.formula, other.address)
      }
      const around = [relative(cell.row - 1), relative(cell.row + 1)]
      const [above, below] = around
      if (above === undefined || above !== below || sides(cell.row, relative, above) < rowsOfEachSide) return []
      if (cell.formula === '') {
        return typeof cell.value === 'number'
          ? [{ sheet: sheet.name, address, kind: 'warning', sentence: found.typedOver() }]
          : []
      }
      if (relative(cell.row) === above) return []
      return [{ sheet: sheet.name, address, kind: 'warning', sentence: found.broken() }]
    }),
  )
}

/** The longer of the two runs of the same formula beside the row, up to what is asked for. */
function sides(row: number, relative: (row: number) => string | undefined, same: string): number {
  const run = (step: 1 | -1) => {
    let length = 0
    while (length < rowsOfEachSide && relative(row + step * (length + 1)) === same) length += 1
    return length
  }
  return Math.max(run(-1), run(1))
}
