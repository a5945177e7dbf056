import type { DefinedName } from '../book'

/** Names cells of one sheet: `naming('Orders')('OrderWay', 'E', 8, 22)` stands for Orders!$E$8:$E$22. */
export function naming(sheet: string): (name: string, column: string, row: number, lastRow?: number) => DefinedName {
  return (name, column, row, lastRow) => {
    const last = lastRow === undefined ? '' : `:$${column}$${lastRow}`
    return { name, refersTo: `${sheet}!$${column}$${row}${last}` }
  }
}

/** Names cells of one row, or of several, from one column to another. */
export function namingAcross(
  sheet: string,
  firstColumn: string,
  lastColumn: string,
): (name: string, row: number, lastRow?: number) => DefinedName {
  return (name, row, lastRow = row) => ({ name, refersTo: `${sheet}!$${firstColumn}$${row}:$${lastColumn}$${lastRow}` })
}
