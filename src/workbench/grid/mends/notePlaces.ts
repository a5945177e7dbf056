/**
 * Moves notes with their cells. The library knows each note by its place, so that of two that stand one below the other
 * the one took the other's entry as rows came and went: notes stood beside other cells, and some were lost. Here each
 * is known by its id. Seen with univer 0.25.1.
 */
import {
  type ICommandInfo,
  type Injector,
  type IMutationInfo,
  type IRange,
  IUniverInstanceService,
  type Nullable,
} from '@univerjs/core'
import {
  EffectRefRangId,
  getSheetCommandTarget,
  handleDefaultRangeChangeWithEffectRefCommands,
  SheetInterceptorService,
} from '@univerjs/preset-sheets-core'
import {
  RemoveNoteMutation,
  SheetsNoteModel,
  UniverSheetsNotePlugin,
  UpdateNoteMutation,
  UpdateNotePositionMutation,
} from '@univerjs/preset-sheets-note'

/** Called before the library starts: it is to move none. */
export function leaveNotesAlone(): void {
  UniverSheetsNotePlugin.prototype.onReady = () => undefined
}

export function placeNotes(injector: Injector): void {
  injector.get(SheetInterceptorService).interceptCommand({ getMutations: (command) => moves(injector, command) })
}

/** What the library says of where a command works: cells may be cut on one sheet and pasted on another. */
interface Place {
  readonly unitId?: string
  readonly subUnitId?: string
  readonly fromUnitId?: string
  readonly fromSubUnitId?: string
  readonly toSubUnitId?: string
}

interface Moves {
  readonly redos: IMutationInfo[]
  readonly undos: IMutationInfo[]
}

function moves(injector: Injector, command: ICommandInfo): Moves {
  const all: Moves = { redos: [], undos: [] }
  if (!(Object.values(EffectRefRangId) as string[]).includes(command.id)) return all
  const { fromUnitId, fromSubUnitId, toSubUnitId, ...place } = (command.params ?? {}) as Place
  // A note is not cut from its sheet.
  if (toSubUnitId !== fromSubUnitId) return all
  const { unitId = fromUnitId, subUnitId = fromSubUnitId } = place
  const target = getSheetCommandTarget(injector.get(IUniverInstanceService), {
    ...(unitId !== undefined && { unitId }),
    ...(subUnitId !== undefined && { subUnitId }),
  })
  if (!target) return all
  const sheet = { unitId: target.unitId, sheetId: target.subUnitId }
  for (const note of injector.get(SheetsNoteModel).getSheetNotes(sheet.unitId, sheet.sheetId)?.values() ?? []) {
    const { id: noteId, row, col } = note
    const to = movedCell(command, row, col)
    if (!to) {
      all.redos.push({ id: RemoveNoteMutation.id, params: { ...sheet, noteId } })
      all.undos.push({ id: UpdateNoteMutation.id, params: { ...sheet, row, col, note } })
    } else if (to.startRow !== row || to.startColumn !== col) {
      const newPosition = { row: to.startRow, col: to.startColumn }
      all.redos.push({ id: UpdateNotePositionMutation.id, params: { ...sheet, noteId, newPosition } })
      all.undos.push({ id: UpdateNotePositionMutation.id, params: { ...sheet, noteId, newPosition: { row, col } } })
    }
  }
  return all
}

/** Nothing where the cell goes. */
function movedCell(command: ICommandInfo, row: number, column: number): Nullable<IRange> {
  const cell = { startRow: row, endRow: row, startColumn: column, endColumn: column }
  return handleDefaultRangeChangeWithEffectRefCommands(cell, command as never)
}
