/** What the grid changes in the open workbook: cells, rows and sheets. */
import { type ICellData, ICommandService, IUndoRedoService, UndoCommand } from '@univerjs/core'
import { type FWorkbook, type FWorksheet, SetRangeValuesCommand } from '@univerjs/preset-sheets-core'
import type { Book } from '../../workbook/book'
import { changesBySheet } from '../../workbook/changesBySheet'
import type { CellPlace } from '../../workbook/cellPlace'
import { type CellChange, PortProblem, type WorkbookPort } from '../../workbook/port'
import { listed, takenBy } from '../../workbook/taken'
import { addBook } from './addBook'
import { gridContent } from './bookToGrid'
import { formulaForGrid } from './formulaForGrid'
import { insertRowsLike } from './insertedRows'
import { asAgreed } from './lostFormulas'
import { nextCalculation } from './nextCalculation'
import type { OpenGrid } from './open'
import { namesOf, shownCell } from './read'

type Writing = Pick<WorkbookPort, 'putFormula' | 'putCells' | 'add' | 'removeSheet' | 'insertRows'>

export function writing(grid: OpenGrid): Writing {
  let added = 0
  return {
    async putFormula(formula, place) {
      if (shownCell(grid) === undefined) throw new PortProblem('noSelection')
      if (!(await putFormula(grid, formula, place))) throw new PortProblem('hostFailed')
    },
    async putCells(changes) {
      const isOther = (change: CellChange) => formulaAt(grid.workbook(), change) !== change.was
      const other = changes.find((change) => change.was !== undefined && isOther(change))
      if (other !== undefined) throw new PortProblem('cellChanged', other.address)
      if (changes.length > 0 && !(await putCells(grid, changes))) throw new PortProblem('hostFailed')
    },
    async add(book) {
      const taken = takenBy(namesInUse(grid.workbook()), book)
      if (taken.length > 0) throw new PortProblem('nameTaken', listed(taken))
      added += 1
      await add(grid, book, `added${added}-`).catch((problem: unknown) => {
        throw new PortProblem('bookRefused', problem instanceof Error ? problem.message : String(problem))
      })
    },
    async removeSheet(sheet) {
      const open = grid.workbook()
      const found = open.getSheetByName(sheet)
      if (found === null || !open.deleteSheet(found)) throw new PortProblem('hostFailed')
    },
    async insertRows(place, count) {
      if (!(await insertRows(grid, place, count))) throw new PortProblem('noSelection')
    },
  }
}

/** Resolves once the results follow. False where the grid did not take it. */
async function putFormula({ injector, workbook }: OpenGrid, formula: string, place?: CellPlace): Promise<boolean> {
  const open = workbook()
  const cell = place === undefined ? open.getActiveCell() : open.getSheetByName(place.sheet)?.getRange(place.address)
  if (!cell) return false
  const calculated = nextCalculation(injector)
  const written = await injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: cell.getUnitId(),
    subUnitId: cell.getSheetId(),
    range: cell.getRange(),
    value: { f: formulaForGrid(formula), v: null, p: null, si: null },
  })
  if (written) await calculated
  return written
}

/** With its leading "="; empty where the cell holds none, undefined where there is no such sheet. */
function formulaAt(open: FWorkbook, { sheet, address }: CellPlace): string | undefined {
  return open.getSheetByName(sheet)?.getRange(address).getFormula()
}

/** Resolves once the results follow. False where the grid did not take it. */
async function putCells({ injector, workbook }: OpenGrid, changes: readonly CellChange[]): Promise<boolean> {
  const open = workbook()
  const bySheet = [...changesBySheet(changes)].map(([sheet, ofSheet]) => ({
    worksheet: open.getSheetByName(sheet),
    ofSheet,
  }))
  if (bySheet.some(({ worksheet }) => !worksheet)) return false
  const commands = injector.get(ICommandService)
  const calculated = nextCalculation(injector)
  // Sheets do not depend on the order in which they are taken back, so the grid's own batching does here.
  const oneUndo = injector.get(IUndoRedoService).__tempBatchingUndoRedo(open.getId())
  const refused = asAgreed(injector, () =>
    bySheet.findIndex(
      ({ worksheet, ofSheet }) =>
        !commands.syncExecuteCommand(SetRangeValuesCommand.id, {
          unitId: open.getId(),
          subUnitId: worksheet!.getSheetId(),
          value: changedCells(worksheet!, ofSheet),
        }),
    ),
  )
  oneUndo.dispose()
  if (refused > 0) commands.syncExecuteCommand(UndoCommand.id)
  if (refused >= 0) return false
  await calculated
  return true
}

type GridCells = Readonly<Record<number, Readonly<Record<number, ICellData>>>>

/** By row and column, as the grid takes them; how a cell looks and what may be typed into it stays. */
function changedCells(worksheet: FWorksheet, changes: readonly CellChange[]): GridCells {
  const cells: Record<number, Record<number, ICellData>> = {}
  for (const { address, now } of changes) {
    const range = worksheet.getRange(address)
    const inRow = (cells[range.getRow()] ??= {})
    inRow[range.getColumn()] = { f: null, v: null, p: null, si: null, t: null, ...contentOf(now) }
  }
  return cells
}

function contentOf(now: CellChange['now']): ICellData {
  if ('formula' in now) return { f: formulaForGrid(now.formula) }
  return now.value === null ? {} : gridContent(now.value)
}

function namesInUse(open: FWorkbook) {
  return {
    sheets: open.getSheets().map((sheet) => sheet.getSheetName()),
    names: namesOf(open).map(({ name }) => name),
  }
}

/** Throws where the grid does not take the book, and is then as before. */
async function add({ injector, api, workbook, room }: OpenGrid, book: Book, prefix: string): Promise<void> {
  const calculated = nextCalculation(injector)
  addBook(injector, { id: workbook().getId(), sheetCount: workbook().getSheets().length }, book, prefix, room())
  api.getFormula().executeCalculation()
  await calculated
}

/** False where there is no such row with another one above it. */
async function insertRows(grid: OpenGrid, { sheet, address }: CellPlace, count: number): Promise<boolean> {
  const { injector, workbook } = grid
  const worksheet = workbook().getSheetByName(sheet)
  const row = worksheet?.getRange(address).getRow() ?? 0
  if (!worksheet || row < 1) return false
  const calculated = nextCalculation(injector)
  if (!insertRowsLike(injector, worksheet.getSheet(), row, count)) return false
  await calculated
  return true
}
