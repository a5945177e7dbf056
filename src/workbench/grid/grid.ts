/** The embedded grid as the port to its workbook. Nothing outside this folder knows which grid it is. */
import { LifecycleService, LifecycleStages } from '@univerjs/core'
import { ILayoutService } from '@univerjs/preset-sheets-core'
import type { Definition } from '../../core/definition/definition'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { Book, CellContent } from '../../workbook/book'
import type { WorkbookPort } from '../../workbook/port'
import { type CellChoices, choicesOf, choose, onScroll } from './choices'
import { describeBrowser } from './describeBrowser'
import { onFailedCalculation } from './failedCalculations'
import { type AskAboutFormulas, askAboutFormulas } from './lostFormulas'
import { nextCalculation } from './nextCalculation'
import { type GridStart, openGrid, type OpenGrid } from './open'
import { readPastedEntries } from './pastedEntries'
import { type GridCell, reading, shownCell } from './read'
import { copyOf, type Saving, saving } from './save'
import { jumpToSheets } from './sheetJumps'
import { select, turnSheet } from './show'
import { readTypedNumbers } from './typedNumbers'
import { unlessTyping } from './unlessTyping'
import { measureRecalculation, onChange } from './watch'
import { writing } from './write'

/** What the page around the grid needs beside the port. */
export interface GridOnPage extends Saving {
  /** What the line below the sheet tells; undefined while nothing is selected. */
  shownCell(): GridCell | undefined
  /** What may be chosen for the selected cell; undefined where it has no list. */
  choices(): CellChoices | undefined
  /** Writes into the selected cell as if it had been typed. */
  choose(entry: CellContent): Promise<void>
  /** Calls back whenever cells may show elsewhere on the page; returns the way to stop. */
  onScroll(listener: () => void): () => void
  /** Shows the next sheet or the one before; after the last comes the first. */
  turnSheet(by: 1 | -1): void
  /** Which sign marks the decimals in what is typed into cells, and in what formatted cells show. */
  setDecimalMark(mark: DecimalMark): void
  setDark(dark: boolean): void
  focus(): void
}

export type Grid = WorkbookPort & Pick<Required<WorkbookPort>, 'saveCopy'> & GridOnPage

export interface GridOptions extends GridStart {
  /** See setDecimalMark. */
  readonly decimalMark: DecimalMark
  /** Hands the user the bytes of an .xlsx file. */
  readonly giveFile: (bytes: Uint8Array) => void
  /** Asks the user whether formulas may go. */
  readonly aboutFormulas: AskAboutFormulas
  /** What was typed to jump to is no place of the workbook. */
  readonly onNoPlace: (typed: string) => void
  /** A calculation failed, and what follows from the last change is as before. */
  readonly onNotCalculated: (problem: unknown) => void
}

/** What is refused while a cell is being typed in. */
type Guarded = Required<
  Pick<WorkbookPort, 'putFormula' | 'putCells' | 'add' | 'removeSheet' | 'insertRows' | 'select' | 'saveCopy'>
>

/**
 * Resolves once the book shows results. Where they were stored, it is not calculated by then: what asks for calls or
 * changes rows, and what takes the place of the book, waits until calculate() has been called and is done.
 */
export async function startGrid(
  container: HTMLElement,
  definitions: readonly Definition[],
  book: Book,
  { giveFile, aboutFormulas, onNoPlace, onNotCalculated, ...options }: GridOptions,
): Promise<Grid> {
  const grid = openGrid(container, definitions, book, options)
  const { injector, api } = grid
  const setDecimalMark = readEntries(grid, options.decimalMark)
  askAboutFormulas(injector, aboutFormulas)
  jumpToSheets(grid, container, onNoPlace)
  measureRecalculation(injector)
  onFailedCalculation(injector, onNotCalculated)
  await (options.stored === undefined
    ? nextCalculation(injector)
    : injector.get(LifecycleService).onStage(LifecycleStages.Rendered))
  const page = saving(grid)
  return {
    host: 'workbench',
    ...reading(grid),
    ...unlessTyping<Guarded>(grid, {
      ...writing(grid),
      select: (place) => select(grid, place),
      saveCopy: async (change) => giveFile(await copyOf(page, change)),
    }),
    calculate: grid.calculate,
    describeHost: describeBrowser,
    onSelectionChange: (listener) => onChange(injector, listener),
    ...page,
    shownCell: () => shownCell(grid),
    choices: () => choicesOf(grid),
    choose: (entry) => choose(grid, entry),
    onScroll: (listener) => onScroll(injector, listener),
    turnSheet: (by) => turnSheet(grid, by),
    setDecimalMark,
    setDark: (dark) => api.toggleDarkMode(dark),
    focus: () => injector.get(ILayoutService).focus(),
  }
}

/** Reads what is typed and pasted with the user's decimal mark; gives the way to choose another. */
function readEntries({ injector, workbook }: OpenGrid, first: DecimalMark): (mark: DecimalMark) => void {
  let mark: DecimalMark
  const choose = (chosen: DecimalMark): void => {
    mark = chosen
    workbook().setNumfmtLocal(chosen === ',' ? 'de' : 'en')
  }
  choose(first)
  readTypedNumbers(injector, () => mark)
  readPastedEntries(injector, () => mark)
  return choose
}
