/** What stands in the cells of a sheet: the one reader of the grid and of the engine without a screen. */
import { BooleanNumber, type ICellData, type Injector, type Nullable, type Worksheet } from '@univerjs/core'
import { FormulaDataModel } from '@univerjs/engine-formula'
import { addressOf } from '../../formula/address'
import type { OpenCell, OpenSheet } from '../../workbook/openBook'
import type { KeptWithCell } from './bookToGrid'
import type { CellCalls, Place } from './cellCalls'
import { cellResult, type CellResult } from './cellResult'
import { spillRange } from './spillRange'

/** Typed cells, results and the cells that they spill over, row by row; of all rows, or from one to another. */
export function readCells(
  injector: Injector,
  worksheet: Worksheet,
  calls: CellCalls,
  { first, last } = { first: 0, last: Infinity },
): OpenSheet['cells'] {
  const at = { workbook: worksheet.getUnitId(), sheet: worksheet.getSheetId() }
  const written = worksheet.getCellMatrix().getMatrix()
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[at.workbook]?.[at.sheet]
  const cells = new Map<string, OpenCell>()
  for (const row of numbersIn(written, spilled).filter((one) => one >= first && one <= last)) {
    for (const column of numbersIn(written[row], spilled?.[row])) {
      const cell = readCell(injector, worksheet, calls, { ...at, row, column })
      if (cell !== undefined) cells.set(addressOf(row, column), cell)
    }
  }
  return cells
}

/** The data behind the cell: what the grid draws is text, already formatted. */
export function resultAt(injector: Injector, worksheet: Worksheet, place: Place): CellResult {
  const { workbook, sheet, row, column } = place
  const own = worksheet.getCellRaw(row, column)
  const isFilled = own?.v !== undefined && own.v !== null
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[workbook]?.[sheet]
  return cellResult(isFilled ? own : spilled?.[row]?.[column])
}

function readCell(injector: Injector, worksheet: Worksheet, calls: CellCalls, place: Place): OpenCell | undefined {
  const { workbook, sheet, row, column } = place
  const own = worksheet.getCellRaw(row, column)
  const { value, error } = resultAt(injector, worksheet, place)
  const formula = own?.f ?? ''
  if (formula === '' && value === null && error === undefined) return undefined
  const spills = injector.get(FormulaDataModel).getArrayFormulaRange()[workbook]?.[sheet]
  const spill = formula === '' ? undefined : spillRange(spills?.[row]?.[column])
  const sentence = error && calls.sentence(place, error)
  return {
    row,
    column,
    formula,
    value: error === undefined ? value : { kind: 'cellError', code: error },
    calls: callsAt(calls, place),
    ...(isHeading(worksheet, own) && { isHeading: true }),
    ...(sentence && { sentence }),
    ...(spill && { spill }),
  }
}

export function callsAt(calls: CellCalls, place: Place): OpenCell['calls'] {
  return calls.of(place).map(({ definition, args }) => ({ id: definition.id, args }))
}

/** By our own look, and of a cell without one by its letters: what was pasted keeps them. */
function isHeading(worksheet: Worksheet, cell: Nullable<ICellData>): boolean {
  const { look } = (cell?.custom ?? {}) as KeptWithCell
  if (look !== undefined) return look === 'heading'
  const style = typeof cell?.s === 'string' ? worksheet.getStyleDataByHash(cell.s) : cell?.s
  return style?.bl === BooleanNumber.TRUE
}

function numbersIn(...objects: readonly Nullable<object>[]): readonly number[] {
  return [...new Set(objects.flatMap((object) => Object.keys(object ?? {}).map(Number)))].sort((a, b) => a - b)
}
