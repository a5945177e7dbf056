/** Cells as a file names them. Rows and columns count from 0, as everywhere; only the row numbers of a file itself begin with 1. */
import { decodeCell, decodeRange } from '@cj-tech-master/excelts'
import type { Block } from '../../derived/reference'

export interface Place {
  readonly row: number
  readonly column: number
}

/** Of "B4" or "$B$4". */
export function placeOf(address: string): Place {
  const { r: row, c: column } = decodeCell(address.replaceAll('$', ''))
  return { row, column }
}

/** Of "B4:E9" or "B4". */
export function blockIn(range: string): Block {
  const { s, e } = decodeRange(range.replaceAll('$', ''))
  return { top: s.r, left: s.c, bottom: e.r, right: e.c }
}

/** All the cells of "B4:E9" or "B4", row by row. */
export function* placesIn(range: string): Iterable<Place> {
  const { top, left, bottom, right } = blockIn(range)
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) yield { row, column }
  }
}
