/** Texts that name cells: what a user types or picks for an argument. */
import { parseA1Ref } from '@borgar/fx'

/** "B4", "$B$4:$C$9", "B:B"; no sheet, and no defined name. */
export function isAddress(text: string): boolean {
  const parsed = parseA1Ref(text)
  return parsed !== undefined && 'range' in parsed && (parsed.context ?? []).length === 0
}
