import type { IRange, Nullable } from '@univerjs/core'
import { addressOf } from '../../formula/address'

/** A formula that fills its own cell alone does not spill. */
export function spillRange(range: Nullable<IRange>): string | undefined {
  if (!range) return undefined
  const { startRow, startColumn, endRow, endColumn } = range
  if (startRow === endRow && startColumn === endColumn) return undefined
  return `${addressOf(startRow, startColumn)}:${addressOf(endRow, endColumn)}`
}
