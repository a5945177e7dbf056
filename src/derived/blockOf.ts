import { parseA1Ref } from '@borgar/fx'
import { addressOf, type Block } from './reference'

/** The cells that an address without a sheet names: "B4", "B4:C9", "B:B". */
export function blockOf(address: string): Block | undefined {
  const parsed = parseA1Ref(address)
  if (parsed === undefined || !('range' in parsed) || parsed.range === undefined) return undefined
  const { top, left, bottom, right } = parsed.range
  return { top: top ?? 0, left: left ?? 0, bottom: bottom ?? Infinity, right: right ?? Infinity }
}

/** Each cell of a block by its address, row by row. */
export function addressesIn({ top, left, bottom, right }: Block): readonly string[] {
  return Array.from({ length: bottom - top + 1 }, (_, down) => Array.from({ length: right - left + 1 }, (_cell, across) => addressOf(top + down, left + across))).flat()
}
