/**
 * Scrolls to a cell until all of it stands beside what is frozen. The library counts from the edge of the sheet, as if
 * the frozen columns were as wide as those that scroll: next to a wide one it left the cell behind it, and below a high
 * title it cut the first row. Seen with univer 0.25.1.
 */
import {
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core'
import {
  getSheetObject,
  IRenderManagerService,
  ScrollCommand,
  SHEET_VIEWPORT_KEY,
  SheetSkeletonManagerService,
  SheetsScrollRenderController,
} from '@univerjs/preset-sheets-core'
import { replaceShared } from './replaced'

/** Whether it had to scroll. */
type ScrollTo = (row: number, column: number, forceTop?: boolean, forceLeft?: boolean) => boolean

export function scrollBesideFrozen(injector: Injector): void {
  const controller = SheetsScrollRenderController.prototype as unknown as Record<
    'scrollToCell' | '_scrollToCell',
    ScrollTo
  >
  const scroll: ScrollTo = (...to) => scrollTo(injector, ...to)
  replaceShared(injector, controller, '_scrollToCell', () => scroll)
  replaceShared(injector, controller, 'scrollToCell', () => (row, column) => scroll(row, column, true, true))
}

function scrollTo(injector: Injector, row: number, column: number, forceTop = false, forceLeft = false): boolean {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)
  const manager = injector.get(IRenderManagerService)
  const render = workbook && manager.getRenderById(workbook.getUnitId())
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton()
  const view = workbook && getSheetObject(workbook, manager)?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)
  if (!skeleton || !view) return false
  const { xSplit, ySplit } = workbook.getActiveSheet().getFreeze()
  const { left, right, top, bottom } = view.calcViewportInfo().viewBound
  const x = scrolled(column, {
    ends: skeleton.columnWidthAccumulation,
    frozen: xSplit,
    now: view.viewportScrollX,
    room: right - left,
    isForced: forceLeft,
  })
  const y = scrolled(row, {
    ends: skeleton.rowHeightAccumulation,
    frozen: ySplit,
    now: view.viewportScrollY,
    room: bottom - top,
    isForced: forceTop,
  })
  if (x === view.viewportScrollX && y === view.viewportScrollY) return false
  const { row: startRow, column: startColumn, rowOffset, columnOffset } = skeleton.getOffsetRelativeToRowCol(x, y)
  return injector.get(ICommandService).syncExecuteCommand(ScrollCommand.id, {
    sheetViewStartRow: startRow,
    sheetViewStartColumn: startColumn,
    offsetX: columnOffset,
    offsetY: rowOffset,
  })
}

interface Along {
  /** Where each row or column ends, from the edge of the sheet. */
  readonly ends: readonly number[]
  readonly frozen: number
  readonly now: number
  readonly room: number
  /** Whether the cell is to be the first that is seen. */
  readonly isForced: boolean
}

/** How far rows or columns are scrolled for this one to be seen. */
function scrolled(index: number, { ends, frozen, now, room, isForced }: Along): number {
  if (index < frozen) return isForced ? 0 : now
  const edge = (at: number) => (at === 0 ? 0 : (ends[Math.min(at, ends.length) - 1] ?? 0))
  const start = edge(index) - edge(frozen)
  const end = edge(index + 1) - edge(frozen)
  if (isForced || start < now) return start
  if (end <= now + room) return now
  // What is cut at the edge of the frozen part would read as if it belonged to it.
  const whole = ends.slice(frozen, index).map((one) => one - edge(frozen))
  return whole.find((one) => one >= end - room) ?? start
}
