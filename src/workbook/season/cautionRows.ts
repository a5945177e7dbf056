import type { CellFunction } from '../../core/definition/definition'
import { cautionsFor } from '../../wording/cautions'
import { caution, type Row } from './cells'

/** The cautions of the functions whose media a sheet handles: the same sentences that the pane shows, each once. */
export function cautionRows(...definitions: readonly CellFunction[]): readonly Row[] {
  return cautionsFor(definitions).map((sentence) => [caution(sentence)])
}
