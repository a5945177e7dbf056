/**
 * Sizes of blocks. The grid's engine left the rest of the longer of two columns out of SUMPRODUCT, where Excel gives
 * #VALUE!, and ROWS(C:C) counted the rows that the grid happens to have. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from '@univerjs/engine-formula'
import { columnsOf, rowsOf } from './cellByCell'
import { replaceFunctions } from './replaced'

/** Of a sheet of Excel. */
export const mostOfSheet = { rows: 2 ** 20, columns: 2 ** 14 }

export function mindSizes(injector: Injector): void {
  replaceFunctions(injector, ['SUMPRODUCT'], (calculate) => (...given) => {
    const sizes = new Set(given.map((one) => `${rowsOf(one)} ${columnsOf(one)}`))
    return sizes.size > 1 && !given.some((one) => one.isError())
      ? ErrorValueObject.create(ErrorType.VALUE)
      : calculate(...given)
  })
  replaceFunctions(injector, ['ROWS', 'COLUMNS'], (count, asked) => {
    asked.needsReferenceObject = true
    return (given: BaseValueObject | BaseReferenceObject) => {
      if (!given.isReferenceObject()) return count(given as BaseValueObject)
      const { startRow, endRow, startColumn, endColumn } = (given as BaseReferenceObject).getRangeData()
      // A whole column has no first row, which is NaN.
      const [first, last, all] =
        asked.name === 'ROWS' ? [startRow, endRow, mostOfSheet.rows] : [startColumn, endColumn, mostOfSheet.columns]
      return NumberValueObject.create(Number.isNaN(first) ? all : last - first + 1)
    }
  })
}
