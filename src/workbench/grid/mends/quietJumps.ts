/**
 * Tells of jumps to a name by the box of names. The grid selects its cells without a command, so that nobody hears: the
 * line below the sheet and the pane would go on telling of the cell before. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { SheetsSelectionsService } from '@univerjs/preset-sheets-core'

/** Returns the way to stop. */
export function onQuietJump(injector: Injector, listener: () => void): () => void {
  // What is selected already is told at once, and is no jump.
  let isLater = false
  const selecting = injector.get(SheetsSelectionsService).selectionSet$.subscribe(() => {
    if (isLater) listener()
  })
  isLater = true
  return () => selecting.unsubscribe()
}
