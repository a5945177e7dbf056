/**
 * Calculates a book without a screen, with the grid's own formula engine and the same functions. The engine alone
 * is enough: the rest of the grid draws, and does not load in Node.
 */
import {
  ICommandService,
  type ICellData,
  type Injector,
  IUniverInstanceService,
  LocaleType,
  LogLevel,
  type Nullable,
  Univer,
  UniverInstanceType,
  Workbook,
  type Worksheet,
} from '@univerjs/core'
import {
  ICalculateFormulaService,
  IDefinedNamesService,
  type ISetFormulaCalculationResultMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula'
import { addressOf } from '../../formula/address'
import { catalogue } from '../../functions/catalogue'
import type { Book, Sheet } from '../../workbook/book'
import type { OpenBook, OpenCell, OpenSheet } from '../../workbook/openBook'
import { bookToGrid, gridContent, gridNames } from '../grid/bookToGrid'
import { cellResult } from '../grid/cellResult'
import { customFunctions } from '../grid/customFunctions'
import { engineMends } from '../grid/mends/engineMends'
import { nextCalculation } from '../grid/nextCalculation'
import { readCells } from '../grid/readCells'
import { CellCalls, keepCellCalls } from '../grid/cellCalls'
import { type Called, callDirectly } from './directCalls'

const workbook = 'calculated'

let previous: Promise<unknown> = Promise.resolve()

/** Is told from time to time which formula is calculated, from 1, of how many. */
export type OnProgress = (formula: number, formulas: number) => void

/** One book at a time: all engines of a process share the caches that guardFormulaCaches empties. */
export function calculateBook(book: Book, onProgress: OnProgress = () => undefined): Promise<OpenBook> {
  const calculated = previous.then(() => calculate(book, onProgress))
  previous = calculated.catch(() => undefined)
  return calculated
}

async function calculate(whole: Book, onProgress: OnProgress): Promise<OpenBook> {
  const { book, called } = callDirectly(whole)
  const sheets = hasFormulas(book)
    ? (await calculateByEngine(book, onProgress)).map((sheet, index) => withCalled(sheet, called[index]!))
    : book.sheets.map((sheet, index) => openSheet(sheet, called[index]!))
  return { names: whole.names, sheets }
}

function hasFormulas({ sheets }: Book): boolean {
  return sheets.some(({ rows }) => rows.some((row) => row.some((cell) => cell?.formula !== undefined)))
}

/** As the engine would give the sheet back. */
function openSheet({ name, rows }: Sheet, called: Called): OpenSheet {
  const cells = new Map<string, OpenCell>()
  rows.forEach((row, rowIndex) => {
    const calledInRow = called.get(rowIndex)
    row.forEach((cell, column) => {
      if (cell?.value === undefined) return
      const { value, error } = cellResult(gridContent(cell.value))
      const made = calledInRow?.get(column)
      cells.set(addressOf(rowIndex, column), {
        row: rowIndex,
        column,
        formula: made?.formula ?? '',
        value: error === undefined ? value : { kind: 'cellError', code: error },
        calls: made === undefined ? [] : [made.call],
        ...(cell.look === 'heading' && { isHeading: true }),
      })
    })
  })
  return { name, cells }
}

/** With the formulas that the engine did not see. */
function withCalled({ name, cells }: OpenSheet, called: Called): OpenSheet {
  const all = new Map(cells)
  for (const [row, columns] of called) {
    for (const [column, { formula, call }] of columns) {
      const address = addressOf(row, column)
      all.set(address, { ...all.get(address)!, formula, calls: [call] })
    }
  }
  return { name, cells: all }
}

async function calculateByEngine(book: Book, onProgress: OnProgress): Promise<readonly OpenSheet[]> {
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
    injector
      .get(ICalculateFormulaService)
      .executionInProgressListener$.subscribe(({ completedFormulasCount: formula, totalFormulasToCalculate: all }) => {
        if (formula > 0) onProgress(formula, all)
      })
    await calculateAll(injector)
    return sheetsOf(injector).map((sheet) => ({
      name: sheet.getName(),
      cells: readCells(injector, sheet, calls),
    }))
  } finally {
    univer.dispose()
  }
}

async function calculateAll(injector: Injector): Promise<void> {
  const commands = injector.get(ICommandService)
  commands.onCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationResultMutation.id)
      keepResults(injector, params as ISetFormulaCalculationResultMutation)
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
  return (
    injector.get(IUniverInstanceService).getUnit<Workbook>(workbook, UniverInstanceType.UNIVER_SHEET)?.getSheets() ?? []
  )
}
