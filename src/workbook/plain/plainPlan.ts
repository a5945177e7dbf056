/** The change that turns cells, or those of all sheets, into plain formulas or values: first to say, then to do. */
import type { Definition } from '../../core/definition/definition'
import { isCellError } from '../../core/definition/problem'
import { blockOf } from '../../formula/address'
import type { OpenBook, OpenSheet } from '../openBook'
import type { CellPlace } from '../cellPlace'
import type { CellChange } from '../port'
import { cellsFilledBy, plainFates, type Into, type PlainFate } from './plainCells'

export interface PlainPlan {
  /** Of the cells; the whole workbook where it is missing. */
  readonly place: CellPlace | undefined
  readonly into: Into
  readonly fates: readonly PlainFate[]
  readonly changes: readonly CellChange[]
}

/** @param place A cell or a block, "B4:C9"; the whole workbook where it is missing. */
export function plainPlan(
  book: OpenBook,
  place: CellPlace | undefined,
  into: Into,
  definitions: readonly Definition[],
): PlainPlan {
  const block = place && blockOf(place.address)
  const within = place && block && { sheet: place.sheet, ...block }
  const bySheet =
    place !== undefined && block === undefined
      ? []
      : book.sheets
          .filter(({ name }) => place === undefined || name === place.sheet)
          .map((sheet) => ({ sheet, fates: plainFates(sheet, into, definitions, within) }))
  return {
    place,
    into,
    fates: bySheet.flatMap(({ fates }) => fates),
    changes: bySheet.flatMap(({ sheet, fates }) => fates.flatMap((fate) => changesOf(fate, sheet))),
  }
}

function changesOf({ address, cell, becomes, formula }: PlainFate, sheet: OpenSheet): readonly CellChange[] {
  if (becomes === 'left') return []
  const { name } = sheet
  if (formula !== undefined) return [{ sheet: name, address, was: cell.formula, now: { formula } }]
  const others = cellsFilledBy(cell.spill).filter((other) => other !== address)
  return [
    { sheet: name, address, was: cell.formula, now: { value: valueAt(sheet, address) } },
    ...others.map((other) => ({ sheet: name, address: other, now: { value: valueAt(sheet, other) } })),
  ]
}

function valueAt({ cells }: OpenSheet, address: string): string | number | boolean | null {
  const value = cells.get(address)?.value ?? null
  return isCellError(value) ? null : value
}
