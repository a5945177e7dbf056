import type { Allowed, CellContent } from './book'

/** Whether what was typed may stand in a cell. `entries` are what the cells of its list hold; capitals do not count. */
export function isAllowed(allowed: Allowed, typed: CellContent, entries: readonly unknown[]): boolean {
  if ('list' in allowed) return entries.some((entry) => plain(entry) === plain(typed))
  if (typeof typed !== 'number') return false
  return (
    typed >= allowed.from && typed <= (allowed.to ?? Infinity) && (allowed.whole !== true || Number.isInteger(typed))
  )
}

const plain = (text: unknown): string => String(text).trim().toLowerCase()
