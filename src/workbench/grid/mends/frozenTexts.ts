/**
 * Lets no text run across the edge of frozen columns while the others are scrolled. The library draws each part of the
 * sheet with the texts of cells beside it too, which run on into empty cells: the end of a long frozen text stood in the
 * scrolled part where other columns are, as if it were another sentence. Unscrolled, a text runs on as it should. Seen
 * with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { Font, SHEET_VIEWPORT_KEY, Spreadsheet, type Viewport } from '@univerjs/preset-sheets-core'
import { replaceShared } from './replaced'

/** Of the columns whose texts a part may show: the first, and the one after the last. */
type Columns = readonly [from: number, to: number]

const all: Columns = [0, Infinity]

const scrolledParts: readonly string[] = [SHEET_VIEWPORT_KEY.VIEW_MAIN, SHEET_VIEWPORT_KEY.VIEW_MAIN_TOP]
const frozenParts: readonly string[] = [SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT, SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT_TOP]

export function keepTextsBesideFrozen(injector: Injector): void {
  const drawnWith = new WeakMap<object, Map<string, Columns>>()
  /** Of the part that is being drawn. */
  let columns = all
  const spreadsheet: Record<'renderByViewports', DrawPart> = Spreadsheet.prototype
  replaceShared(
    injector,
    spreadsheet,
    'renderByViewports',
    (render) =>
      function (this: Spreadsheet, context, part, skeleton) {
        const before = drawnWith.get(this) ?? new Map<string, Columns>()
        drawnWith.set(this, before)
        columns = columnsOf(part.viewportKey, this.getScene().getViewports(), skeleton.worksheet.getFreeze().xSplit)
        const isOther = String(before.get(part.viewportKey) ?? all) !== String(columns)
        before.set(part.viewportKey, columns)
        // Otherwise the library moves what it drew before and adds what came into sight.
        render.call(this, context, isOther ? { ...part, isForceDirty: true } : part, skeleton)
        columns = all
      },
  )
  const font = Font.prototype as unknown as Record<'_renderFontEachCell', DrawText>
  replaceShared(
    injector,
    font,
    '_renderFontEachCell',
    (draw) =>
      function (this: Font, context, row, column, fonts) {
        return column < columns[0] || column >= columns[1] || draw.call(this, context, row, column, fonts)
      },
  )
}

type DrawPart = (this: Spreadsheet, ...given: Parameters<Spreadsheet['renderByViewports']>) => void

/** Whether nothing was drawn. */
type DrawText = (this: Font, context: unknown, row: number, column: number, fonts: unknown) => boolean

function columnsOf(part: string, views: readonly Viewport[], frozen: number): Columns {
  const scrolled = views.find(({ viewportKey }) => viewportKey === SHEET_VIEWPORT_KEY.VIEW_MAIN)?.viewportScrollX ?? 0
  if (frozen === 0 || scrolled === 0) return all
  if (scrolledParts.includes(part)) return [frozen, Infinity]
  return frozenParts.includes(part) ? [0, frozen] : all
}
