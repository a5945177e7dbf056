/** The change that turns cells of one sheet into plain formulas or values: first to say, then to do. */
import type { Definition } from '../../core/definition/definition'
import { isCellError } from '../../core/definition/problem'
import { blockOf } from '../../derived/blockOf'
import type { OpenBook, OpenSheet } from '../openBook'
import type { CellChange, CellPlace } from '../port'
import { cellsFilledBy, plainFates, type Into, type PlainFate } from './plainCells'

export interface PlainPlan {
  readonly place: CellPlace
  readonly into: Into
  readonly fates: readonly PlainFate[]
  readonly changes: readonly CellChange[]
}

/** @param place A cell or a block: "B4:C9". */
export function plainPlan(book: OpenBook, place: CellPlace, into: Into, definitions: readonly Definition[]): PlainPlan {
  const sheet = book.sheets.find(({ name }) => name === place.sheet)
  const block = blockOf(place.address)
  const fates = sheet === undefined || block === undefined ? [] : plainFates(sheet, into, definitions, { sheet: place.sheet, ...block })
  return { place, into, fates, changes: sheet === undefined ? [] : fates.flatMap((fate) => changesOf(fate, sheet)) }
}

function changesOf({ address, cell, becomes, formula }: PlainFate, sheet: OpenSheet): readonly CellChange[] {
  if (becomes === 'left') return []
  if (formula !== undefined) return [{ address, was: cell.formula, now: { formula } }]
  const others = cellsFilledBy(cell.spill).filter((other) => other !== address)
  return [
    { address, was: cell.formula, now: { value: valueAt(sheet, address) } },
    ...others.map((other) => ({ address: other, now: { value: valueAt(sheet, other) } })),
  ]
}

function valueAt({ cells }: OpenSheet, address: string): string | number | boolean | null {
  const value = cells.get(address)?.value ?? null
  return isCellError(value) ? null : value
}
