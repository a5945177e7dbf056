import { isFact } from '../core/definition/fact'
import type { Answer } from '../core/definition/evaluate'
import { factText } from '../wording/en/facts'

/** What a cell holds, or the cells that a function spills over. */
export type CellValues = number | readonly (readonly (number | string)[])[]

/** An answer as its cells show it: in English, whatever the language of the pane, because saved workbooks hold it. */
export function cellsOf(answer: Answer): CellValues {
  return typeof answer === 'number' ? answer : answer.map((row) => row.map((cell) => (isFact(cell) ? factText(cell) : cell)))
}
