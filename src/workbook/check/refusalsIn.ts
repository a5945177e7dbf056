import { isCellError } from '../../core/definition/problem'
import type { OpenBook } from '../openBook'
import type { CellPlace } from '../cellPlace'

/** A cell in which one of our functions refused. */
export interface CellRefusal extends CellPlace {
  readonly code: string
  /** What to type instead. */
  readonly sentence: string
}

/** In the order of the sheets, row by row. */
export function refusalsIn({ sheets }: OpenBook): readonly CellRefusal[] {
  return sheets.flatMap(({ name: sheet, cells }) =>
    [...cells].flatMap(([address, { value, sentence }]) =>
      isCellError(value) && sentence !== undefined ? [{ sheet, address, code: value.code, sentence }] : [],
    ),
  )
}
