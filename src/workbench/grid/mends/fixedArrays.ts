/**
 * Fills the cells that an array formula of fixed size was entered into (Ctrl+Shift+Enter), no more and no fewer: one
 * row, one column or one cell is repeated, and beyond the result stands #N/A, as Microsoft's "Guidelines and examples
 * of array formulas" has it. The grid's engine has spills only: {=A1:A3} in one cell was #SPILL! where something stood
 * below, and {=A1*7} in three cells left two of them empty. Seen with univer 0.25.1.
 */
import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core'
import {
  type BaseReferenceObject,
  type BaseValueObject,
  IFormulaRuntimeService,
  type IFormulaRuntimeService as Runtime,
} from '@univerjs/engine-formula'
import type { KeptWithCell } from '../bookToGrid'
import { blockOf, cellOf, firstOf } from './cellByCell'

type Result = BaseValueObject | BaseReferenceObject

export function fillFixedArrays(injector: Injector): void {
  const runtime = injector.get(IFormulaRuntimeService)
  const workbooks = injector.get(IUniverInstanceService)
  const sizeAt = ({ currentUnitId, currentSubUnitId, currentRow, currentColumn }: Runtime): KeptWithCell['fills'] => {
    const sheet = workbooks
      .getUnit<Workbook>(currentUnitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(currentSubUnitId)
    return ((sheet?.getCellRaw(currentRow, currentColumn)?.custom ?? {}) as KeptWithCell).fills
  }
  const setResult = runtime.setRuntimeData.bind(runtime)
  runtime.setRuntimeData = (result) => {
    const size = sizeAt(runtime)
    setResult(size === undefined ? result : filled(result as Result, size, runtime))
  }
}

function filled(
  result: Result,
  { rows, columns }: NonNullable<KeptWithCell['fills']>,
  runtime: Runtime,
): BaseValueObject {
  const value = result.isReferenceObject()
    ? (result as BaseReferenceObject).toArrayValueObject()
    : (result as BaseValueObject)
  if (rows === 1 && columns === 1) return firstOf(value)
  const { currentUnitId: unitId, currentSubUnitId: subUnitId, currentRow: row, currentColumn: column } = runtime
  const cells = Array.from({ length: rows }, (_row, inRow) =>
    Array.from({ length: columns }, (_column, inColumn) => cellOf(value, inRow, inColumn)),
  )
  return blockOf({ unitId, subUnitId, row, column }, cells)
}
