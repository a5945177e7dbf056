import { decodeCell, decodeRange, encodeCell } from '@cj-tech-master/excelts'

/** Rows and columns from 1 on, as a file counts them. */
export interface Place {
  readonly row: number
  readonly column: number
}

export function addressOf({ row, column }: Place): string {
  return encodeCell({ r: row - 1, c: column - 1 })
}

/** Of "B4" or "$B$4". */
export function placeOf(address: string): Place {
  const { r, c } = decodeCell(address.replaceAll('$', ''))
  return { row: r + 1, column: c + 1 }
}

/** The first and the last cell of "B4:E9". */
export function cornersOf(range: string): readonly [Place, Place] {
  const { s, e } = decodeRange(range.replaceAll('$', ''))
  return [{ row: s.r + 1, column: s.c + 1 }, { row: e.r + 1, column: e.c + 1 }]
}

/** All the cells of "B4:E9" or "B4", row by row. */
export function* placesIn(range: string): Iterable<Place> {
  const [from, to] = cornersOf(range)
  for (let row = from.row; row <= to.row; row += 1) {
    for (let column = from.column; column <= to.column; column += 1) yield { row, column }
  }
}
