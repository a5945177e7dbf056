/**
 * Rows that are inserted among those of a table get the formulas of its calculated columns, the looks and what may be
 * typed, as in Excel's tables; without them a row that was filled in would be left out of all sums. They come in one
 * undo with the row.
 */
import {
  Direction,
  type ICellData,
  ICommandService,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Workbook,
  type Worksheet,
} from '@univerjs/core'
import { IDefinedNamesService } from '@univerjs/engine-formula'
import {
  type IInsertRowCommandParams,
  InsertRowByRangeCommand,
  InsertRowCommand,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from '@univerjs/preset-sheets-core'
import { addressOf, type Block } from '../../formula/address'
import { rangesRead } from '../../formula/rangesRead'
import { filledInto } from '../../formula/relativeFormula'
import { isTableId } from './bookToGrid'

interface Insertion extends IInsertRowCommandParams {
  /** The row that inserted ones are like where no table says it. */
  readonly likeRow?: number
}

export function fillInsertedRows(injector: Injector): void {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id === InsertRowCommand.id) keepInside(injector, params as Insertion)
  })
  injector.get(SheetInterceptorService).interceptAfterCommand({
    getMutations: ({ id, params }) => ({
      undos: [],
      redos: id === InsertRowCommand.id ? filling(injector, params as Insertion) : [],
    }),
  })
}

/** Inserts rows that are like the one above them. */
export function insertRowsLike(injector: Injector, worksheet: Worksheet, row: number, count: number): boolean {
  const [unitId, subUnitId] = [worksheet.getUnitId(), worksheet.getSheetId()]
  const range: IRange = {
    startRow: row,
    endRow: row + count - 1,
    startColumn: 0,
    endColumn: worksheet.getColumnCount() - 1,
  }
  const insertion: Insertion = { unitId, subUnitId, range, direction: Direction.UP, likeRow: row - 1 }
  return injector.get(ICommandService).syncExecuteCommand(InsertRowByRangeCommand.id, insertion)
}

/**
 * The ranges that read a table grow by rows between its first and its last one: what was to come above the first comes
 * below it, and what was to come below the last comes above it.
 */
function keepInside(injector: Injector, insertion: Insertion): void {
  const { range, direction } = insertion
  const isAtEdge = ({ top, bottom }: Block) =>
    bottom > top && range.startRow === (direction === Direction.UP ? top : bottom + 1)
  if (!tablesOf(injector, insertion).some(isAtEdge)) return
  const rows = direction === Direction.UP ? 1 : -1
  range.startRow += rows
  range.endRow += rows
  // The looks of the row that would have been above: the headings.
  delete insertion.cellValue
}

/** Once the rows are there, and formulas read the cells where they stand now. */
function filling(injector: Injector, insertion: Insertion) {
  const { unitId, subUnitId, range, likeRow } = insertion
  const worksheet = sheetOf(injector, insertion)
  const table = tablesOf(injector, insertion).find(
    ({ top, bottom }) =>
      range.startRow >= top && range.endRow <= bottom && range.endRow - range.startRow < bottom - top,
  )
  const { startColumn: left, endColumn: right } = range
  const block = table ?? (likeRow === undefined ? undefined : { top: likeRow, bottom: likeRow, left, right })
  if (!worksheet || !block) return []
  const cellValue: Record<number, Record<number, ICellData>> = {}
  for (let row = range.startRow; row <= range.endRow; row += 1) cellValue[row] = rowLike(worksheet, block, range, row)
  return [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }]
}

/** As nobody has typed in it yet: the formulas of the other rows, and how their cells look. */
function rowLike(worksheet: Worksheet, { top, left, bottom, right }: Block, inserted: IRange, row: number) {
  const others = Array.from({ length: bottom - top + 1 }, (_row, below) => top + below).filter(
    (other) => other < inserted.startRow || other > inserted.endRow,
  )
  // From the row above on, then upwards; where there is none above, from below.
  const nearest = [...others.filter((other) => other < row).reverse(), ...others.filter((other) => other > row)]
  const cells: Record<number, ICellData> = {}
  for (let column = left; column <= right; column += 1) {
    const cell = worksheet.getCellRaw(nearest[0]!, column)
    const calculated = nearest.filter((other) => worksheet.getCellRaw(other, column)?.f)
    // A formula in a box that is meant to be typed into is its own row's.
    const from = calculated.length > others.length / 2 ? calculated[0] : undefined
    const formula = from === undefined ? undefined : worksheet.getCellRaw(from, column)!.f!
    if (!cell && formula === undefined) continue
    cells[column] = {
      ...(cell?.s && { s: cell.s }),
      ...(cell?.custom && { custom: cell.custom }),
      ...(formula && { f: filledInto(formula, addressOf(from!, column), addressOf(row, column)) }),
    }
  }
  return cells
}

/** Without their headings. */
function tablesOf(injector: Injector, insertion: Insertion): readonly Block[] {
  const sheet = sheetOf(injector, insertion)?.getName()
  const names = Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(insertion.unitId) ?? {})
  return names
    .filter(({ id }) => isTableId(id))
    .flatMap(({ formulaOrRefString }) => rangesRead(`=${formulaOrRefString}`, '', new Map()))
    .filter((range) => range.sheet === sheet)
}

function sheetOf(injector: Injector, { unitId, subUnitId }: Insertion): Worksheet | undefined {
  return injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId) ?? undefined
}
