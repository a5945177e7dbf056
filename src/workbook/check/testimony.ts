/**
 * What a witness says of a workbook: a second engine, of other makers, calculates each plain formula once more from
 * the values of the cells that it reads. As in double entry, no single mistake passes unseen.
 */
import type { ReadCell } from '../openBook'
import type { CellPlace } from '../cellPlace'

export interface Testimony {
  /** In the order of the sheets. Each is a root: a formula that reads a wrong result and does right with it is none. */
  readonly disagreements: readonly Disagreement[]
  /** How many formulas were calculated by both engines. */
  readonly judged: number
  /** How many were not, by reason; a reason that does not occur is missing. */
  readonly notJudged: Readonly<Partial<Record<NotJudged, number>>>
}

/** The place is that of the formula; where it fills several cells, the values are those of the first that differs. */
export interface Disagreement extends CellPlace {
  /** What the cell shows. */
  readonly first: ReadCell
  readonly second: ReadCell
}

export type NotJudged =
  /** Nothing but a function of ours that reads cells: these have proofs of their own. */
  | 'ownFunction'
  /** What a function of ours gave within the formula is not known. */
  | 'unseenCall'
  /** It uses what the second engine is known to calculate otherwise than Excel. */
  | 'otherwise'
  /** The second engine does not know a function or a way of writing in it. */
  | 'unknown'
  /** It reads an error, or has no room for its results. */
  | 'error'
  /** Its result is another one each time or each day. */
  | 'changing'

/** Why there is no testimony: the second engine broke down, or was stopped because it took too long. */
export type NoTestimony = 'crashed' | 'tookTooLong'
