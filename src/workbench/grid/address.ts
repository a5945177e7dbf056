import { numberToABC } from '@univerjs/core'

/** "B4" for row 3, column 1, both from 0 as the grid counts. */
export function address(row: number, column: number): string {
  return `${numberToABC(column)}${row + 1}`
}
