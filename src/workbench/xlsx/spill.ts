import { isCellError } from '../../core/definition/problem'
import type { OpenCell } from '../../workbook/openBook'

/** The range that a formula fills. One with something in its way, #SPILL!, says where it would spill, and fills nothing. */
export function spillOf(cell: OpenCell | undefined): string | undefined {
  return isCellError(cell?.value) && cell.value.code === '#SPILL!' ? undefined : cell?.spill
}
