/**
 * Lets one undo take several edits back, from the last to the first. The grid's own batching runs the undos in the
 * order of the edits: of a row that was inserted and then filled, it would take the row away and then empty the one
 * that moved into its place, with the numbers that a user typed there. Seen with univer 0.25.1.
 */
import { type Injector, IUndoRedoService } from '@univerjs/core'

export interface Mutation {
  readonly id: string
  readonly params: object
}

export interface Step {
  readonly make: Mutation
  readonly takeBack: Mutation
}

/** The steps were made already. */
export function pushOneUndo(injector: Injector, workbook: string, steps: readonly Step[]): void {
  injector.get(IUndoRedoService).pushUndoRedo({
    unitID: workbook,
    redoMutations: steps.map(({ make }) => make),
    undoMutations: steps.map(({ takeBack }) => takeBack).reverse(),
  })
}
