/**
 * Keeps formulas as they are typed. When the cell's editor closes, the grid spells the numbers in a formula its own way,
 * and where that changes the length of one, it puts what follows in wrong places: of =IF(A1>1.50,"low","high") it makes
 * another text, without an error. So the formula gets numbers that the grid leaves alone, before it reads them.
 * What Ctrl+Enter enters into several cells is filled into them as in Excel; the grid would give all of them one and the same.
 */
import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, type DocumentDataModel, type ICellData, ICommandService, type Injector, IUniverInstanceService, UniverInstanceType } from '@univerjs/core'
import { LexerTreeBuilder } from '@univerjs/engine-formula'
import { IEditorBridgeService, type ISetRangeValuesCommandParams, SetRangeValuesCommand } from '@univerjs/preset-sheets-core'
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
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id === SetRangeValuesCommand.id) fillSelection(params as ISetRangeValuesCommandParams)
  })

  function spellFormula(): void {
    const body = injector.get(IUniverInstanceService).getUnit<DocumentDataModel>(DOCS_NORMAL_EDITOR_UNIT_ID_KEY, UniverInstanceType.UNIVER_DOC)?.getSnapshot().body
    if (body?.dataStream.startsWith('=')) body.dataStream = formulaForGrid(body.dataStream.replace(/\r\n$/, '')) + end
  }

  function fillSelection(params: ISetRangeValuesCommandParams): void {
    const { range, value } = params
    const { f: formula } = value as ICellData
    const typedIn = editor.getEditLocation()
    if (!range || !typedIn || typeof formula !== 'string') return
    const rows = range.endRow - range.startRow + 1
    const columns = range.endColumn - range.startColumn + 1
    if (rows * columns === 1) return
    const lexer = injector.get(LexerTreeBuilder)
    params.value = Array.from({ length: rows }, (_row, row) => Array.from({ length: columns }, (_cell, column) => (
      { ...value, f: lexer.moveFormulaRefOffset(formula, range.startColumn + column - typedIn.column, range.startRow + row - typedIn.row) }
    )))
  }
}
