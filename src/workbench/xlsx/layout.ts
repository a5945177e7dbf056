/** How a sheet of a file is looked at and printed, as far as a book carries it on. */
import type { XmlElement } from '@cj-tech-master/excelts/xml'
import type { AddWorksheetOptions, WorksheetView } from '@cj-tech-master/excelts'
import type { Sheet, SheetLayout, SheetMargins } from '../../workbook/book'
import { elementsOf, isSet } from './parts'

const usualZoom = 100

/** Excel's own, in inches, and those of the library we write with. */
const usualMargins: SheetMargins = { left: 0.7, right: 0.7, top: 0.75, bottom: 0.75, header: 0.3, footer: 0.3 }

/** Of a sheet without its cells; undefined where all is as usual. */
export function layoutOf(frame: XmlElement): SheetLayout | undefined {
  const view = elementsOf(frame, 'sheetView')[0]?.attributes ?? {}
  const tab = elementsOf(frame, 'tabColor')[0]?.attributes.rgb
  const zoom = Number(view.zoomScale ?? usualZoom)
  const margins = marginsOf(elementsOf(frame, 'pageMargins')[0]?.attributes)
  const layout: SheetLayout = {
    ...(isSet(view.rightToLeft) && { rightToLeft: true }),
    ...(view.showGridLines !== undefined && !isSet(view.showGridLines) && { hidesGridlines: true }),
    ...(zoom > 0 && zoom !== usualZoom && { zoom }),
    ...(tab !== undefined && { tabColour: tab }),
    ...(margins && { margins }),
  }
  return Object.keys(layout).length > 0 ? layout : undefined
}

function marginsOf(attributes: XmlElement['attributes'] | undefined): SheetMargins | undefined {
  if (attributes === undefined) return undefined
  const inches = (side: keyof SheetMargins) => Number(attributes[side] ?? usualMargins[side])
  const sides = Object.keys(usualMargins) as (keyof SheetMargins)[]
  if (sides.every((side) => inches(side) === usualMargins[side])) return undefined
  return Object.fromEntries(sides.map((side) => [side, inches(side)])) as unknown as SheetMargins
}

/** As the library takes it. */
export function optionsOf({ layout = {}, frozenRows, frozenColumns }: Sheet): AddWorksheetOptions {
  const { rightToLeft, hidesGridlines, zoom, tabColour, margins } = layout
  const view: Partial<WorksheetView> = {
    ...(frozenRows + frozenColumns > 0 && { state: 'frozen', xSplit: frozenColumns, ySplit: frozenRows }),
    ...(rightToLeft && { rightToLeft }),
    ...(hidesGridlines && { showGridLines: false }),
    ...(zoom !== undefined && { zoomScale: zoom, zoomScaleNormal: zoom }),
  }
  return {
    views: Object.keys(view).length > 0 ? [view] : [],
    ...(tabColour !== undefined && { properties: { tabColor: { argb: tabColour } } }),
    pageSetup: {
      orientation: 'landscape',
      paperSize: 9,
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      ...(margins && { margins }),
      ...(frozenRows > 0 && { printTitlesRow: `1:${frozenRows}` }),
    },
    headerFooter: { oddFooter: '&L&F, &A&RPage &P of &N' },
  }
}
