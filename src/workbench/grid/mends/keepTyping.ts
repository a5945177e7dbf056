/**
 * Keeps what is being typed. The grid takes a result that a calculation writes at the row and column of the open cell,
 * on whichever sheet, for a change of that cell, and puts the cell's old content over what was typed so far: of 2200,
 * typed while an earlier entry was still being calculated, 18000 would be left. The open editor reads its cell anew
 * when it closes, so nothing is missed by waiting. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { IEditorBridgeService } from '@univerjs/preset-sheets-core'

export function keepTyping(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService)
  const readCellAnew = editor.refreshEditCellState.bind(editor)
  editor.refreshEditCellState = () => {
    if (!editor.isVisible().visible) readCellAnew()
  }
}
