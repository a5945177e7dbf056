/**
 * Jumps to a cell of any sheet that is typed into the box of names: Orders!E9. The grid takes the cell of that address
 * on the sheet that is open, where the next key writes. Seen with univer 0.25.1.
 */
import { ILayoutService } from '@univerjs/preset-sheets-core'
import { blockOf } from '../../formula/address'
import type { CellPlace } from '../../workbook/cellPlace'
import type { OpenGrid } from './open'
import { select } from './show'

const box = '[data-u-comp="defined-name"]'

/** Where there is no such place, nothing is selected, and `onNoPlace` is told what was typed. */
export function jumpToSheets(grid: OpenGrid, container: HTMLElement, onNoPlace: (typed: string) => void): void {
  const jump = (event: KeyboardEvent): void => {
    const { key, target } = event
    if (key !== 'Enter' || !(target instanceof HTMLInputElement) || !target.closest(box)) return
    if (!target.value.includes('!')) return
    // Before the grid takes the key, and before it answers what is asked instead.
    event.stopPropagation()
    event.preventDefault()
    const place = placeOf(grid, target.value)
    if (place === undefined) return onNoPlace(target.value)
    void select(grid, place)
    grid.injector.get(ILayoutService).focus()
  }
  container.addEventListener('keydown', jump, { capture: true })
}

function placeOf({ workbook }: OpenGrid, typed: string): CellPlace | undefined {
  const [, quoted, plain, address] = /^(?:'(.*)'|(.*))!([^!]*)$/.exec(typed.trim()) ?? []
  const name = (quoted?.replaceAll("''", "'") ?? plain ?? '').toLowerCase()
  const sheet = workbook()
    .getSheets()
    .find((one) => one.getSheetName().toLowerCase() === name)
  const block = blockOf((address ?? '').trim())
  if (sheet === undefined || block === undefined) return undefined
  // The grid has as many rows and columns as it needs; a whole column has no last row.
  const isBeyond = (places: readonly number[], most: number) => places.some((at) => at >= most && at !== Infinity)
  const { top, bottom, left, right } = block
  if (isBeyond([top, bottom], sheet.getMaxRows()) || isBeyond([left, right], sheet.getMaxColumns())) return undefined
  return { sheet: sheet.getSheetName(), address: address!.trim() }
}
