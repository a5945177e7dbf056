/** Carries a calculation of single cells out on blocks, as Excel does. */
import {
  ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
} from '@univerjs/engine-formula'

/** The place that the function is asked from becomes that of the block. */
export type Asked = Pick<BaseFunction, 'unitId' | 'subUnitId' | 'row' | 'column'>

export type CellCalculation = (...cells: readonly BaseValueObject[]) => BaseValueObject

export function cellByCell(
  asked: Asked,
  given: readonly BaseValueObject[],
  calculate: CellCalculation,
): BaseValueObject {
  if (!given.some((one) => one.isArray())) return calculate(...given)
  const rows = Math.max(1, ...given.map(rowsOf))
  const columns = Math.max(1, ...given.map(columnsOf))
  const at = (row: number, column: number) => calculate(...given.map((one) => cellOf(one, row, column)))
  return blockOf(asked, matrix(rows, columns, at))
}

export function blockOf(asked: Asked, cells: BaseValueObject[][]): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: cells,
    rowCount: cells.length,
    columnCount: cells[0]?.length ?? 0,
    unitId: asked.unitId ?? '',
    sheetId: asked.subUnitId ?? '',
    row: asked.row,
    column: asked.column,
  })
}

function matrix<Cell>(rows: number, columns: number, cell: (row: number, column: number) => Cell): Cell[][] {
  const inRow = (row: number) => Array.from({ length: columns }, (_cell, column) => cell(row, column))
  return Array.from({ length: rows }, (_row, row) => inRow(row))
}

export function rowsOf(value: BaseValueObject): number {
  return value.isArray() ? (value as ArrayValueObject).getRowCount() : 1
}

export function columnsOf(value: BaseValueObject): number {
  return value.isArray() ? (value as ArrayValueObject).getColumnCount() : 1
}

/** One row, one column or one cell stands beside every one of the other side, as in Excel. */
export function cellOf(value: BaseValueObject, row: number, column: number): BaseValueObject {
  if (!value.isArray()) return value
  const array = value as ArrayValueObject
  const inRow = array.getRowCount() === 1 ? 0 : row
  const inColumn = array.getColumnCount() === 1 ? 0 : column
  if (inRow >= array.getRowCount() || inColumn >= array.getColumnCount()) return ErrorValueObject.create(ErrorType.NA)
  return array.getValueOrDefault(inRow, inColumn) ?? NullValueObject.create()
}

/** The number of a cell; that of a text which is none, and an error, are errors. A blank is 0. */
export function numberOf(cell: BaseValueObject): number | BaseValueObject {
  const number = cell.isNumber() ? cell : cell.convertToNumberObjectValue()
  return number.isError() ? number : Number(number.getValue())
}

/** Carries out a calculation with numbers; the first error among what is given is the answer. */
export function numbersByCell(
  asked: Asked,
  given: readonly BaseValueObject[],
  calculate: (...numbers: readonly number[]) => BaseValueObject,
): BaseValueObject {
  return cellByCell(asked, given, (...cells) => {
    const error = cells.find((cell) => cell.isError())
    if (error) return error
    const numbers = cells.map(numberOf)
    const none = numbers.find((number) => typeof number !== 'number')
    return none ?? calculate(...(numbers as number[]))
  })
}

export function firstOf(value: BaseValueObject): BaseValueObject {
  return cellOf(value, 0, 0)
}
