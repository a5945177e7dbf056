import type { CellFunction } from '../core/definition/definition'

/** `STICK.FILL(vessels, vesselVolumeMl, [settle], [spill])`: brackets mark what may be left out. */
export function signature(definition: CellFunction): string {
  const names = Object.entries(definition.parameters).map(([name, { optional }]) => (optional ? `[${name}]` : name))
  return `STICK.${definition.id}(${names.join(', ')})`
}
