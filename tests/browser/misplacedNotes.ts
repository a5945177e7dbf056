/** In the page: whether notes stay beside their cells while rows come and go. */
import {
  Direction,
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UndoCommand,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core'
import { InsertRowCommand, RemoveRowCommand } from '@univerjs/preset-sheets-core'
import type { Grid } from '../../src/workbench/grid/grid'
import { notedSheet } from './notedSheet'

/** Inserts and deletes rows, takes some of it back, and gives the cells that have no note then, or another one's. */
export async function misplacedNotes(grid: Grid, injector: Injector): Promise<string[]> {
  await grid.select({ sheet: notedSheet.name, address: 'A1' })
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)!
  const execute = (id: string, params: object = {}) => injector.get(ICommandService).executeCommand(id, params)
  const rows = (first: number, last = first) => ({
    unitId: workbook.getUnitId(),
    subUnitId: workbook.getActiveSheet().getSheetId(),
    range: { startRow: first, endRow: last, startColumn: 0, endColumn: 2 },
    direction: Direction.UP,
  })
  await execute(InsertRowCommand.id, rows(3))
  await execute(InsertRowCommand.id, rows(5, 6))
  await execute(RemoveRowCommand.id, rows(8))
  await execute(RemoveRowCommand.id, rows(4))
  await execute(UndoCommand.id)
  await execute(UndoCommand.id)
  await execute(UndoCommand.id)
  await execute(InsertRowCommand.id, rows(0))
  await execute(RemoveRowCommand.id, rows(6))
  await execute(UndoCommand.id)
  const { book } = await grid.calculated()
  const cells = book.sheets.find((sheet) => sheet.name === notedSheet.name)!.rows.flat()
  return cells.flatMap((cell) => (cell?.note === cell?.value ? [] : [`${cell?.value}: ${cell?.note}`]))
}
