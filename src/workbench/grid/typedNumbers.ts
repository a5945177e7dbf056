import { CellValueType, type ICellData, type Injector } from '@univerjs/core'
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { commaNumberOf } from '../../formula/decimalComma'
import { entryForGrid } from './entryForGrid'

/** Before the grid's own reading. */
const first = 1
/** After the grid chose what the editor shows, and before it hands that over. */
const last = -0.5

/** Lets the grid read numbers with the mark that its user types, and show them so in the cell's editor. Formulas keep their point. */
export function readTypedNumbers(injector: Injector, mark: () => DecimalMark): void {
  const { writeCellInterceptor } = injector.get(SheetInterceptorService)
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, _place, next) => next(cell && asRead(cell, mark())),
  })
  writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: last,
    handler: (cell, _place, next) => next(mark() === ',' && cell ? withComma(cell) : cell),
  })
}

function asRead<Cell extends ICellData>(cell: Cell, mark: DecimalMark): Cell {
  if (typeof cell.v !== 'string' || cell.f || cell.p) return cell
  // A space behind a name would make it another one, which nobody sees.
  const v = cell.v.trim() === '' ? cell.v : cell.v.trim()
  const entry = entryForGrid(v, mark)
  return entry === undefined ? { ...cell, v, t: CellValueType.FORCE_STRING } : { ...cell, v: entry }
}

function withComma<Cell extends ICellData>(cell: Cell): Cell {
  const isNumber = cell.t === CellValueType.NUMBER && !cell.f && /^-?\d+\.\d+%?$/.test(String(cell.v))
  return isNumber ? { ...cell, v: commaNumberOf(String(cell.v)) } : cell
}
