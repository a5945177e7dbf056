/**
 * Keeps formulas as they are typed. When the cell's editor closes, the grid spells the numbers in a formula its own
 * way, and where that changes the length of one, it puts what follows in wrong places: of =IF(A1>1.50,"low","high") it
 * makes another text, without an error. So the formula gets numbers that the grid leaves alone, before it reads them.
 * Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { IEditorBridgeService } from '@univerjs/preset-sheets-core'
import { formulaForGrid } from '../formulaForGrid'
import { typedBody } from './typedBody'

/** The end of every text in the editor. */
const end = '\r\n'

export function readTypedFormulas(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService)
  const changeVisible = editor.changeVisible.bind(editor)
  editor.changeVisible = (change) => {
    const body = change.visible ? undefined : typedBody(injector)
    if (body?.dataStream.startsWith('=')) body.dataStream = formulaForGrid(body.dataStream.replace(/\r\n$/, '')) + end
    changeVisible(change)
  }
}
