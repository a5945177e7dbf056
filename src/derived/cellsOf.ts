import { isTable, type Answer } from '../core/definition/evaluate'
import { isFact, type Fact } from '../core/definition/fact'
import { factText } from '../wording/en/facts'

/** What a cell holds, or the cells that a function spills over. */
export type CellValues = number | readonly (readonly (number | string)[])[]

/**
 * An answer as its cells show it; a table gets its headings above, and its rows become rows of cells. Facts are told
 * in English, whatever the language of the pane, because saved workbooks hold their texts.
 */
export function cellsOf(answer: Answer): CellValues {
  if (!isTable(answer)) return answer
  const { columns, rows } = answer
  const keys = Object.keys(columns)
  return [keys.map((key) => columns[key]!.heading), ...rows.map((row) => keys.map((key) => cellText(row[key]!)))]
}

function cellText(cell: number | string | Fact): number | string {
  return isFact(cell) ? factText(cell) : cell
}
