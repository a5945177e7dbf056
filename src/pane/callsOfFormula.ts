import type { Definition } from '../core/definition/definition'
import { idsCalled } from '../formula/idsCalled'
import type { CallInCell } from '../workbook/openBook'

export interface ShownCall {
  readonly definition: Definition
  readonly args: readonly unknown[]
}

/**
 * The calls that belong to the formula as it stands. A host may also remember those of earlier calculations of the
 * cell, so of each function only as many count, from the last one back, as the formula has calls of it.
 */
export function callsOfFormula(
  formula: string,
  calls: readonly CallInCell[],
  definitions: readonly Definition[],
): readonly ShownCall[] {
  const left = new Map<string, number>()
  for (const id of idsCalled(formula)) left.set(id, (left.get(id) ?? 0) + 1)
  const shown: ShownCall[] = []
  for (const { id, args } of [...calls].reverse()) {
    const count = left.get(id) ?? 0
    const definition = definitions.find((one) => one.id === id)
    if (count === 0 || definition === undefined) continue
    left.set(id, count - 1)
    shown.unshift({ definition, args })
  }
  return shown
}
