/** What the grid tells of itself: another cell is selected, something changed, or how long a calculation took. */
import { ICommandService, type Injector, IUndoRedoService } from '@univerjs/core'
import {
  SetArrayFormulaDataMutation,
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
} from '@univerjs/preset-sheets-core'
import { onQuietJump } from './mends/quietJumps'
import { movesPlaces } from './movesPlaces'
import { nextCalculation } from './nextCalculation'
import { recalculationMeasure } from './recalculationMeasure'

const changes = new Set([
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
  SetRangeValuesMutation.id,
  SetArrayFormulaDataMutation.id,
])

/** Calls back whenever another cell is selected, or anything in the workbook changed; returns the way to stop. */
export function onChange(injector: Injector, listener: () => void): () => void {
  const listening = injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (changes.has(id) || movesPlaces(id)) listener()
  })
  const stopJumps = onQuietJump(injector, listener)
  return () => {
    listening.dispose()
    stopJumps()
  }
}

/** Calls back whenever the user changed something or took it back: all that can be is on the list of undos. */
export function onEdit(injector: Injector, listener: () => void): () => void {
  const listening = injector.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos, redos }) => {
    // Both are none where another workbook has just been opened.
    if (undos + redos > 0) listener()
  })
  return () => listening.unsubscribe()
}

/** Puts each calculation after an edit into the browser's timeline. */
export function measureRecalculation(injector: Injector): void {
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
