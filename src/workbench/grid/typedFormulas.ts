/**
 * Keeps formulas as they are typed. When the cell's editor closes, the grid spells the numbers in a formula its own way,
 * and where that changes the length of one, it puts what follows in wrong places: of =IF(A1>1.50,"low","high") it makes
 * another text, without an error. So the formula gets numbers that the grid leaves alone, before it reads them.
 */
import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, type DocumentDataModel, type Injector, IUniverInstanceService, UniverInstanceType } from '@univerjs/core'
import { IEditorBridgeService } from '@univerjs/preset-sheets-core'
import { formulaForGrid } from './formulaForGrid'

/** The end of every text in the editor. */
const end = '\r\n'

export function readTypedFormulas(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService)
  const changeVisible = editor.changeVisible.bind(editor)
  editor.changeVisible = (change) => {
    if (!change.visible) spellFormula()
    changeVisible(change)
  }

  function spellFormula(): void {
    const body = injector.get(IUniverInstanceService).getUnit<DocumentDataModel>(DOCS_NORMAL_EDITOR_UNIT_ID_KEY, UniverInstanceType.UNIVER_DOC)?.getSnapshot().body
    if (body?.dataStream.startsWith('=')) body.dataStream = formulaForGrid(body.dataStream.replace(/\r\n$/, '')) + end
  }
}
