import type { CalculatedCell } from '../../workbook/calculated'

/** The range that a formula fills. One with something in its way, #SPILL!, says where it would spill, and fills nothing. */
export function spillOf(cell: CalculatedCell | undefined): string | undefined {
  return cell?.error === '#SPILL!' ? undefined : cell?.spill
}
