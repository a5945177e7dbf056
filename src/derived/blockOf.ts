import { parseA1Ref } from '@borgar/fx'
import type { Block } from './reference'

/** The cells that an address without a sheet names: "B4", "B4:C9", "B:B". */
export function blockOf(address: string): Block | undefined {
  const parsed = parseA1Ref(address)
  if (parsed === undefined || !('range' in parsed) || parsed.range === undefined) return undefined
  const { top, left, bottom, right } = parsed.range
  return { top: top ?? 0, left: left ?? 0, bottom: bottom ?? Infinity, right: right ?? Infinity }
}
