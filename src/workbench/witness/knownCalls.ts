import type { CellFunction } from '../../core/definition/definition'
import { call } from '../../derived/call'
import { functions } from '../../functions/functions'
import type { CallInCell, ReadCell } from '../../workbook/openBook'

export type Rows = readonly (readonly ReadCell[])[]

/** A call of one of our functions, and what it gave: one value, or rows of cells. */
export interface KnownCall extends CallInCell {
  readonly gave: ReadCell | Rows
}

const all: readonly CellFunction[] = Object.values(functions)

/** Computes them again: the same arguments always give the same. */
export function knownCalls(calls: readonly CallInCell[]): readonly KnownCall[] {
  return calls.flatMap(({ id, args }): readonly KnownCall[] => {
    const definition = all.find((one) => one.id === id)
    if (definition === undefined) return []
    const outcome = call(definition, args)
    return [{ id, args, gave: outcome.kind === 'value' ? outcome.value : { kind: 'cellError', code: outcome.code } }]
  })
}
