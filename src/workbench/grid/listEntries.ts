import { type Injector, IUniverInstanceService, type Workbook } from '@univerjs/core'
import { IDefinedNamesService } from '@univerjs/engine-formula'
import { rangesRead } from '../../formula/rangesRead'
import type { CellContent } from '../../workbook/book'
import { cellResult } from './cellResult'

/** What the cells of a list hold: of a name, or of a reference read on the sheet `home`; without the empty ones. */
export function listEntries(injector: Injector, workbook: string, list: string, home: string): readonly CellContent[] {
  const open = injector.get(IUniverInstanceService).getUnit<Workbook>(workbook)
  const refersTo = injector.get(IDefinedNamesService).getValueByName(workbook, list)?.formulaOrRefString ?? list
  return rangesRead(`=${refersTo}`, home, new Map()).flatMap((range) => {
    const entries: CellContent[] = []
    open
      ?.getSheetBySheetName(range.sheet)
      ?.getCellMatrix()
      .forValue((row, column, cell) => {
        const isInside = row >= range.top && row <= range.bottom && column >= range.left && column <= range.right
        const { value } = cellResult(cell)
        if (isInside && value !== null && value !== '') entries.push(value)
      })
    return entries
  })
}
