import type { CellChange } from './port'

/** In the order in which the sheets first come. */
export function changesBySheet(changes: readonly CellChange[]): ReadonlyMap<string, readonly CellChange[]> {
  const bySheet = new Map<string, CellChange[]>()
  for (const change of changes) {
    const ofSheet = bySheet.get(change.sheet)
    if (ofSheet === undefined) bySheet.set(change.sheet, [change])
    else ofSheet.push(change)
  }
  return bySheet
}
