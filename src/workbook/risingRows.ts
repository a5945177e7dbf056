/** Rows in rising order, asked from below: so labels of a long sheet are found without walking up it cell by cell. */
export interface RisingRows {
  /** The nearest of the rows at or above a row. */
  lastUpTo(row: number): number | undefined
  /** The first of the rows that lead without a gap to this one; none where it is no such row. */
  startOf(row: number): number | undefined
}

/** @param rows Each once, in any order. */
export function risingRows(rows: Iterable<number>): RisingRows {
  const rising = [...rows].sort((a, b) => a - b)
  const starts: number[] = []
  rising.forEach((row, place) => starts.push(rising[place - 1] === row - 1 ? starts[place - 1]! : row))
  const placeUpTo = (row: number) => lastPlaceUpTo(rising, row)
  return {
    lastUpTo: (row) => rising[placeUpTo(row)],
    startOf(row) {
      const place = placeUpTo(row)
      return rising[place] === row ? starts[place] : undefined
    },
  }
}

/** By halving; -1 where all are above. */
function lastPlaceUpTo(rising: readonly number[], most: number): number {
  let below = 0
  let above = rising.length
  while (below < above) {
    const middle = (below + above) >>> 1
    if (rising[middle]! <= most) below = middle + 1
    else above = middle
  }
  return below - 1
}
