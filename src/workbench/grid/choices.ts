/**
 * What may be chosen for the selected cell, for a list beside it. The grid has such lists in a package of its own, which
 * is 38 kB larger when compressed, checks the rules of all cells at each edit, and refuses entries in its own words.
 */
import { ICommandService, type Injector } from '@univerjs/core'
import {
  IRenderManagerService,
  SetRangeValuesCommand,
  SetScrollOperation,
  SetZoomRatioOperation,
  SHEET_VIEWPORT_KEY,
  SheetSkeletonManagerService,
} from '@univerjs/preset-sheets-core'
import type { CellContent } from '../../workbook/book'
import type { CellPlace } from '../../workbook/cellPlace'
import { gridContent, type KeptWithCell } from './bookToGrid'
import { listEntries } from './listEntries'
import type { OpenGrid } from './open'

export interface CellChoices extends CellPlace {
  readonly entries: readonly CellContent[]
  readonly chosen: CellContent | null
  /** On the page; undefined while the cell is out of sight. */
  readonly box?: CellBox
}

export interface CellBox {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Undefined where the selected cell has no list, or holds a formula. */
export function choicesOf({ api, injector }: OpenGrid): CellChoices | undefined {
  const open = api.getActiveWorkbook()
  const cell = open?.getActiveCell()
  const data = open
    ?.getActiveSheet()
    .getSheet()
    .getCellRaw(cell?.getRow() ?? 0, cell?.getColumn() ?? 0)
  const { allowed } = (data?.custom ?? {}) as KeptWithCell
  if (!open || !cell || !allowed || !('list' in allowed) || data?.f) return undefined
  const box = boxOf(injector, open.getId(), cell.getRow(), cell.getColumn())
  return {
    sheet: cell.getSheetName(),
    address: cell.getA1Notation(),
    entries: listEntries(injector, open.getId(), allowed.list, cell.getSheetName()),
    chosen: cell.getValue(),
    ...(box && { box }),
  }
}

/** Writes into the selected cell as if it had been typed there, in place of what is being typed. */
export async function choose({ injector, workbook }: OpenGrid, entry: CellContent): Promise<void> {
  await workbook().endEditingAsync(false)
  const cell = workbook().getActiveCell()
  if (!cell) return
  injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, {
    unitId: cell.getUnitId(),
    subUnitId: cell.getSheetId(),
    range: cell.getRange(),
    value: { f: null, p: null, si: null, ...gridContent(entry) },
  })
}

/** Calls back whenever cells may show elsewhere on the page; returns the way to stop. */
export function onScroll(injector: Injector, listener: () => void): () => void {
  const moving = injector.get(ICommandService).onCommandExecuted(({ id }) => {
    // The grid draws after its commands.
    if (id === SetScrollOperation.id || id === SetZoomRatioOperation.id) requestAnimationFrame(listener)
  })
  window.addEventListener('resize', listener)
  return () => {
    moving.dispose()
    window.removeEventListener('resize', listener)
  }
}

function boxOf(injector: Injector, unitId: string, row: number, column: number): CellBox | undefined {
  const render = injector.get(IRenderManagerService).getRenderById(unitId)
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentParam()?.skeleton
  const scrolled = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)
  if (!render || !skeleton || !scrolled) return undefined
  const canvas = render.engine.getCanvasElement().getBoundingClientRect()
  const { scaleX, scaleY } = render.scene.getAncestorScale()
  const { startX, startY, endX, endY } = skeleton.getCellWithCoordByIndex(row, column)
  // What is frozen stays where it is, and covers what is scrolled below it.
  const [right, down] = [
    startX < scrolled.left ? 0 : scrolled.viewportScrollX,
    startY < scrolled.top ? 0 : scrolled.viewportScrollY,
  ]
  const isCovered = (right > 0 && endX - right <= scrolled.left) || (down > 0 && endY - down <= scrolled.top)
  const box = {
    left: canvas.left + (startX - right) * scaleX,
    top: canvas.top + (startY - down) * scaleY,
    right: canvas.left + (endX - right) * scaleX,
    bottom: canvas.top + (endY - down) * scaleY,
  }
  return isCovered || box.left >= canvas.right || box.top >= canvas.bottom ? undefined : box
}
