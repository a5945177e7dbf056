/** Adds the sheets and names of a book to the open workbook: all of them or none, and one undo takes them back. */
import { ICommandService, type Injector, mergeWorksheetSnapshotWithDefault, nameCharacterCheck } from '@univerjs/core'
import {
  type IInsertSheetMutationParams,
  InsertSheetMutation,
  InsertSheetUndoMutationFactory,
  RemoveDefinedNameMutation,
  RemoveSheetMutation,
  SetDefinedNameMutation,
} from '@univerjs/preset-sheets-core'
import { RemoveNoteMutation, UpdateNoteMutation } from '@univerjs/preset-sheets-note'
import type { Book } from '../../workbook/book'
import { gridParts, type GridRoom } from './bookToGrid'
import { pushOneUndo, type Step } from './mends/oneUndo'

interface OpenWorkbook {
  readonly id: string
  /** How many sheets it has. */
  readonly sheetCount: number
}

/** The prefix must be new to the workbook. Throws where the grid does not take the book. */
export function addBook(injector: Injector, workbook: OpenWorkbook, book: Book, prefix: string, room: GridRoom): void {
  const commands = injector.get(ICommandService)
  const done: Step[] = []
  try {
    for (const step of stepsOf(injector, workbook, book, prefix, room)) {
      // Before it is tried: a mutation that throws may have done its work already.
      done.push(step)
      if (!commands.syncExecuteCommand(step.make.id, step.make.params))
        throw new Error(`The grid refused ${step.make.id}`)
    }
  } catch (problem) {
    for (const { takeBack } of done.reverse()) commands.syncExecuteCommand(takeBack.id, takeBack.params)
    throw problem
  }
  pushOneUndo(injector, workbook.id, done)
}

/** Throws where it comes to a sheet that no file can hold. */
function* stepsOf(
  injector: Injector,
  { id: unitId, sheetCount }: OpenWorkbook,
  book: Book,
  prefix: string,
  room: GridRoom,
): Generator<Step> {
  const { sheets, styles, names, notes } = gridParts(book, prefix, room)
  for (const [index, sheet] of sheets.entries()) {
    if (!nameCharacterCheck(sheet.name ?? '')) throw new Error(`No sheet can be called ${sheet.name}`)
    const params: IInsertSheetMutationParams = {
      unitId,
      index: sheetCount + index,
      sheet: mergeWorksheetSnapshotWithDefault(sheet),
      styles,
    }
    yield {
      make: { id: InsertSheetMutation.id, params },
      takeBack: { id: RemoveSheetMutation.id, params: InsertSheetUndoMutationFactory(injector, params) },
    }
  }
  for (const name of Object.values(names)) {
    const params = { unitId, ...name }
    yield { make: { id: SetDefinedNameMutation.id, params }, takeBack: { id: RemoveDefinedNameMutation.id, params } }
  }
  for (const [sheetId, rows] of Object.entries(notes)) {
    for (const note of Object.values(rows).flatMap((row) => Object.values(row))) {
      const place = { unitId, sheetId, row: note.row, col: note.col }
      yield {
        make: { id: UpdateNoteMutation.id, params: { ...place, note } },
        takeBack: { id: RemoveNoteMutation.id, params: place },
      }
    }
  }
}
