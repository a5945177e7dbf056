/** Shows in the grid which cells refuse or hold what they may not, and the sentence, where the grid itself would only name the error. */
import { type Injector, InterceptorEffectEnum, IUniverInstanceService, type Workbook } from '@univerjs/core'
import {
  CellAlertManagerService,
  CellAlertType,
  HoverManagerService,
  INTERCEPTOR_POINT,
  type ISheetLocationBase,
  SheetInterceptorService,
} from '@univerjs/preset-sheets-core'
import { refusedStyle } from './looks'
import type { CellCalls } from './cellCalls'
import { refusedEntry } from './refusedEntry'

/** The grid's own key of the popup that it opens over a cell with an error. */
const errorPopup = 'SHEET_FORMULA_ALERT'
const entryPopup = 'STICKSHEET_ENTRY'

export function markRefusals(injector: Injector, calls: CellCalls): void {
  const units = injector.get(IUniverInstanceService)
  const sentenceAt = ({ unitId, subUnitId, row, col }: ISheetLocationBase): string | undefined => {
    if (calls.refuseNowhere) return undefined
    const shown = units.getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId)?.getCellRaw(row, col)?.v
    return typeof shown === 'string'
      ? calls.sentence({ workbook: unitId, sheet: subUnitId, row, column: col }, shown)
      : undefined
  }

  const entryAt = ({ unitId, subUnitId, row, col }: ISheetLocationBase) =>
    refusedEntry(injector, { workbook: unitId, sheet: subUnitId, row, column: col })

  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: 20,
    handler: (cell, location, next) =>
      (sentenceAt(location) ?? entryAt(location)) === undefined
        ? next(cell)
        : next({ ...cell, interceptorStyle: { ...cell?.interceptorStyle, ...refusedStyle } }),
  })

  const popups = injector.get(CellAlertManagerService)
  injector.get(HoverManagerService).currentCell$.subscribe((hovered) => {
    const message = hovered && entryAt(hovered.location)
    if (!hovered || message === undefined) popups.removeAlert(entryPopup)
    else
      popups.showAlert({
        type: CellAlertType.ERROR,
        title: 'Not taken here',
        message,
        location: hovered.location,
        width: 200,
        height: 74,
        key: entryPopup,
      })
  })
  popups.currentAlert$.subscribe((open) => {
    const popup = open.find(([key]) => key === errorPopup)?.[1].alert
    const sentence = popup && sentenceAt(popup.location)
    if (!popup || sentence === undefined || popup.message === sentence) return
    // The grid is still opening its popup: ours takes the place after that.
    queueMicrotask(() => {
      popups.removeAlert(errorPopup)
      popups.showAlert({ ...popup, title: 'Refused', message: sentence })
    })
  })
}
