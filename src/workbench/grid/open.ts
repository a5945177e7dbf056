/** Starts the grid's library in a page and loads books into it. */
import { type Injector, LocaleType, LogLevel, mergeLocales, Univer } from '@univerjs/core'
import { FUniver } from '@univerjs/core/facade'
import { CalculationMode, type FWorkbook, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core'
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
import type { Book } from '../../workbook/book'
import type { StoredResults } from '../../workbook/storedResults'
import { bookToGrid, type GridRoom } from './bookToGrid'
import { CellCalls, keepCellCalls } from './cellCalls'
import { customFunctions } from './customFunctions'
import { fillInsertedRows } from './insertedRows'
import { keepLooks } from './keptLooks'
import { markRefusals } from './markRefusals'
import type { Mend } from './mends/mend'
import { allMends } from './mends/mends'
import { leaveNotesAlone, placeNotes } from './mends/notePlaces'
import { putOffCalculation } from './mends/promptCalculation'
import { menu } from './menu'
import { nextCalculation } from './nextCalculation'
import { progressWords } from './progressWords'
import { showStored } from './showStored'

/** The library with one workbook open, as the files beside this one share it. */
export interface OpenGrid {
  readonly injector: Injector
  readonly api: FUniver
  readonly calls: CellCalls
  /** Throws for the moment in which one workbook takes the place of another. */
  workbook(): FWorkbook
  room(): GridRoom
  /** Calculates all formulas anew. */
  calculate(): Promise<void>
  /** Puts a book into the place of the open workbook; resolves once it is calculated. */
  replace(book: Book): Promise<void>
}

export interface GridStart {
  readonly dark: boolean
  /** With which the book is shown, before it is calculated. */
  readonly stored?: StoredResults
  /** Which faults of the library are repaired; all of them, but where a test shows one. */
  readonly mends?: readonly Mend[]
}

/** In pixels. */
const narrow = 600

/** The book is shown, but not calculated yet; with results of before it is not until calculate is called. */
export function openGrid(
  container: HTMLElement,
  definitions: readonly Definition[],
  book: Book,
  { dark, stored, mends = allMends }: GridStart,
): OpenGrid {
  const calls = new CellCalls()
  if (mends.includes(placeNotes)) leaveNotesAlone()
  const univer = startUniver(container, definitions, calls, dark)
  const injector = univer.__getInjector()
  const api = FUniver.newAPI(univer)
  const room = () => ({ isNarrow: container.clientWidth < narrow })
  const workbook = (): FWorkbook => {
    const open = api.getActiveWorkbook()
    if (open === null) throw new Error('No workbook is open')
    return open
  }
  let opened = 0
  const show = (next: Book): void => {
    opened += 1
    const created = api.createWorkbook(bookToGrid(next, `book${opened}`, room()))
    const sheet = next.shown === undefined ? null : created.getSheetByName(next.shown)
    if (sheet !== null) created.setActiveSheet(sheet)
  }

  show(book)
  for (const mend of mends) mend(injector, container)
  keepCellCalls(injector, calls)
  markRefusals(injector, calls)
  fillInsertedRows(injector)
  keepLooks(injector)
  if (stored !== undefined) showStored(injector, workbook().getWorkbook(), stored)
  const allowCalculation = stored === undefined ? () => {} : putOffCalculation(injector)
  return {
    injector,
    api,
    calls,
    workbook,
    room,
    async calculate() {
      allowCalculation()
      const calculated = nextCalculation(injector)
      api.getFormula().executeCalculation()
      await calculated
    },
    async replace(next) {
      api.disposeUnit(workbook().getId())
      calls.forgetAll()
      const calculated = nextCalculation(injector)
      show(next)
      await calculated
    },
  }
}

function startUniver(
  container: HTMLElement,
  definitions: readonly Definition[],
  calls: CellCalls,
  darkMode: boolean,
): Univer {
  const univer = new Univer({
    darkMode,
    theme: greenTheme,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, filterWords, noteWords, sortWords, progressWords) },
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
