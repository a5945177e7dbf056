/** Reads what is pasted from elsewhere as if it were typed. What was copied in the grid is no text and needs no reading. */
import {
  CellValueType,
  getNumfmtParseValueFilter,
  type ICellData,
  type Injector,
  isTextFormat,
  IUniverInstanceService,
  ObjectMatrix,
  type Workbook,
} from '@univerjs/core'
import {
  ISheetClipboardService,
  PREDEFINED_HOOK_NAME_PASTE,
  SetRangeValuesMutation,
} from '@univerjs/preset-sheets-core'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { entryForGrid } from './entryForGrid'
import { formulaForGrid } from './formulaForGrid'

/** After the grid's own hooks, whose cells this writes over. */
const last = 100

/** As the grid names the cells that are copied or pasted to. */
export interface CellsOfSheet {
  readonly unitId: string
  readonly subUnitId: string
  readonly range: { readonly rows: readonly number[]; readonly cols: readonly number[] }
}

export function readPastedEntries(injector: Injector, mark: () => DecimalMark): void {
  const pastesContent: readonly string[] = [
    PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE,
    PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_VALUE,
  ]

  const written = ({ unitId, subUnitId, range }: CellsOfSheet, entries: ObjectMatrix<string>) => {
    const sheet = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId)
    const cells = new ObjectMatrix<ICellData>()
    entries.forValue((row, column, entry) => {
      const place = [range.rows[row]!, range.cols[column]!] as const
      const cell = isTextFormat(sheet?.getCellStyle(...place)?.n?.pattern) ? undefined : cellOf(entry, mark())
      if (cell !== undefined) cells.setValue(...place, cell)
    })
    // The undos of the grid's own hooks put the same cells back.
    return {
      undos: [],
      redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue: cells.getMatrix() } }],
    }
  }

  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'sticksheet-pasted-entries',
    priority: last,
    onPasteCells(pasteFrom, pasteTo, data, { pasteType }) {
      const entries = new ObjectMatrix<string>()
      if (!pasteFrom && pastesContent.includes(pasteType))
        data.forValue((row, column, { v }) => {
          entries.setValue(row, column, String(v ?? ''))
        })
      return written(pasteTo, entries)
    },
    onPastePlainText(pasteTo, text) {
      return written(pasteTo, new ObjectMatrix({ 0: { 0: text } }))
    },
  })
}

/** Undefined where the grid's own reading holds: texts, and numbers of more digits than a cell can hold. */
function cellOf(pasted: string, mark: DecimalMark): ICellData | undefined {
  const entry = entryForGrid(pasted.trim(), mark)
  const empty = { v: null, f: null, si: null, p: null, t: null }
  // The grid has chosen a number format for what it read.
  const formatted = (pattern?: string) => ({ s: { n: pattern === undefined ? null : { pattern } } })
  if (entry === '') return empty
  if (entry === undefined) return { ...empty, v: pasted, t: CellValueType.FORCE_STRING, ...formatted() }
  if (entry.startsWith('=') && entry.length > 1) return { ...empty, f: formulaForGrid(entry) }
  const read = getNumfmtParseValueFilter(entry)
  // A space behind a name would make it another one, which nobody sees.
  if (typeof read?.v !== 'number' && entry !== pasted) return { ...empty, v: entry, t: CellValueType.STRING }
  if (typeof read?.v !== 'number' || entry.replace(/\D/g, '').length > 15) return undefined
  return { ...empty, v: read.v, t: CellValueType.NUMBER, ...formatted(read.z) }
}
