import type { SelectedCell } from '../workbook/port'

export function isEmptyCell(cell: SelectedCell): boolean {
  return cell.formula === '' && (cell.value === null || cell.value === '')
}
