/** What the grid has before the user's eyes: which sheet and which cell. */
import { ICommandService } from '@univerjs/core'
import { ScrollToCellCommand } from '@univerjs/preset-sheets-core'
import type { CellPlace } from '../../workbook/cellPlace'
import { PortProblem } from '../../workbook/port'
import type { OpenGrid } from './open'

/** That stay in sight above a cell to which one jumps. */
const rowsAbove = 4

export async function select({ injector, workbook }: OpenGrid, { sheet, address }: CellPlace): Promise<void> {
  const worksheet = workbook().getSheetByName(sheet)
  if (worksheet === null) throw new PortProblem('noSelection')
  workbook().setActiveSheet(worksheet)
  const range = worksheet.getRange(address)
  range.activate()
  // Its row comes below the rows that say what it is, and the first column, with the labels, stays where both fit.
  const { xSplit, ySplit } = worksheet.getSheet().getFreeze()
  worksheet.scrollToCell(Math.max(ySplit, range.getRow() - rowsAbove), xSplit)
  void injector.get(ICommandService).executeCommand(ScrollToCellCommand.id, { range: range.getRange() })
}

export function turnSheet({ workbook }: OpenGrid, by: 1 | -1): void {
  const sheets = workbook().getSheets()
  const shown = sheets.findIndex((sheet) => sheet.getSheetId() === workbook().getActiveSheet().getSheetId())
  const next = sheets.at((shown + by) % sheets.length)
  if (next !== undefined) workbook().setActiveSheet(next)
}
