/**
 * The sentence of a cell that holds what its rule does not allow. The grid's own rules for cells cost a tenth of the
 * time of an edit, so the grid takes every entry, and this tells which to mark.
 */
import { type Injector, IUniverInstanceService, type Workbook } from '@univerjs/core'
import { isAllowed } from '../../workbook/isAllowed'
import type { KeptWithCell } from './bookToGrid'
import type { Place } from './cellCalls'
import { cellResult } from './cellResult'
import { listEntries } from './listEntries'

export function refusedEntry(injector: Injector, { workbook, sheet, row, column }: Place): string | undefined {
  const open = injector.get(IUniverInstanceService).getUnit<Workbook>(workbook)
  const worksheet = open?.getSheetBySheetId(sheet)
  const cell = worksheet?.getCellRaw(row, column)
  const { allowed } = (cell?.custom ?? {}) as KeptWithCell
  if (!open || !worksheet || !cell || allowed === undefined || cell.f) return undefined
  const { value } = cellResult(cell)
  if (value === null || value === '') return undefined
  const entries = 'list' in allowed ? listEntries(injector, workbook, allowed.list, worksheet.getName()) : []
  return isAllowed(allowed, value, entries) ? undefined : allowed.sentence
}
