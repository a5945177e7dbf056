/**
 * Leaves boxes and results of a season their looks, number formats and rules, whatever is pasted there: values and
 * formulas come, fonts and colours of elsewhere do not, and a value that is cut leaves its box behind. Whoever wants the
 * looks chooses them in the menu beside what was pasted.
 */
import {
  type ICellData,
  type Injector,
  type IStyleData,
  IUniverInstanceService,
  ObjectMatrix,
  type Workbook,
} from '@univerjs/core'
import {
  ISheetClipboardService,
  PREDEFINED_HOOK_NAME_PASTE,
  SetRangeValuesMutation,
} from '@univerjs/preset-sheets-core'
import type { KeptWithCell } from './bookToGrid'
import type { CellsOfSheet } from './pastedEntries'

/** After what is pasted was read, whose number formats this writes over. */
const afterEntries = 101

export function keepLooks(injector: Injector): void {
  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'sticksheet-kept-looks',
    priority: afterEntries,
    onPasteCells(from, to, _data, { pasteType, copyType }) {
      const places = from && copyType === 'CUT' ? [from, to] : [to]
      return { undos: [], redos: pasteType === PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE ? places.map(asNow) : [] }
    },
    onPastePlainText: (to) => ({ undos: [], redos: [asNow(to)] }),
  })

  /** Before the paste: what is written after it gives the cells their looks back. */
  function asNow({ unitId, subUnitId, range: { rows, cols } }: CellsOfSheet) {
    const sheet = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId)
    const cells = new ObjectMatrix<ICellData>()
    for (const row of rows) {
      for (const column of cols) {
        const custom = sheet?.getCellRaw(row, column)?.custom
        const { look } = (custom ?? {}) as KeptWithCell
        if (look === undefined) continue
        cells.setValue(row, column, { s: { ...nothing, ...sheet?.getCellStyle(row, column) }, custom })
      }
    }
    return { id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue: cells.getMatrix() } }
  }
}

/** What a style is made of. Each part is taken away, because the grid adds what is written to what is there. */
const parts = 'ff fs it bl ul st ol bbl bg bd cl va tr ht vt tb td pd n'.split(' ')
const nothing = Object.fromEntries(parts.map((part) => [part, null])) as IStyleData
