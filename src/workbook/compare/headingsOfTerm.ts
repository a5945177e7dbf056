import { labelsOf } from '../labels'
import type { OpenCell, OpenSheet } from '../openBook'

/** What a term of a sum is called: by its row where the terms stand in a column, else by its column. */
export function headingsOfTerm(
  { cells }: OpenSheet,
  term: OpenCell,
  standing: 'in a row' | 'in a column',
): readonly string[] {
  const { row, column, unit } = labelsOf(cells).of(term)
  return (standing === 'in a column' ? [row] : [column, unit]).filter((text) => text !== undefined)
}
