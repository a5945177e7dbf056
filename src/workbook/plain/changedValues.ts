import { isCellError } from '../../core/definition/problem'
import type { OpenBook, ReadCell } from '../openBook'
import type { CellPlace } from '../cellPlace'
import { isWaiting } from '../waiting'

/** A plain formula is counted in binary numbers, ours in decimal ones. */
const tolerance = 1e-9

/** The cells that show something else than before. */
export function changedValues(before: OpenBook, after: OpenBook): readonly CellPlace[] {
  return before.sheets.flatMap((sheet) => {
    const now = after.sheets.find(({ name }) => name === sheet.name)?.cells
    const addresses = new Set([...sheet.cells.keys(), ...(now?.keys() ?? [])])
    return [...addresses]
      .filter((address) => !isSame(sheet.cells.get(address)?.value ?? null, now?.get(address)?.value ?? null))
      .map((address) => ({ sheet: sheet.name, address }))
  })
}

function isSame(one: ReadCell, other: ReadCell): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= tolerance * Math.max(1, Math.abs(one))
  if (isCellError(other)) return isWaiting(other) || (isCellError(one) && one.code === other.code)
  // A function may fill a cell with an empty text, which is then left empty.
  return (one === '' ? null : one) === (other === '' ? null : other)
}
