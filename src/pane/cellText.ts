import type { CellPlace, SelectedCell } from '../workbook/port'

/** "B4 on Season". */
export function placeText(cell: CellPlace): string {
  return `${cell.address} on ${cell.sheet}`
}

export function isEmptyCell(cell: SelectedCell): boolean {
  return cell.formula === '' && (cell.value === null || cell.value === '')
}
