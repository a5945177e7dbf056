/**
 * Fills what Ctrl+Enter enters into several cells, as Excel does. The grid gives all of them one and the same formula:
 * of =A4+1, entered into C3:C4, each cell would add to A4, without an error. Seen with univer 0.25.1.
 */
import { type ICellData, ICommandService, type Injector } from '@univerjs/core'
import { LexerTreeBuilder } from '@univerjs/engine-formula'
import {
  IEditorBridgeService,
  type ISetRangeValuesCommandParams,
  SetRangeValuesCommand,
} from '@univerjs/preset-sheets-core'

export function fillFormulas(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService)
  const lexer = injector.get(LexerTreeBuilder)
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id === SetRangeValuesCommand.id) fillSelection(params as ISetRangeValuesCommandParams)
  })

  function fillSelection(params: ISetRangeValuesCommandParams): void {
    const { range, value } = params
    const { f: formula } = value as ICellData
    const typedIn = editor.getEditLocation()
    if (!range || !typedIn || typeof formula !== 'string') return
    const rows = range.endRow - range.startRow + 1
    const columns = range.endColumn - range.startColumn + 1
    if (rows * columns === 1) return
    const [right, down] = [range.startColumn - typedIn.column, range.startRow - typedIn.row]
    params.value = Array.from({ length: rows }, (_row, row) =>
      Array.from({ length: columns }, (_cell, column) => ({
        ...value,
        f: lexer.moveFormulaRefOffset(formula, right + column, down + row),
      })),
    )
  }
}
