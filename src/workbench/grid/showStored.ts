import type { ICellData, Injector, IRange, Workbook } from '@univerjs/core'
import { FormulaDataModel } from '@univerjs/engine-formula'
import { blockIn, positionOf } from '../../formula/address'
import type { StoredResults } from '../../workbook/storedResults'
import { gridContent } from './bookToGrid'

type ByPlace<Value> = Record<number, Record<number, Value>>

/** Puts results into the cells of a workbook that was just made and is not calculated yet. */
export function showStored(injector: Injector, workbook: Workbook, stored: StoredResults): void {
  const [spilled, ranges]: [Record<string, ByPlace<ICellData>>, Record<string, ByPlace<IRange>>] = [{}, {}]
  workbook.getSheets().forEach((worksheet, index) => {
    const { values, spills } = stored[index]!
    const sheet = worksheet.getSheetId()
    const [spilledHere, rangesHere]: [ByPlace<ICellData>, ByPlace<IRange>] = [{}, {}]
    for (const [address, value] of Object.entries(values)) {
      const { row, column } = positionOf(address)
      const own = worksheet.getCellRaw(row, column)
      if (own?.f) worksheet.getCellMatrix().setValue(row, column, { ...own, ...gridContent(value) })
      else (spilledHere[row] ??= {})[column] = gridContent(value)
    }
    for (const [address, range] of Object.entries(spills)) {
      const { row, column } = positionOf(address)
      const { top: startRow, left: startColumn, bottom: endRow, right: endColumn } = blockIn(range)
      ;(rangesHere[row] ??= {})[column] = { startRow, startColumn, endRow, endColumn }
    }
    spilled[sheet] = spilledHere
    ranges[sheet] = rangesHere
  })
  const model = injector.get(FormulaDataModel)
  model.setArrayFormulaCellData({ [workbook.getUnitId()]: spilled })
  model.setArrayFormulaRange({ [workbook.getUnitId()]: ranges })
}
