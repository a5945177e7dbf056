/**
 * The sentence of a cell that holds what its rule does not allow. The grid's own rules for cells cost a tenth of the
 * time of an edit, so the grid takes every entry, and this tells which to mark.
 */
import { type Injector, IUniverInstanceService, type Workbook } from '@univerjs/core'
import { IDefinedNamesService } from '@univerjs/engine-formula'
import { rangesRead } from '../../formula/rangesRead'
import { isAllowed } from '../../workbook/isAllowed'
import type { KeptWithCell } from './bookToGrid'
import type { Place } from './cellCalls'
import { cellResult } from './cellResult'

export function refusedEntry(injector: Injector, { workbook, sheet, row, column }: Place): string | undefined {
  const open = injector.get(IUniverInstanceService).getUnit<Workbook>(workbook)
  const worksheet = open?.getSheetBySheetId(sheet)
  const cell = worksheet?.getCellRaw(row, column)
  const { allowed } = (cell?.custom ?? {}) as KeptWithCell
  if (!open || !worksheet || !cell || allowed === undefined || cell.f) return undefined
  const { value } = cellResult(cell)
  if (value === null || value === '') return undefined
  const entries = 'list' in allowed ? valuesOf(allowed.list, worksheet.getName()) : []
  return isAllowed(allowed, value, entries) ? undefined : allowed.sentence

  function valuesOf(list: string, home: string): readonly unknown[] {
    const refersTo = injector.get(IDefinedNamesService).getValueByName(workbook, list)?.formulaOrRefString ?? list
    return rangesRead(`=${refersTo}`, home, new Map()).flatMap((range) => {
      const entries: unknown[] = []
      open
        ?.getSheetBySheetName(range.sheet)
        ?.getCellMatrix()
        .forValue((row, column, entry) => {
          if (row >= range.top && row <= range.bottom && column >= range.left && column <= range.right)
            entries.push(cellResult(entry).value)
        })
      return entries
    })
  }
}
