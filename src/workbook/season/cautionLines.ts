import type { CellFunction } from '../../core/definition/definition'
import { cautionsFor } from '../../wording/cautions'
import { caution, type Row } from './cells'

/** The cautions of the functions whose media a sheet handles: the same sentences that the pane shows, each once. */
export function cautionLines(...definitions: readonly CellFunction[]): {
  readonly height: number
  readonly rows: () => readonly Row[]
} {
  const rows = cautionsFor(definitions).map((sentence) => [caution(sentence)])
  return { height: rows.length, rows: () => rows }
}
