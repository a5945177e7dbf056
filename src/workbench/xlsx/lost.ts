/** What a workbook holds that the grid has no place for, one sentence each, to be said before anything is saved. */
import { textOfPart, type FileName, type SheetPart } from './parts'
import type { Parts } from './unpack'

interface Trait {
  readonly found: RegExp
  readonly sentence: string
}

const inPaths: readonly Trait[] = [
  { found: /^xl\/pivotTables\//, sentence: 'Pivot tables are left out.' },
  { found: /^xl\/(charts|chartsheets)\//, sentence: 'Charts are left out.' },
  { found: /^xl\/media\//, sentence: 'Pictures are left out.' },
  { found: /^xl\/externalLinks\//, sentence: 'Links to other workbooks are not followed: a formula that reads one shows an error.' },
  { found: /^xl\/vbaProject\.bin$/, sentence: 'Macros are left out.' },
  { found: /^xl\/(connections\.xml$|queryTables\/)/, sentence: 'Data connections and queries are left out.' },
  { found: /^xl\/(slicers|timelines)\//, sentence: 'Slicers and timelines are left out.' },
  { found: /^xl\/(ctrlProps|activeX)\//, sentence: 'Buttons and other form controls are left out.' },
  { found: /^xl\/embeddings\//, sentence: 'Embedded documents are left out.' },
  { found: /^xl\/threadedComments\//, sentence: 'Conversations in comments become plain notes.' },
  { found: /^_xmlsignatures\//, sentence: 'The digital signature is left out.' },
]

const inDrawings: readonly Trait[] = [
  { found: /<(\w+:)?(sp|cxnSp|grpSp)[ >]/, sentence: 'Drawn shapes and text boxes are left out.' },
]

const inSheets: readonly Trait[] = [
  { found: /<(\w+:)?conditionalFormatting[ >]/, sentence: 'Conditional formats are left out.' },
  { found: /<(\w+:)?mergeCell /, sentence: 'Merged cells are separated; their text stays in the first one.' },
  { found: /<(\w+:)?autoFilter /, sentence: 'Filters are left out.' },
  { found: /<(\w+:)?sheetProtection /, sentence: 'The protection of sheets is left out.' },
  { found: /<(\w+:)?(rowBreaks|colBreaks)[ >]/, sentence: 'Page breaks set by hand are left out.' },
  { found: /<(\w+:)?hyperlink /, sentence: 'Links in cells become plain text.' },
  { found: /<(\w+:)?sparklineGroup[ >]/, sentence: 'Sparklines are left out.' },
  { found: /<(\w+:)?(row|col) [^>]*hidden="(1|true)"/, sentence: 'Hidden rows and columns are shown.' },
  { found: /<(\w+:)?(row|col) [^>]*outlineLevel="[1-9]/, sentence: 'Groups of rows and columns are left out.' },
  { found: /<(\w+:)?row [^>]*customHeight="(1|true)"/, sentence: 'Row heights set by hand are left out.' },
  { found: /<(\w+:)?f [^>]*t="dataTable"/, sentence: 'What-if data tables keep their last results as plain numbers.' },
]

const printSetUp = 'The print set-up is replaced: landscape, one page wide, with the frozen rows on every page.'
const inWorkbook: readonly Trait[] = [
  { found: /<(\w+:)?workbookProtection /, sentence: 'The protection of the workbook is left out.' },
  { found: /date1904="(1|true)"/, sentence: 'Dates are counted from 1900 from now on; a formula that adds to a date written out as a number may differ by four years.' },
]

/** What only the reading of the cells brings to light. */
export interface SeenInCells {
  richText: boolean
  ownStyles: boolean
  fixedArrays: boolean
  wholeSpills: boolean
  otherRules: boolean
  otherTables: boolean
}

export function whatIsLost(parts: Parts, sheets: readonly SheetPart[], namesLost: readonly FileName[], seen: SeenInCells): string[] {
  const paths = Object.keys(parts)
  const drawings = paths.filter((path) => /^xl\/drawings\/[^/]+\.xml$/.test(path)).map((path) => textOfPart(parts, path))
  const texts = sheets.map(({ path }) => textOfPart(parts, path))
  const hidden = sheets.filter((sheet) => sheet.hidden).map(({ name }) => name)
  return [
    ...hits(inPaths, paths),
    ...(seen.otherTables ? ['Tables become plain cells, and formulas that read them by name read the same cells by address.'] : []),
    ...hits(inDrawings, drawings),
    ...hits(inSheets, texts),
    ...(texts.some(hasOtherPrintSetUp) ? [printSetUp] : []),
    ...hits(inWorkbook, [textOfPart(parts, 'xl/workbook.xml')]),
    ...(hidden.length > 0 ? [`Hidden sheets are shown: ${hidden.join(', ')}.`] : []),
    ...namesLost.map(({ name, onlyOnSheet }) => `The name ${name} of the sheet ${onlyOnSheet ?? ''} is left out, because another one has the same name.`),
    ...(seen.richText ? ['Formats of single words within a cell are left out; the text stays.'] : []),
    ...(seen.ownStyles ? ['Colours, fonts, borders and alignment are left out; number formats stay.'] : []),
    ...(seen.fixedArrays ? ['Array formulas entered with Ctrl+Shift+Enter become formulas that spill.'] : []),
    ...(seen.otherRules ? ['Rules for what may be typed into a cell (data validation) are left out, unless they ask for a number or a day within limits or an entry of a list and say so in words.'] : []),
    ...(seen.wholeSpills ? ['Formulas with A1# (a whole spilled range) show an error here.'] : []),
  ]
}

function hits(traits: readonly Trait[], texts: readonly string[]): string[] {
  return traits.filter(({ found }) => texts.some((text) => found.test(text))).map(({ sentence }) => sentence)
}

/** Ours is landscape on A4, one page wide, with file, sheet and page number at the foot. */
function hasOtherPrintSetUp(sheet: string): boolean {
  const [pageSetup] = /<(\w+:)?pageSetup [^>]*>/.exec(sheet) ?? []
  const isOurs = pageSetup === undefined || /paperSize="9" orientation="landscape" fitToHeight="0"/.test(pageSetup)
  const [headerFooter] = /<(\w+:)?headerFooter[ >][\s\S]*?<\/(\w+:)?headerFooter>/.exec(sheet) ?? []
  return !isOurs || (headerFooter !== undefined && !headerFooter.includes('&amp;L&amp;F, &amp;A&amp;RPage &amp;P of &amp;N'))
}
