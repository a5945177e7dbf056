/**
 * The comparisons = <> < > <= >= of the grid's engine, cell by cell. Its own look cells up in an index that holds no
 * errors: once a cell had been compared, a next formula took its error for a value that is not equal and not less, and
 * =IF(A1<B1,"no","yes") said "yes" of an error. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  IFunctionService,
  NullValueObject,
} from '@univerjs/engine-formula'

type Comparison = Parameters<BaseValueObject['compare']>[1]

class CompareCells extends BaseFunction {
  private comparison: Comparison | undefined

  /** The engine says so before each calculation. */
  setCompareType(comparison: Comparison): void {
    this.comparison = comparison
  }

  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    if (!left.isArray() && !right.isArray()) return this.compared(left, right)
    const rows = Math.max(rowsOf(left), rowsOf(right))
    const columns = Math.max(columnsOf(left), columnsOf(right))
    return ArrayValueObject.create({
      calculateValueList: matrix(rows, columns, (...at) => this.compared(cellOf(left, ...at), cellOf(right, ...at))),
      rowCount: rows,
      columnCount: columns,
      unitId: this.unitId ?? '',
      sheetId: this.subUnitId ?? '',
      row: this.row,
      column: this.column,
    })
  }

  private compared(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    if (left.isError()) return left
    return right.isError() ? right : left.compare(right, this.comparison!)
  }
}

export function compareCells(injector: Injector): void {
  // The name by which the engine finds its own comparisons.
  injector.get(IFunctionService).registerExecutors(new CompareCells('COMPARE'))
}

function matrix<Cell>(rows: number, columns: number, cell: (row: number, column: number) => Cell): Cell[][] {
  const inRow = (row: number) => Array.from({ length: columns }, (_cell, column) => cell(row, column))
  return Array.from({ length: rows }, (_row, row) => inRow(row))
}

function rowsOf(value: BaseValueObject): number {
  return value.isArray() ? (value as ArrayValueObject).getRowCount() : 1
}

function columnsOf(value: BaseValueObject): number {
  return value.isArray() ? (value as ArrayValueObject).getColumnCount() : 1
}

/** One row, one column or one cell stands beside every one of the other side, as in Excel. */
function cellOf(value: BaseValueObject, row: number, column: number): BaseValueObject {
  if (!value.isArray()) return value
  const array = value as ArrayValueObject
  const inRow = array.getRowCount() === 1 ? 0 : row
  const inColumn = array.getColumnCount() === 1 ? 0 : column
  if (inRow >= array.getRowCount() || inColumn >= array.getColumnCount()) return ErrorValueObject.create(ErrorType.NA)
  return array.getValueOrDefault(inRow, inColumn) ?? NullValueObject.create()
}
