/**
 * Gives 0 where the result of a formula is a blank cell, as in Excel. The grid's engine left such a result blank until
 * it was stored: =A1 of an empty A1, and IF, IFERROR, INDEX, VLOOKUP or XLOOKUP that came to one, were left out by
 * COUNT, AVERAGE and MIN when a workbook was opened, and counted as 0 after the next edit. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  IFormulaRuntimeService,
  NumberValueObject,
} from '@univerjs/engine-formula'

export function countBlankResults(injector: Injector): void {
  const runtime = injector.get(IFormulaRuntimeService)
  const setResult = runtime.setRuntimeData.bind(runtime)
  runtime.setRuntimeData = (result) => setResult(withoutBlanks(result as BaseValueObject | BaseReferenceObject))
}

function withoutBlanks(result: BaseValueObject | BaseReferenceObject): BaseValueObject {
  const value = result.isReferenceObject()
    ? (result as BaseReferenceObject).toArrayValueObject()
    : (result as BaseValueObject)
  if (!value.isArray()) return value.isNull() ? NumberValueObject.create(0) : value
  const array = value as ArrayValueObject
  const rows = array.getArrayValue()
  const isBlank = (row: number, column: number) => rows[row]?.[column]?.isNull() ?? true
  const [rowCount, columnCount] = [array.getRowCount(), array.getColumnCount()]
  const all = Array.from({ length: rowCount }, (_row, row) =>
    Array.from({ length: columnCount }, (_cell, column) =>
      isBlank(row, column) ? NumberValueObject.create(0) : rows[row]![column]!,
    ),
  )
  return ArrayValueObject.create({
    calculateValueList: all,
    rowCount,
    columnCount,
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  })
}
