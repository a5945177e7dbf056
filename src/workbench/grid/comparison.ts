/**
 * The comparisons = <> < > <= >= of the grid's engine, cell by cell. Its own look cells up in an index that holds no
 * errors: once a cell had been compared, a next formula took its error for a value that is not equal and not less, and
 * =IF(A1<B1,"no","yes") said "yes" of an error.
 */
import type { Ctor } from '@univerjs/core'
import { ArrayValueObject, BaseFunction, type BaseValueObject, ErrorType, ErrorValueObject, NullValueObject } from '@univerjs/engine-formula'

type Comparison = Parameters<BaseValueObject['compare']>[1]

class CompareCells extends BaseFunction {
  private comparison: Comparison | undefined

  /** The engine says so before each calculation. */
  setCompareType(comparison: Comparison): void {
    this.comparison = comparison
  }

  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    if (!left.isArray() && !right.isArray()) return this.compared(left, right)
    const [rows, columns] = [Math.max(rowsOf(left), rowsOf(right)), Math.max(columnsOf(left), columnsOf(right))]
    return ArrayValueObject.create({
      calculateValueList: Array.from({ length: rows }, (_row, row) => Array.from({ length: columns }, (_column, column) => this.compared(cellOf(left, row, column), cellOf(right, row, column)))),
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

/** Under the name by which the engine finds its own. */
export const comparison: [Ctor<BaseFunction>, string] = [CompareCells, 'COMPARE']

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
  const [inRow, inColumn] = [array.getRowCount() === 1 ? 0 : row, array.getColumnCount() === 1 ? 0 : column]
  if (inRow >= array.getRowCount() || inColumn >= array.getColumnCount()) return ErrorValueObject.create(ErrorType.NA)
  return array.getValueOrDefault(inRow, inColumn) ?? NullValueObject.create()
}
