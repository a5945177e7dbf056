/**
 * Jumps to a cell of any sheet that is typed into the box of names: Orders!E9. The grid takes the cell of that address
 * on the sheet that is open, where the next key writes. Seen with univer 0.25.1.
 */
import { deserializeRangeWithSheet } from '@univerjs/engine-formula'
import { ILayoutService } from '@univerjs/preset-sheets-core'
import { blockOf } from '../../formula/address'
import type { CellPlace } from '../../workbook/port'
import type { OpenGrid } from './open'
import { select } from './show'

const box = '[data-u-comp="defined-name"]'

/** Where there is no such place, nothing is selected, and `onNoPlace` is told what was typed. */
export function jumpToSheets(grid: OpenGrid, container: HTMLElement, onNoPlace: (typed: string) => void): void {
  const jump = (event: KeyboardEvent): void => {
    const { key, target } = event
    if (key !== 'Enter' || !(target instanceof HTMLInputElement) || !target.closest(box)) return
    if (!target.value.includes('!')) return
    // Before the grid takes the key.
    event.stopPropagation()
    const place = placeOf(grid, target.value)
    if (place === undefined) return onNoPlace(target.value)
    void select(grid, place)
    grid.injector.get(ILayoutService).focus()
  }
  container.addEventListener('keydown', jump, { capture: true })
}

function placeOf({ workbook }: OpenGrid, typed: string): CellPlace | undefined {
  const { sheetName } = deserializeRangeWithSheet(typed.trim())
  const names = workbook()
    .getSheets()
    .map((sheet) => sheet.getSheetName())
  const sheet = names.find((name) => name.toLowerCase() === sheetName.toLowerCase())
  const address = typed.slice(typed.lastIndexOf('!') + 1).trim()
  return sheet === undefined || blockOf(address) === undefined ? undefined : { sheet, address }
}
