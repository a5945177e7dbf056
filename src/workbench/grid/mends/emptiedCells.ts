/**
 * Empties a cell whose editor was emptied. The grid would leave an empty text there, which is not nothing: the line
 * below the sheet would not say that the cell is empty, and a workbook with nothing else in it would not count as
 * empty. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core'

/** Before what is typed is read as a number, whose priority is 1. */
const first = 2

export function takeEmptiedCells(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, _place, next) => next(cell && cell.v === '' && !cell.f && !cell.p ? { ...cell, v: null } : cell),
  })
}
