/**
 * Calculates a book without a screen, with the grid's own formula engine and the same functions. The engine alone
 * is enough: the rest of the grid draws, and does not load in Node.
 */
import {
  ICommandService, type ICellData, type Injector, type IObjectMatrixPrimitiveType, IUniverInstanceService, LocaleType, LogLevel, type Nullable,
  Univer, UniverInstanceType, Workbook, type Worksheet,
} from '@univerjs/core'
import {
  FormulaDataModel, IDefinedNamesService, type ISetFormulaCalculationResultMutation,
  SetFormulaCalculationResultMutation, SetFormulaCalculationStartMutation, UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula'
import { catalogue } from '../../functions/catalogue'
import type { Book } from '../../workbook/book'
import type { CallInCell } from '../../workbook/openBook'
import type { CalculatedBook, CalculatedCell, CalculatedSheet, CellRefusal } from '../../workbook/calculated'
import { addressOf } from '../../formula/address'
import { bookToGrid, gridNames } from '../grid/bookToGrid'
import { cellResult } from '../grid/cellResult'
import { customFunctions } from '../grid/customFunctions'
import { engineMends } from '../grid/mends/engineMends'
import { nextCalculation } from '../grid/nextCalculation'
import { spillRange } from '../grid/spillRange'
import { CellCalls, keepCellCalls } from '../grid/cellCalls'

const workbook = 'calculated'

let previous: Promise<unknown> = Promise.resolve()

/** One book at a time: all engines of a process share the caches that guardFormulaCaches empties. */
export function calculateBook(book: Book): Promise<CalculatedBook> {
  const calculated = previous.then(() => calculate(book))
  previous = calculated.catch(() => undefined)
  return calculated
}

async function calculate(book: Book): Promise<CalculatedBook> {
  const calls = new CellCalls()
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.ERROR })
  try {
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: customFunctions(catalogue, calls).function })
    const injector = univer.__getInjector()
    injector.get(IUniverInstanceService).registerCtorForType(UniverInstanceType.UNIVER_SHEET, Workbook)
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, bookToGrid(book, workbook))
    // With its first workbook the engine registers functions of its own, which one of the mends replaces.
    for (const mend of engineMends) mend(injector)
    keepCellCalls(injector, calls)
    injector.get(IDefinedNamesService).registerDefinedNames(workbook, gridNames(book))
    await calculateAll(injector)
    return read(injector, calls)
  } finally {
    univer.dispose()
  }
}

async function calculateAll(injector: Injector): Promise<void> {
  const commands = injector.get(ICommandService)
  commands.onCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationResultMutation.id) keepResults(injector, params as ISetFormulaCalculationResultMutation)
  })
  const calculated = nextCalculation(injector)
  await commands.executeCommand(SetFormulaCalculationStartMutation.id, { forceCalculation: true }, { onlyLocal: true })
  await calculated
}

/** In the cells, where a calculation that goes on reads them. */
function keepResults(injector: Injector, { unitData }: ISetFormulaCalculationResultMutation): void {
  for (const worksheet of sheetsOf(injector)) {
    for (const [row, columns] of Object.entries(unitData[workbook]?.[worksheet.getSheetId()] ?? {})) {
      for (const [column, result] of Object.entries<Nullable<ICellData>>(columns ?? {})) {
        const place = [Number(row), Number(column)] as const
        worksheet.getCellMatrix().setValue(...place, { ...worksheet.getCellRaw(...place), ...result })
      }
    }
  }
}

function sheetsOf(injector: Injector): readonly Worksheet[] {
  return injector.get(IUniverInstanceService).getUnit<Workbook>(workbook, UniverInstanceType.UNIVER_SHEET)?.getSheets() ?? []
}

function read(injector: Injector, calls: CellCalls): CalculatedBook {
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[workbook]
  const spillRanges = injector.get(FormulaDataModel).getArrayFormulaRange()[workbook]
  const found: CellRefusal[] = []
  const sheets: CalculatedSheet[] = sheetsOf(injector).map((worksheet) => {
    const sheet = worksheet.getSheetId()
    const cells = new Map<string, CalculatedCell>()
    const callsByCell = new Map<string, readonly CallInCell[]>()
    const layers = [worksheet.getCellMatrix().getMatrix(), spilled?.[sheet]]
    for (const { row, column, cell } of topmost(layers)) {
      const shown = cellResult(cell)
      if (shown.value === null && shown.error === undefined) continue
      const sentence = shown.error && calls.sentence({ workbook, sheet, row, column }, shown.error)
      const spill = spillRange(spillRanges?.[sheet]?.[row]?.[column])
      const made = calls.of({ workbook, sheet, row, column })
      if (made.length > 0) callsByCell.set(addressOf(row, column), made.map(({ definition, args }) => ({ id: definition.id, args })))
      cells.set(addressOf(row, column), { ...shown, ...(spill && { spill }), ...(sentence && { sentence }) })
      if (shown.error && sentence) found.push({ sheet: worksheet.getName(), address: addressOf(row, column), code: shown.error, sentence })
    }
    return { name: worksheet.getName(), cells, calls: callsByCell }
  })
  return { sheets, refusals: found }
}

type Layer = Nullable<IObjectMatrixPrimitiveType<Nullable<ICellData>>>

/** Row by row, what lies on top in each cell: spilled cells over typed ones and results. */
function* topmost(layers: readonly Layer[]): Iterable<{ row: number; column: number; cell: ICellData }> {
  for (const row of keysOf(layers)) {
    const inRow = layers.map((layer) => layer?.[row])
    for (const column of keysOf(inRow)) {
      const cell = inRow.reduce<Nullable<ICellData>>((below, cells) => cells?.[column] ?? below, null)
      if (cell) yield { row, column, cell }
    }
  }
}

function keysOf(objects: readonly Nullable<object>[]): number[] {
  return [...new Set(objects.flatMap((object) => Object.keys(object ?? {}).map(Number)))].sort((a, b) => a - b)
}
