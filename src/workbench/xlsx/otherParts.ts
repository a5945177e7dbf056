/**
 * What stands in a file and is neither read nor told in a sentence of its own: it is called as the file calls it, so
 * that nothing goes without a word that nobody thought of.
 */
import type { XmlElement } from '@cj-tech-master/excelts/xml'
import { elementsOf, localName, relations, type SheetPart, workbookPath } from './parts'
import type { Parts } from './unpack'

const toldOfSheet = new Set(
  `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetProtection autoFilter mergeCells phoneticPr
  conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks
  drawing legacyDrawing legacyDrawingHF picture oleObjects controls AlternateContent tableParts customSheetViews
  extLst`.split(/\s+/),
)
const toldOfWorkbook = new Set(
  `fileVersion workbookPr AlternateContent revisionPtr workbookProtection bookViews customWorkbookViews sheets
  externalReferences definedNames calcPr pivotCaches fileRecoveryPr extLst`.split(/\s+/),
)
/** The last three are the program's own notes. */
const toldOfExtensions = new Set(
  `conditionalFormattings dataValidations sparklineGroups slicerList slicerCaches pivotCaches timelineRefs
  timelineCacheRefs timelineCachePivotCaches workbookPr calcFeatures AlternateContent`.split(/\s+/),
)

/** Told by their paths; or made anew by every program, or for the printer of whoever saved the file. */
const toldByPath =
  /^(docProps\/|\[Content_Types\]|_xmlsignatures\/|xl\/(pivot|charts|chartsheets|media|externalLinks|vba|connections|queryTables|slicer|timeline|ctrlProps|activeX|embeddings|threadedComments|persons|drawings|printerSettings|calcChain))|\.rels$/

const toldByRelation =
  /\/(officeDocument|worksheet|styles|sharedStrings|theme|sheetMetadata|comments|table|vmlDrawing|drawing)$/

export function others(
  parts: Parts,
  sheets: readonly SheetPart[],
  workbook: XmlElement,
  frames: readonly XmlElement[],
): string[] {
  const known = new Set(
    ['', workbookPath, ...sheets.map(({ path }) => path)]
      .flatMap((path) => relations(parts, path))
      .flatMap(({ type, target }) => (toldByRelation.test(type) ? [target] : [])),
  )
  const paths = Object.keys(parts).filter((path) => !known.has(path) && !toldByPath.test(path))
  return [
    ...new Set([
      ...frames.flatMap((frame) => untold(frame, toldOfSheet)),
      ...untold(workbook, toldOfWorkbook),
      ...[workbook, ...frames].flatMap((root) =>
        elementsOf(root, 'ext').flatMap((extension) => untold(extension, toldOfExtensions)),
      ),
      // A folder says enough of the parts in it.
      ...paths.map((path) => path.replace(/^((?:xl\/)?[^/]+)\/.*$/, '$1')),
    ]),
  ]
}

function untold(parent: XmlElement, told: ReadonlySet<string>): string[] {
  return parent.children.flatMap((child) =>
    child.type === 'element' && !told.has(localName(child)) ? [localName(child)] : [],
  )
}
