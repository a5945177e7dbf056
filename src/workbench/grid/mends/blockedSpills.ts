/**
 * Leaves alone what stands in the way of a spill. Where a formula cannot spill, the grid's engine shows #SPILL!, and
 * writes what the cells in its way held before over their new results, or an empty text over what another formula
 * spilled there: a total of these was too low, and stayed so once the way was free. Where two formulas came to spill
 * into one cell in the same calculation, both did, and one erased the other without an error. Later it took all cells
 * into which a blocked formula would have spilled for its own, and emptied them. Seen with univer 0.25.1.
 */
import {
  type ICellData,
  type Injector,
  type IRange,
  type IUnitRange,
  type Nullable,
  ObjectMatrix,
} from '@univerjs/core'
import {
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
} from '@univerjs/engine-formula'

/** The private parts of the engine that are repaired here. */
type Runtime = IFormulaRuntimeService & {
  readonly currentRowCount: number
  readonly currentColumnCount: number
  _checkIfArrayFormulaRangeHasData(unitId: string, sheetId: string, row: number, column: number, range: IRange): boolean
  /** Takes every formula for one that spills, unless it cannot in this calculation. */
  _isInOtherArrayFormulaRange(): boolean
  _checkIfArrayFormulaExceeded(rowCount: number, columnCount: number, range: IRange): boolean
}

export function guardBlockedSpills(injector: Injector): void {
  showBlocked(injector)
  keepOthersCells(injector.get(FormulaDataModel))
}

function showBlocked(injector: Injector): void {
  const runtime = injector.get(IFormulaRuntimeService) as Runtime
  const current = injector.get(IFormulaCurrentConfigService)
  runtime._isInOtherArrayFormulaRange = () => false
  const setResult = runtime.setRuntimeData.bind(runtime)
  runtime.setRuntimeData = (result) => {
    const range = spillOf(runtime, result as BaseValueObject | BaseReferenceObject)
    if (range === undefined || !isBlocked(runtime, current, range)) {
      setResult(result)
      return
    }
    setResult(ErrorValueObject.create(ErrorType.SPILL))
    reserve(runtime, range)
  }
}

/** Undefined for a single cell. */
function spillOf(runtime: Runtime, result: BaseValueObject | BaseReferenceObject): IRange | undefined {
  if (!result.isReferenceObject() && !result.isArray()) return undefined
  const { startRow, startColumn, endRow, endColumn } = (result as BaseReferenceObject).getRangePosition()
  if (startRow === endRow && startColumn === endColumn) return undefined
  const { currentRow, currentColumn } = runtime
  return {
    startRow: currentRow,
    startColumn: currentColumn,
    endRow: currentRow + endRow - startRow,
    endColumn: currentColumn + endColumn - startColumn,
  }
}

function isBlocked(runtime: Runtime, current: IFormulaCurrentConfigService, range: IRange): boolean {
  const { currentUnitId, currentSubUnitId, currentRow, currentColumn, currentRowCount, currentColumnCount } = runtime
  return (
    runtime._checkIfArrayFormulaExceeded(currentRowCount, currentColumnCount, range) ||
    runtime._checkIfArrayFormulaRangeHasData(currentUnitId, currentSubUnitId, currentRow, currentColumn, range) ||
    otherSpills(runtime, current).some((other) => overlaps(other, range))
  )
}

/** Where other formulas spill: those that are calculated by now, and of the others, those that did before. */
function otherSpills(runtime: Runtime, current: IFormulaCurrentConfigService): readonly IRange[] {
  const { currentUnitId, currentSubUnitId, currentRow, currentColumn } = runtime
  const results = runtime.getUnitData()[currentUnitId]?.[currentSubUnitId]
  const resultsBefore = current.getArrayFormulaCellData()[currentUnitId]?.[currentSubUnitId]
  const others: IRange[] = []
  const take = (ranges: Spills, isThere: (row: number, column: number) => boolean): void => {
    new ObjectMatrix<IRange>(ranges[currentUnitId]?.[currentSubUnitId]).forValue((row, column, range) => {
      if ((row !== currentRow || column !== currentColumn) && isThere(row, column)) others.push(range)
    })
  }
  const isSpilled = (cell: Nullable<ICellData>) => cell?.v !== ErrorType.SPILL
  take(runtime.getUnitArrayFormula(), (row, column) => isSpilled(results?.getValue(row, column)))
  take(
    current.getArrayFormulaRange(),
    (row, column) => !results?.getValue(row, column) && isSpilled(resultsBefore?.getValue(row, column)),
  )
  return others
}

type Spills = ReturnType<IFormulaCurrentConfigService['getArrayFormulaRange']>

function overlaps(one: IRange, other: IRange): boolean {
  return (
    one.startRow <= other.endRow &&
    other.startRow <= one.endRow &&
    one.startColumn <= other.endColumn &&
    other.startColumn <= one.endColumn
  )
}

/** By this the engine knows to calculate the formula again, once its way is free. */
function reserve(runtime: Runtime, range: IRange): void {
  const { currentUnitId: unit, currentSubUnitId: sheet, currentRow: row, currentColumn: column } = runtime
  const error = runtime.getUnitData()[unit]?.[sheet]?.getValue(row, column)
  const ranges = runtime.getUnitArrayFormula()[unit]?.[sheet]
  new ObjectMatrix<IRange>(ranges).setValue(row, column, range)
  const cells = runtime.getRuntimeArrayFormulaCellData()[unit]?.[sheet]
  cells?.setValue(row, column, error)
}

/** Wherever the engine empties the cells of a spill, a blocked formula has only its own. */
function keepOthersCells(model: FormulaDataModel): void {
  const clear = model.clearPreviousArrayFormulaCellData.bind(model)
  model.clearPreviousArrayFormulaCellData = (cells) => whileNarrow(model, () => clear(cells))
  const merge = model.mergeArrayFormulaCellData.bind(model)
  model.mergeArrayFormulaCellData = (cells) => whileNarrow(model, () => merge(cells))
  const update = model.updateArrayFormulaCellData.bind(model)
  model.updateArrayFormulaCellData = (...given) => whileNarrow(model, () => update(...given))
}

function whileNarrow<Result>(model: FormulaDataModel, act: () => Result): Result {
  const ranges = blockedSpills(model.getArrayFormulaRange(), model.getArrayFormulaCellData()).map(({ range }) => range)
  const ends = ranges.map(({ endRow, endColumn }) => ({ endRow, endColumn }))
  for (const range of ranges) Object.assign(range, { endRow: range.startRow, endColumn: range.startColumn })
  const result = act()
  ranges.forEach((range, place) => Object.assign(range, ends[place]))
  return result
}

type Ranges = ReturnType<FormulaDataModel['getArrayFormulaRange']>
type Cells = ReturnType<FormulaDataModel['getArrayFormulaCellData']>

/** Where formulas would spill that cannot. */
export function blockedSpills(rangesOf: Ranges, cellsOf: Cells): readonly IUnitRange[] {
  const blocked: IUnitRange[] = []
  for (const [unitId, sheets] of Object.entries(rangesOf)) {
    for (const [sheetId, ofSheet] of Object.entries(sheets ?? {})) {
      const cells = cellsOf[unitId]?.[sheetId]
      new ObjectMatrix<IRange>(ofSheet ?? {}).forValue((row, column, range) => {
        if (cells?.[row]?.[column]?.v === ErrorType.SPILL) blocked.push({ unitId, sheetId, range })
      })
    }
  }
  return blocked
}
