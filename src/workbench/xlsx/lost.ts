/** What a workbook holds that the grid has no place for. */
import type { Words } from '../../wording/words'
import { others } from './otherParts'
import { frameOf, notePaths, rootOf, textOfPart, workbookPath, type SheetPart } from './parts'
import { propertiesOf } from './properties'
import {
  calculationSettings,
  hasOtherPrintSetUp,
  hasOtherTabColour,
  hasOtherTitles,
  printAreas,
  viewSettings,
  windowSettings,
} from './settings'
import type { Parts } from './unpack'

export interface Lost {
  readonly what: keyof Words['files']['lost']
  /** Sheets, names, or why and where, as the sentence takes them; empty for all else. */
  readonly names: readonly string[]
}

interface Trait {
  readonly found: RegExp
  readonly what: Lost['what']
}

const inPaths: readonly Trait[] = [
  { found: /^xl\/pivot/, what: 'pivotTables' },
  { found: /^xl\/(charts|chartsheets)\//, what: 'charts' },
  { found: /^xl\/media\//, what: 'pictures' },
  { found: /^xl\/externalLinks\//, what: 'linkedWorkbooks' },
  { found: /^xl\/vba/, what: 'macros' },
  { found: /^xl\/(connections\.xml$|queryTables\/)/, what: 'dataConnections' },
  { found: /^xl\/(slicer|timeline)/, what: 'slicers' },
  { found: /^xl\/(ctrlProps|activeX)\//, what: 'formControls' },
  { found: /^xl\/embeddings\//, what: 'embeddedDocuments' },
  { found: /^xl\/(threadedComments|persons)\//, what: 'conversations' },
  { found: /^_xmlsignatures\//, what: 'signature' },
]

const inDrawings: readonly Trait[] = [{ found: /<(\w+:)?(sp|cxnSp|grpSp)[ >]/, what: 'shapes' }]

const inSheets: readonly Trait[] = [
  { found: /<(\w+:)?conditionalFormatting[ >]/, what: 'conditionalFormats' },
  { found: /<(\w+:)?mergeCell /, what: 'mergedCells' },
  { found: /<(\w+:)?autoFilter /, what: 'filters' },
  { found: /<(\w+:)?sheetProtection /, what: 'sheetProtection' },
  { found: /<(\w+:)?(rowBreaks|colBreaks)[ >]/, what: 'pageBreaks' },
  { found: /<(\w+:)?hyperlink /, what: 'links' },
  { found: /<(\w+:)?sparklineGroup[ >]/, what: 'sparklines' },
  { found: /<(\w+:)?(row|col) [^>]*hidden="(1|true)"/, what: 'hiddenRows' },
  { found: /<(\w+:)?(row|col) [^>]*outlineLevel="[1-9]/, what: 'groups' },
  { found: /<(\w+:)?(row|sheetFormatPr) [^>]*customHeight="(1|true)"/, what: 'rowHeights' },
  { found: /<(\w+:)?(row [^>]*customFormat="(1|true)"|col [^>]*style="[1-9])/, what: 'rowFormats' },
]

const inWorkbook: readonly Trait[] = [
  { found: /<(\w+:)?workbookProtection /, what: 'workbookProtection' },
  { found: /date1904="(1|true)"/, what: 'datesFrom1904' },
]

const inNotes: readonly Trait[] = [{ found: /<(\w+:)?author>(?!Author<|<)[^<]|<(\w+:)?rPr>/, what: 'noteFormats' }]

/** What only the reading of the cells brings to light. */
export interface SeenInCells {
  richText: boolean
  ownStyles: boolean
  otherRules: boolean
  otherTables: boolean
}

export function whatIsLost(
  parts: Parts,
  sheets: readonly SheetPart[],
  ofFormulas: readonly Lost[],
  seen: SeenInCells,
): Lost[] {
  const paths = Object.keys(parts)
  const drawings = paths
    .filter((path) => /^xl\/drawings\/[^/]+\.xml$/.test(path))
    .map((path) => textOfPart(parts, path))
  const texts = sheets.map(({ path }) => textOfPart(parts, path))
  const hidden = sheets.filter((sheet) => sheet.hidden).map(({ name }) => name)
  const workbook = rootOf(parts, workbookPath)
  const bySheet = new Map(sheets.map((sheet) => [sheet.name, frameOf(parts, sheet)]))
  const frames = [...bySheet.values()]
  const notes = notePaths(parts, sheets).map((path) => textOfPart(parts, path))
  const tabs = [...bySheet].flatMap(([name, frame]) => (hasOtherTabColour(frame) ? [name] : []))
  return [
    ...hits(inPaths, paths),
    ...lostIf(seen.otherTables, 'tables'),
    ...hits(inDrawings, drawings),
    ...hits(inSheets, texts),
    ...lostIf(frames.some(hasOtherPrintSetUp) || hasOtherTitles(parts, workbook, bySheet), 'printSetUp'),
    ...listed('printAreas', printAreas(parts, workbook)),
    ...listed('tabColours', tabs),
    ...listed('view', [...new Set([...frames.flatMap(viewSettings), ...windowSettings(workbook)])]),
    ...hits(inWorkbook, [textOfPart(parts, workbookPath)]),
    ...listed('calculation', calculationSettings(workbook)),
    ...listed('hiddenSheets', hidden),
    ...ofFormulas,
    ...lostIf(seen.richText, 'richText'),
    ...lostIf(seen.ownStyles, 'ownStyles'),
    ...lostIf(seen.otherRules || texts.some((text) => /<x14:dataValidation /.test(text)), 'otherRules'),
    ...hits(inNotes, notes),
    ...listed('properties', propertiesOf(parts).others),
    ...listed('others', others(parts, sheets, workbook, frames)),
  ]
}

function lostIf(isSo: boolean, what: Lost['what'], names: readonly string[] = []): Lost[] {
  return isSo ? [{ what, names }] : []
}

function hits(traits: readonly Trait[], texts: readonly string[]): Lost[] {
  return traits.filter(({ found }) => texts.some((text) => found.test(text))).map(({ what }) => ({ what, names: [] }))
}

function listed(what: Lost['what'], names: readonly string[]): Lost[] {
  return lostIf(names.length > 0, what, names)
}
