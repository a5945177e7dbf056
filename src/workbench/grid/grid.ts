/** The embedded grid behind one door: nothing outside this folder knows which grid it is. */
import { type ICellData, ICommandService, type Injector, IUndoRedoService, LocaleType, LogLevel, mergeLocales, UndoCommand, Univer, type Worksheet } from '@univerjs/core'
import { FUniver } from '@univerjs/core/facade'
import {
  CalculationMode, type FRange, type FWorkbook, type FWorksheet, ILayoutService,
  ScrollToCellCommand, SetArrayFormulaDataMutation, SetRangeValuesCommand, SetRangeValuesMutation, SetSelectionsOperation, SetWorksheetActiveOperation, SheetsSelectionsService, UniverSheetsCorePreset,
} from '@univerjs/preset-sheets-core'
import coreWords from '@univerjs/preset-sheets-core/locales/en-US'
import { UniverSheetsFilterPreset } from '@univerjs/preset-sheets-filter'
import filterWords from '@univerjs/preset-sheets-filter/locales/en-US'
import { UniverSheetsNotePreset } from '@univerjs/preset-sheets-note'
import noteWords from '@univerjs/preset-sheets-note/locales/en-US'
import { UniverSheetsSortPreset } from '@univerjs/preset-sheets-sort'
import sortWords from '@univerjs/preset-sheets-sort/locales/en-US'
import { greenTheme } from '@univerjs/themes'
import '@univerjs/preset-sheets-core/lib/index.css'
import '@univerjs/preset-sheets-filter/lib/index.css'
import '@univerjs/preset-sheets-note/lib/index.css'
import '@univerjs/preset-sheets-sort/lib/index.css'
import type { Definition } from '../../core/definition/definition'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { MadeCall } from '../../derived/madeCall'
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import { filledInto } from '../../formula/relativeFormula'
import type { Book, DefinedName } from '../../workbook/book'
import type { OpenBook, OpenSheet, ReadCell } from '../../workbook/openBook'
import { changesBySheet } from '../../workbook/changesBySheet'
import type { CellChange, CellPlace } from '../../workbook/port'
import type { NamesInUse } from '../../workbook/taken'
import { addBook } from './addBook'
import { bookToGrid, gridContent } from './bookToGrid'
import { guardFormulaCaches, movesPlaces } from './cacheGuard'
import type { CellResult } from './cellResult'
import { customFunctions } from './customFunctions'
import { endTypedFormulas } from './endTypedFormulas'
import { formulaForGrid } from './formulaForGrid'
import { gridToBook } from './gridToBook'
import { keepTyping } from './keepTyping'
import { markRefusals } from './markRefusals'
import { menu } from './menu'
import { mendNameBox } from './nameBox'
import { nextCalculation } from './nextCalculation'
import { CellCalls, keepCellCalls, type Place } from './cellCalls'
import { giveOwnFormulas } from './ownFormulas'
import { readPastedEntries } from './pastedEntries'
import { readCells, resultAt } from './readCells'
import { refusedEntry } from './refusedEntry'
import { settleSpills } from './settleSpills'
import { recalculationMeasure } from './recalculationMeasure'
import { readTypedFormulas } from './typedFormulas'
import { readTypedNumbers } from './typedNumbers'

export interface GridCell extends CellResult {
  readonly sheet: string
  /** Without dollar signs: "B4". */
  readonly address: string
  /** With its leading "="; empty where the cell holds no formula. */
  readonly formula: string
  /** Why one of our own functions refused, or what may be typed here where something else was. */
  readonly sentence?: string
}

export interface Grid {
  /** Replaces the open workbook; resolves once the new one is calculated. */
  open(book: Book): Promise<void>
  /** Adds a book's sheets and names after those of the workbook; throws where the grid does not take them, and is then as before. */
  add(book: Book): Promise<void>
  namesInUse(): NamesInUse
  /** See WorkbookPort. False where there is no such row with another one above it. */
  insertRow(place: CellPlace): Promise<boolean>
  /** The workbook as it is now; what is still being typed is taken in first. */
  book(): Promise<Book>
  /** From now on only what differs from this book counts as unsaved. */
  markSaved(book: Book): void
  /** Whether something would be lost with the workbook: a change since it was opened or saved, or what is being typed. */
  hasUnsaved(): boolean
  /** Undefined while nothing is selected. */
  selectedCell(): GridCell | undefined
  callsOfSelectedCell(): readonly MadeCall[]
  isEditing(): boolean
  /** Calculates all formulas anew. */
  calculate(): Promise<void>
  selectedRange(): CellPlace | undefined
  /** See WorkbookPort. */
  isEmpty(): boolean
  read(): OpenBook
  readRows(sheet: string, first: number, last: number): OpenSheet | undefined
  names(): readonly DefinedName[]
  /** With its leading "="; empty where the cell holds none, undefined where there is no such sheet. */
  formulaAt(place: CellPlace): string | undefined
  /** See WorkbookPort; resolves once the results follow. False where the grid did not take it. */
  putCells(changes: readonly CellChange[]): Promise<boolean>
  /** False where there is no such cell. */
  select(place: CellPlace): boolean
  valuesOf(reference: string, sheet: string): readonly (readonly ReadCell[])[] | undefined
  /** Writes into a cell, without a place into the selected one; resolves once the results follow. False where the grid did not take it. */
  write(formula: string, place?: CellPlace): Promise<boolean>
  /** Calls back whenever another cell is selected, or anything in the workbook changed. */
  onChange(listener: () => void): () => void
  /** Shows the next sheet or the one before; after the last comes the first. */
  turnSheet(by: 1 | -1): void
  /** Which sign marks the decimals in what is typed into cells, and in what formatted cells show. */
  setDecimalMark(mark: DecimalMark): void
  setDark(dark: boolean): void
  focus(): void
}

export interface GridOptions {
  readonly dark: boolean
  /** See setDecimalMark. */
  readonly decimalMark: DecimalMark
}

/** In pixels. */
const narrow = 600

/** That stay in sight above a cell to which one jumps. */
const rowsAbove = 4

/** Resolves once the book is calculated. */
export async function startGrid(container: HTMLElement, definitions: readonly Definition[], book: Book, { dark, decimalMark }: GridOptions): Promise<Grid> {
  const calls = new CellCalls()
  const univer = startUniver(container, definitions, calls, dark)
  const injector = univer.__getInjector()
  const api = FUniver.newAPI(univer)
  const workbook = (): FWorkbook => {
    const open = api.getActiveWorkbook()
    if (open === null) throw new Error('No workbook is open')
    return open
  }
  let opened = 0
  let added = 0
  const room = () => ({ isNarrow: container.clientWidth < narrow })
  const show = (next: Book): void => {
    opened += 1
    api.createWorkbook(bookToGrid(next, `book${opened}`, room()))
  }

  show(book)
  // The services that these need exist only from the first workbook on.
  guardFormulaCaches(injector)
  settleSpills(injector)
  giveOwnFormulas(injector)
  keepCellCalls(injector, calls)
  markRefusals(injector, calls)
  keepTyping(injector)
  let mark: DecimalMark
  const setDecimalMark = (chosen: DecimalMark): void => {
    mark = chosen
    workbook().setNumfmtLocal(chosen === ',' ? 'de' : 'en')
  }
  setDecimalMark(decimalMark)
  readTypedNumbers(injector, () => mark)
  readTypedFormulas(injector)
  endTypedFormulas(injector)
  mendNameBox(container)
  readPastedEntries(injector, () => mark)
  measureRecalculation(injector)
  await nextCalculation(injector)
  const asText = (saved: Book): string => JSON.stringify(saved)
  const bookNow = (): Book => gridToBook(workbook().save())
  let kept = asText(bookNow())

  return {
    async open(next) {
      api.disposeUnit(workbook().getId())
      calls.forgetAll()
      const calculated = nextCalculation(injector)
      show(next)
      await calculated
      kept = asText(bookNow())
    },
    async add(next) {
      added += 1
      const calculated = nextCalculation(injector)
      addBook(injector, { id: workbook().getId(), sheetCount: workbook().getSheets().length }, next, `added${added}-`, room())
      api.getFormula().executeCalculation()
      await calculated
    },
    namesInUse: () => ({
      sheets: workbook().getSheets().map((sheet) => sheet.getSheetName()),
      names: namesOf(workbook()).map(({ name }) => name),
    }),
    async insertRow({ sheet, address }) {
      const worksheet = workbook().getSheetByName(sheet)
      const row = worksheet?.getRange(address).getRow() ?? 0
      if (!worksheet || row < 1) return false
      const calculated = nextCalculation(injector)
      worksheet.insertRows(row)
      const fill = { id: SetRangeValuesMutation.id, params: { unitId: workbook().getId(), subUnitId: worksheet.getSheetId(), cellValue: { [row]: filledDown(worksheet, row) } } }
      injector.get(ICommandService).syncExecuteCommand(fill.id, fill.params)
      // The undo of the insertion takes the row away with what was filled into it; its redo has to fill it again.
      injector.get(IUndoRedoService).pitchTopUndoElement()?.redoMutations.push(fill)
      await calculated
      return true
    },
    async book() {
      await workbook().endEditingAsync(true)
      return bookNow()
    },
    markSaved(saved) {
      kept = asText(saved)
    },
    hasUnsaved: () => workbook().isCellEditing() || asText(bookNow()) !== kept,
    selectedCell() {
      // There is none for a moment, while one workbook takes the place of another.
      const open = api.getActiveWorkbook()
      const cell = open?.getActiveCell()
      return open && cell ? read(injector, open.getActiveSheet().getSheet(), cell, calls) : undefined
    },
    callsOfSelectedCell() {
      const cell = api.getActiveWorkbook()?.getActiveCell()
      return cell ? calls.of(placeOf(cell)) : []
    },
    async calculate() {
      const calculated = nextCalculation(injector)
      api.getFormula().executeCalculation()
      await calculated
    },
    isEditing: () => workbook().isCellEditing(),
    selectedRange() {
      const range = api.getActiveWorkbook()?.getActiveRange()
      return range ? { sheet: range.getSheetName(), address: range.getA1Notation() } : undefined
    },
    isEmpty: () => workbook().getSheets().every((sheet) => readCells(injector, sheet.getSheet(), calls).size === 0),
    read() {
      const open = workbook()
      return {
        names: namesOf(open),
        sheets: open.getSheets().map((sheet) => (
          { name: sheet.getSheetName(), cells: readCells(injector, sheet.getSheet(), calls) }
        )),
      }
    },
    readRows(sheet, first, last) {
      const isMeant = (one: FWorksheet) => one.getSheetName().toLowerCase() === sheet.toLowerCase()
      const worksheet = workbook().getSheets().find(isMeant)?.getSheet()
      return worksheet && { name: worksheet.getName(), cells: readCells(injector, worksheet, calls, { first, last }) }
    },
    names: () => namesOf(workbook()),
    formulaAt: ({ sheet, address }) => workbook().getSheetByName(sheet)?.getRange(address).getFormula(),
    async putCells(changes) {
      const open = workbook()
      const bySheet = [...changesBySheet(changes)].map(([sheet, ofSheet]) => ({ worksheet: open.getSheetByName(sheet), ofSheet }))
      if (bySheet.some(({ worksheet }) => !worksheet)) return false
      const commands = injector.get(ICommandService)
      const calculated = nextCalculation(injector)
      // Sheets do not depend on the order in which they are taken back, so the grid's own batching does here.
      const oneUndo = injector.get(IUndoRedoService).__tempBatchingUndoRedo(open.getId())
      const refused = bySheet.findIndex(({ worksheet, ofSheet }) => (
        !commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId: open.getId(), subUnitId: worksheet!.getSheetId(), value: changedCells(worksheet!, ofSheet) })
      ))
      oneUndo.dispose()
      if (refused > 0) commands.syncExecuteCommand(UndoCommand.id)
      if (refused >= 0) return false
      await calculated
      return true
    },
    select({ sheet, address }) {
      const worksheet = workbook().getSheetByName(sheet)
      if (worksheet === null) return false
      workbook().setActiveSheet(worksheet)
      const range = worksheet.getRange(address)
      range.activate()
      // Its row comes below the rows that say what it is, and the first column, with the labels, stays where both have room.
      const { xSplit, ySplit } = worksheet.getSheet().getFreeze()
      worksheet.scrollToCell(Math.max(ySplit, range.getRow() - rowsAbove), xSplit)
      void injector.get(ICommandService).executeCommand(ScrollToCellCommand.id, { range: range.getRange() })
      return true
    },
    valuesOf(reference, sheet) {
      const [range, ...more] = rangesRead(`=${reference}`, sheet, namedRanges(namesOf(workbook())))
      const worksheet = range && workbook().getSheetByName(range.sheet)
      if (!worksheet || more.length > 0) return undefined
      const data = worksheet.getSheet()
      const rows = Math.min(range.bottom, data.getRowCount() - 1) - range.top + 1
      const columns = Math.min(range.right, data.getColumnCount() - 1) - range.left + 1
      if (rows < 1 || columns < 1) return undefined
      const at = { workbook: workbook().getId(), sheet: worksheet.getSheetId() }
      return Array.from({ length: rows }, (_row, row) => Array.from({ length: columns }, (_cell, column) => {
        const { value, error } = resultAt(injector, data, { ...at, row: range.top + row, column: range.left + column })
        return error === undefined ? value : { kind: 'cellError', code: error } as const
      }))
    },
    async write(formula, place) {
      const cell = place === undefined ? workbook().getActiveCell() : workbook().getSheetByName(place.sheet)?.getRange(place.address)
      if (!cell) return false
      const calculated = nextCalculation(injector)
      const written = await injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
        unitId: cell.getUnitId(), subUnitId: cell.getSheetId(), range: cell.getRange(), value: { f: formulaForGrid(formula), v: null, p: null, si: null },
      })
      if (written) await calculated
      return written
    },
    onChange(listener) {
      const changes = new Set([SetSelectionsOperation.id, SetWorksheetActiveOperation.id, SetRangeValuesMutation.id, SetArrayFormulaDataMutation.id])
      const listening = injector.get(ICommandService).onCommandExecuted(({ id }) => {
        if (changes.has(id) || movesPlaces(id)) listener()
      })
      // A jump by the box of names selects without a command. What is selected already is told at once, and is no change.
      let isLater = false
      const selecting = injector.get(SheetsSelectionsService).selectionSet$.subscribe(() => { if (isLater) listener() })
      isLater = true
      return () => {
        listening.dispose()
        selecting.unsubscribe()
      }
    },
    turnSheet(by) {
      const sheets = workbook().getSheets()
      const shown = sheets.findIndex((sheet) => sheet.getSheetId() === workbook().getActiveSheet().getSheetId())
      const next = sheets.at((shown + by) % sheets.length)
      if (next !== undefined) workbook().setActiveSheet(next)
    },
    setDecimalMark,
    setDark: (dark) => api.toggleDarkMode(dark),
    focus: () => injector.get(ILayoutService).focus(),
  }
}

function startUniver(container: HTMLElement, definitions: readonly Definition[], calls: CellCalls, darkMode: boolean): Univer {
  const univer = new Univer({
    darkMode,
    theme: greenTheme,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, filterWords, noteWords, sortWords) },
    logLevel: LogLevel.ERROR,
  })
  const presets = [
    UniverSheetsCorePreset({
      container,
      // Colours and fonts of a user's own are not kept in a file, so the grid does not offer them.
      toolbar: false,
      menu,
      disableAutoFocus: true,
      // Spilled cells are not part of a workbook's data, so all is calculated afresh whenever one is opened.
      formula: { ...customFunctions(definitions, calls), initialFormulaComputing: CalculationMode.FORCED },
    }),
    UniverSheetsNotePreset(),
    UniverSheetsFilterPreset(),
    UniverSheetsSortPreset(),
  ]
  for (const { plugins } of presets) {
    for (const plugin of plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(...plugin)
      else univer.registerPlugin(plugin)
    }
  }
  return univer
}

function read(injector: Injector, worksheet: Worksheet, cell: FRange, calls: CellCalls): GridCell {
  const place = placeOf(cell)
  const shown = resultAt(injector, worksheet, place)
  const sentence = shown.error ? calls.sentence(place, shown.error) : refusedEntry(injector, place)
  return { sheet: cell.getSheetName(), address: cell.getA1Notation(), formula: cell.getFormula(), ...shown, ...(sentence && { sentence }) }
}

/** By row and column, as the grid takes them; how a cell looks and what may be typed into it stays. */
function changedCells(worksheet: FWorksheet, changes: readonly CellChange[]): Record<number, Record<number, ICellData>> {
  const cells: Record<number, Record<number, ICellData>> = {}
  for (const { address, now } of changes) {
    const range = worksheet.getRange(address)
    const inRow = cells[range.getRow()] ??= {}
    const empty = { f: null, v: null, p: null, si: null, t: null }
    const content = 'formula' in now ? { f: formulaForGrid(now.formula) } : now.value === null ? {} : gridContent(now.value)
    inRow[range.getColumn()] = { ...empty, ...content }
  }
  return cells
}

/** The cells of the row above, as a row that nobody has typed in yet: its formulas and how its cells look. */
function filledDown(worksheet: FWorksheet, row: number): Record<number, ICellData> {
  const data = worksheet.getSheet()
  const cells: Record<number, ICellData> = {}
  for (let column = 0; column < data.getColumnCount(); column += 1) {
    const above = data.getCellRaw(row - 1, column)
    if (!above) continue
    const formula = worksheet.getRange(row - 1, column).getFormula()
    cells[column] = {
      ...(above.s && { s: above.s }),
      ...(above.custom && { custom: above.custom }),
      ...(formula !== '' && { f: filledInto(formula, addressOf(row - 1, column), addressOf(row, column)) }),
    }
  }
  return cells
}

function namesOf(open: FWorkbook): readonly DefinedName[] {
  return open.getDefinedNames().map((name) => ({ name: name.getName(), refersTo: name.getFormulaOrRefString().replace(/^=/, '') }))
}

function placeOf(cell: FRange): Place {
  return { workbook: cell.getUnitId(), sheet: cell.getSheetId(), row: cell.getRow(), column: cell.getColumn() }
}

function measureRecalculation(injector: Injector): void {
  let edited: number | undefined
  const measure = () => {
    performance.measure(recalculationMeasure, { start: edited! })
    edited = undefined
  }
  injector.get(ICommandService).onCommandExecuted(({ id }, options) => {
    const isEdit = id === SetRangeValuesMutation.id && options?.['fromFormula'] !== true
    if (!isEdit) return
    if (edited === undefined) void nextCalculation(injector).then(measure)
    edited = performance.now()
  })
}
