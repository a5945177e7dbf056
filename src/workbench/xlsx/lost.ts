/** What a workbook holds that the grid has no place for. */
import type { Words } from '../../wording/words'
import { textOfPart, type SheetPart } from './parts'
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
  { found: /^xl\/pivotTables\//, what: 'pivotTables' },
  { found: /^xl\/(charts|chartsheets)\//, what: 'charts' },
  { found: /^xl\/media\//, what: 'pictures' },
  { found: /^xl\/externalLinks\//, what: 'linkedWorkbooks' },
  { found: /^xl\/vbaProject\.bin$/, what: 'macros' },
  { found: /^xl\/(connections\.xml$|queryTables\/)/, what: 'dataConnections' },
  { found: /^xl\/(slicers|timelines)\//, what: 'slicers' },
  { found: /^xl\/(ctrlProps|activeX)\//, what: 'formControls' },
  { found: /^xl\/embeddings\//, what: 'embeddedDocuments' },
  { found: /^xl\/threadedComments\//, what: 'conversations' },
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
  { found: /<(\w+:)?row [^>]*customHeight="(1|true)"/, what: 'rowHeights' },
]

const inWorkbook: readonly Trait[] = [
  { found: /<(\w+:)?workbookProtection /, what: 'workbookProtection' },
  { found: /date1904="(1|true)"/, what: 'datesFrom1904' },
]

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
  return [
    ...hits(inPaths, paths),
    ...lostIf(seen.otherTables, 'tables'),
    ...hits(inDrawings, drawings),
    ...hits(inSheets, texts),
    ...lostIf(texts.some(hasOtherPrintSetUp), 'printSetUp'),
    ...hits(inWorkbook, [textOfPart(parts, 'xl/workbook.xml')]),
    ...lostIf(hidden.length > 0, 'hiddenSheets', hidden),
    ...ofFormulas,
    ...lostIf(seen.richText, 'richText'),
    ...lostIf(seen.ownStyles, 'ownStyles'),
    ...lostIf(seen.otherRules, 'otherRules'),
  ]
}

function lostIf(isSo: boolean, what: Lost['what'], names: readonly string[] = []): Lost[] {
  return isSo ? [{ what, names }] : []
}

function hits(traits: readonly Trait[], texts: readonly string[]): Lost[] {
  return traits.filter(({ found }) => texts.some((text) => found.test(text))).map(({ what }) => ({ what, names: [] }))
}

/** Ours is landscape on A4, one page wide, with file, sheet and page number at the foot. */
function hasOtherPrintSetUp(sheet: string): boolean {
  const [pageSetup] = /<(\w+:)?pageSetup [^>]*>/.exec(sheet) ?? []
  const isOurs = pageSetup === undefined || /paperSize="9" orientation="landscape" fitToHeight="0"/.test(pageSetup)
  const [headerFooter] = /<(\w+:)?headerFooter[ >][\s\S]*?<\/(\w+:)?headerFooter>/.exec(sheet) ?? []
  return (
    !isOurs || (headerFooter !== undefined && !headerFooter.includes('&amp;L&amp;F, &amp;A&amp;RPage &amp;P of &amp;N'))
  )
}
