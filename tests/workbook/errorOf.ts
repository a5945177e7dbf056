import { isCellError } from '../../src/core/definition/problem'
import type { OpenCell } from '../../src/workbook/openBook'

/** The error value that a cell shows: "#VALUE!". */
export function errorOf(cell: Pick<OpenCell, 'value'> | undefined): string | undefined {
  return isCellError(cell?.value) ? cell.value.code : undefined
}
