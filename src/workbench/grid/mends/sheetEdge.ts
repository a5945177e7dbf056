/**
 * Reads cells beyond the rows and columns that the grid happens to have as blank, as far as a sheet of Excel goes. The
 * grid's engine gave #NAME? for them, and ISBLANK(A5000) was FALSE. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { BaseReferenceObject } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'
import { mostOfSheet } from './sizes'

type Exceeds = (this: BaseReferenceObject) => boolean

export function readToSheetEdge(injector: Injector): void {
  const owner = BaseReferenceObject.prototype as { isExceedRange: Exceeds }
  replaceShared(injector, owner, 'isExceedRange', beyondSheet)
}

function beyondSheet(): Exceeds {
  return function isBeyondSheet() {
    const { startRow, startColumn, endRow, endColumn } = this.getRangePosition()
    return startRow < 0 || startColumn < 0 || endRow >= mostOfSheet.rows || endColumn >= mostOfSheet.columns
  }
}
