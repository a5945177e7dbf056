import { CellValueType, type ICellData, type Injector } from '@univerjs/core'
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { commaNumberOf, pointNumber } from '../../derived/decimalComma'

/** Before the grid's own reading, which knows the point only and takes 15,5 % for 155 %. */
const first = 1
/** After the grid chose what the editor shows, and before it hands that over. */
const last = -0.5

/**
 * Lets the grid read numbers with the mark that its user types, and show them so in the cell's editor. Without it
 * 1,5 would be a text that sums leave out. Formulas keep their point.
 */
export function readTypedNumbers(injector: Injector): (mark: DecimalMark) => void {
  let mark: DecimalMark = '.'
  const { writeCellInterceptor } = injector.get(SheetInterceptorService)
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, _place, next) => next(mark === ',' && cell ? withPoint(cell) : cell),
  })
  writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: last,
    handler: (cell, _place, next) => next(mark === ',' && cell ? withComma(cell) : cell),
  })
  return (chosen) => {
    mark = chosen
  }
}

function withPoint<Cell extends ICellData>(cell: Cell): Cell {
  if (typeof cell.v !== 'string' || cell.f || cell.p) return cell
  const read = pointNumber(cell.v)
  if (/^[+-]?\d+(\.\d+)?\s*%?$/.test(read)) return { ...cell, v: read }
  // Whoever writes 1,5 writes the third of May as 3.5.2026.
  const [, day, month, year] = /^\s*(\d{1,2})\.(\d{1,2})\.(\d{4})\s*$/.exec(cell.v) ?? []
  return year === undefined ? cell : { ...cell, v: `${year}-${month}-${day}` }
}

function withComma<Cell extends ICellData>(cell: Cell): Cell {
  const isNumber = cell.t === CellValueType.NUMBER && !cell.f && /^-?\d+\.\d+%?$/.test(String(cell.v))
  return isNumber ? { ...cell, v: commaNumberOf(String(cell.v)) } : cell
}
