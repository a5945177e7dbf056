import type { Definition } from '../core/definition/definition'
import { idsCalled } from '../formula/idsCalled'

/** The functions of ours that a formula calls, each once, in the order of the formula. */
export function functionsUsed(formula: string, definitions: readonly Definition[]): readonly Definition[] {
  return [...new Set(idsCalled(formula))].flatMap((id) => definitions.find((definition) => definition.id === id) ?? [])
}
