/** Settings of sheets and of the workbook that a file of ours does not have. */
import type { XmlElement } from '@cj-tech-master/excelts/xml'
import type { Words } from '../../wording/words'
import { elementsOf, isSet, sheetNames, textOf } from './parts'
import type { Parts } from './unpack'

/** What is not said at all is nobody's wish. */
const ourPage: Readonly<Record<string, string>> = {
  orientation: 'landscape',
  paperSize: '9',
  fitToWidth: '1',
  fitToHeight: '0',
  scale: '100',
  pageOrder: 'downThenOver',
  cellComments: 'none',
  errors: 'displayed',
  blackAndWhite: '0',
  draft: '0',
  useFirstPageNumber: '0',
}
const ourFooter = '&L&F, &A&RPage &P of &N'

/** Ours is landscape on A4, one page wide, with file, sheet and page number at the foot. */
export function hasOtherPrintSetUp(frame: XmlElement): boolean {
  const [page] = elementsOf(frame, 'pageSetup')
  const isOurPage =
    page === undefined ||
    (page.attributes.orientation === ourPage.orientation &&
      Object.entries(page.attributes).every(([name, value]) => (ourPage[name] ?? value) === value))
  const footers = ['odd', 'even', 'first'].flatMap((pages) =>
    ['Header', 'Footer'].flatMap((place) => elementsOf(frame, pages + place).map(textOf)),
  )
  const isOurFooter = footers.every((text) => text === ourFooter)
  return !isOurPage || !isOurFooter || elementsOf(frame, 'printOptions').length > 0
}

/** Ours are the frozen rows, and no columns. */
export function hasOtherTitles(parts: Parts, workbook: XmlElement, frames: ReadonlyMap<string, XmlElement>): boolean {
  return namesOfSheets(parts, workbook, '_xlnm.Print_Titles').some(({ sheet, refersTo }) => {
    const frame = frames.get(sheet)
    const frozen = frame && elementsOf(frame, 'pane')[0]?.attributes.ySplit
    return !new RegExp(`^[^,]*!\\$1:\\$${frozen}$`).test(refersTo)
  })
}

/** The sheets of which only a part is printed. */
export function printAreas(parts: Parts, workbook: XmlElement): string[] {
  return namesOfSheets(parts, workbook, '_xlnm.Print_Area').map(({ sheet }) => sheet)
}

function namesOfSheets(parts: Parts, workbook: XmlElement, wanted: string): { sheet: string; refersTo: string }[] {
  const sheets = sheetNames(parts)
  return elementsOf(workbook, 'definedName')
    .filter(({ attributes }) => attributes.name === wanted)
    .map((element) => ({
      sheet: sheets[Number(element.attributes.localSheetId)] ?? '',
      refersTo: textOf(element).trim(),
    }))
}

/** A colour of the theme is another one in another theme. */
export function hasOtherTabColour(frame: XmlElement): boolean {
  return elementsOf(frame, 'tabColor').some(({ attributes }) => attributes.rgb === undefined)
}

export function viewSettings(frame: XmlElement): (keyof Words['files']['view'])[] {
  const views = elementsOf(frame, 'sheetViews').flatMap((all) => elementsOf(all, 'sheetView'))
  const { attributes = {} } = views[0] ?? {}
  return [
    ...oneIf(
      elementsOf(frame, 'pane').some((pane) => (pane.attributes.state ?? 'split') === 'split'),
      'splitPanes',
    ),
    ...oneIf(isSet(attributes.showFormulas), 'shownFormulas'),
    ...oneIf(isUnset(attributes.showZeros), 'hiddenZeros'),
    ...oneIf(isUnset(attributes.showRowColHeaders), 'hiddenHeadings'),
    ...oneIf((attributes.view ?? 'normal') !== 'normal', 'pageView'),
    ...oneIf(views.length > 1 || elementsOf(frame, 'customSheetView').length > 0, 'severalViews'),
  ]
}

export function windowSettings(workbook: XmlElement): (keyof Words['files']['view'])[] {
  const isShared = elementsOf(workbook, 'workbookView').length > 1
  return oneIf(isShared || elementsOf(workbook, 'customWorkbookView').length > 0, 'severalViews')
}

export function calculationSettings(workbook: XmlElement): (keyof Words['files']['calculation'])[] {
  const { attributes = {} } = elementsOf(workbook, 'calcPr')[0] ?? {}
  return [
    ...oneIf(isSet(attributes.iterate), 'iteration'),
    ...oneIf(isUnset(attributes.fullPrecision), 'shownPrecision'),
    ...oneIf((attributes.calcMode ?? 'auto') !== 'auto', 'byHand'),
    ...oneIf(attributes.refMode === 'R1C1', 'rowsAndColumns'),
  ]
}

function oneIf<const Name>(isSo: boolean, name: Name): Name[] {
  return isSo ? [name] : []
}

function isUnset(attribute: string | undefined): boolean {
  return attribute !== undefined && !isSet(attribute)
}
