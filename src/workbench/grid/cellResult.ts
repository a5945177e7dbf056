import { CellValueType, type ICellData, type Nullable } from '@univerjs/core'
import { ERROR_TYPE_SET, type ErrorType } from '@univerjs/engine-formula'

/** What a cell shows. An error is a text of its own in the grid: "#VALUE!". */
export interface CellResult {
  readonly value: string | number | boolean | null
  readonly error?: string
}

export function cellResult(cell: Nullable<ICellData>): CellResult {
  const shown = cell?.v
  if (shown === undefined || shown === null) return { value: null }
  if (cell?.t === CellValueType.BOOLEAN) return { value: shown === 1 || shown === true }
  if (typeof shown === 'string' && ERROR_TYPE_SET.has(shown as ErrorType)) return { value: null, error: shown }
  return { value: shown }
}
