/**
 * What the .xlsx library is given of a file. It finds parts by the names that Excel gives them, where a file says by
 * its relations which part is what: texts in a part of another name became their numbers. It fails over extensions of
 * a cell and over charts and pictures; it fills the memory over blocks as large as a sheet; and it reads what is no
 * XML, such as control characters, each in its own way. Seen with excelts 10.2.0.
 */
import { blockOf } from '../../formula/address'
import { quoteEscapedLetters } from './dateFormats'
import { relations, sheetParts, textOfPart, workbookPath, type Relation } from './parts'
import type { Parts } from './unpack'
import { XlsxProblem } from './xlsxProblem'

/** Throws an XlsxProblem where a part is no XML, or has what no sheet of Excel has. */
export function partsForLibrary(parts: Parts): Record<string, Uint8Array> {
  const given: Record<string, string> = {}
  const take = (path: string, as: string, change = (text: string) => text) => {
    if (parts[path] !== undefined) given[as] = change(xmlOf(parts, path))
  }
  take('[Content_Types].xml', '[Content_Types].xml')
  take('_rels/.rels', '_rels/.rels')
  // The library lists every cell of a name; a book takes the names from elsewhere.
  take(workbookPath, workbookPath, (text) => without('definedNames', text))
  const ofWorkbook = relations(parts, workbookPath)
  const sheets = new Map(sheetParts(parts).map(({ path }, index) => [path, `xl/worksheets/sheet${index + 1}.xml`]))
  const places = new Map(sheets)
  for (const [type, as, change] of [
    ['/styles', 'xl/styles.xml', quoteEscapedLetters],
    ['/sharedStrings', 'xl/sharedStrings.xml'],
    ['/sheetMetadata', 'xl/metadata.xml'],
    ['/theme', 'xl/theme/theme1.xml'],
  ] as const) {
    const relation = ofWorkbook.find((one) => one.type.endsWith(type))
    if (relation === undefined) continue
    places.set(relation.target, as)
    take(relation.target, as, change)
  }
  given['xl/_rels/workbook.xml.rels'] = relationsXml(ofWorkbook, places)
  let tables = 0
  for (const [path, as] of sheets) {
    take(path, as, plainSheet)
    const ofSheet = relations(parts, path)
    for (const { target } of ofSheet.filter(({ type }) => type.endsWith('/table'))) {
      places.set(target, `xl/tables/table${(tables += 1)}.xml`)
      take(target, places.get(target)!)
    }
    if (ofSheet.length > 0)
      given[as.replace('worksheets/', 'worksheets/_rels/') + '.rels'] = relationsXml(ofSheet, places)
  }
  const readsTexts = [...sheets.values()].some((path) => /<(?:[\w.-]+:)?c\s[^>]*\bt="s"/.test(given[path] ?? ''))
  // Each such cell holds but the number of its text.
  if (readsTexts && given['xl/sharedStrings.xml'] === undefined) throw new XlsxProblem('damaged')
  return Object.fromEntries(Object.entries(given).map(([path, text]) => [path, new TextEncoder().encode(text)]))
}

const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships'

function relationsXml(all: readonly Relation[], places: ReadonlyMap<string, string>): string {
  const elements = all.map(({ id, type, target, isOutside }) => {
    const place = isOutside
      ? `Target="${escaped(target)}" TargetMode="External"`
      : `Target="/${escaped(places.get(target) ?? target)}"`
    return `<Relationship Id="${escaped(id)}" Type="${escaped(type)}" ${place}/>`
  })
  return `<Relationships xmlns="${packageRelations}">${elements.join('')}</Relationships>`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;')
}

/** Signs that XML 1.0, 2.2, has no place for, as they are and by their number. */
const noSigns = /[^\P{Cc}\t\n\r\u007f-\u009f]|[\ufffe\uffff]/u
const noSignsByNumber = /&#(?:x0*(?:[0-8bcef]|1[0-9a-f])|0*(?:[0-8]|1[124-9]|2\d|3[01]));/i

function xmlOf(parts: Parts, path: string): string {
  const text = textOfPart(parts, path)
  if (noSigns.test(text) || noSignsByNumber.test(text)) throw new XlsxProblem('damaged')
  return text.replace(/<!--[\s\S]*?-->/g, '')
}

const rowCount = 2 ** 20
const columnCount = 2 ** 14
/** An array of more cells than a column has is taken for a mistake. */
const mostInArray = rowCount

/** Cells hidden under a merged one keep what they hold, as in Excel: formulas read it. */
function plainSheet(xml: string): string {
  for (const [, row] of xml.matchAll(/<(?:[\w.-]+:)?row\s[^>]*?\br="([^"]*)"/g)) checkWithin(Number(row), rowCount)
  for (const [, attributes = ''] of xml.matchAll(/<(?:[\w.-]+:)?col\s([^>]*)>/g))
    for (const [, column] of attributes.matchAll(/\b(?:min|max)="([^"]*)"/g)) checkWithin(Number(column), columnCount)
  for (const [, attributes = ''] of xml.matchAll(/<(?:[\w.-]+:)?f\s([^>]*)>/g)) {
    const [, range] = /\bref="([^"]*)"/.exec(attributes) ?? []
    if (range === undefined) continue
    const block = blockOf(range)
    if (block === undefined) throw new XlsxProblem('damaged')
    const count = (block.bottom - block.top + 1) * (block.right - block.left + 1)
    if (/\bt="(array|dataTable)"/.test(attributes) && count > mostInArray) throw new XlsxProblem('tooLarge')
  }
  const end = xml.search(/<\/(?:[\w.-]+:)?sheetData>/)
  // The extensions of the sheet itself come after its rows.
  // How a text is read aloud is no part of it.
  const data = ['extLst', 'rPh', 'phoneticPr'].reduce((text, name) => without(name, text), xml.slice(0, end))
  return without('mergeCells', withSigns(data) + xml.slice(end))
}

/** ECMA-376 part 1, 22.9.2.19: _x0041_ is A. The library reads it so in the texts' part only. */
function withSigns(xml: string): string {
  if (!/_x[\da-f]{4}_/i.test(xml)) return xml
  return xml.replace(/<(?:[\w.-]+:)?c\s[^>]*\bt="str"[^>]*>[\s\S]*?<\/(?:[\w.-]+:)?c>/g, (cell) =>
    cell.replace(/(<(?:[\w.-]+:)?v[^>]*>)([^<]*)/, (_whole, tag: string, text: string) => {
      const read = text.replace(/_x([\da-f]{4})_/gi, (sign, code: string) =>
        noSignsByNumber.test(`&#x${code};`) ? sign : `&#x${code};`,
      )
      return tag + read
    }),
  )
}

function checkWithin(number: number, most: number): void {
  if (!(Number.isInteger(number) && number >= 1 && number <= most)) throw new XlsxProblem('damaged')
}

/** Without the elements of this name and what stands in them. */
function without(name: string, xml: string): string {
  return xml.replace(new RegExp(`<((?:[\\w.-]+:)?)${name}\\b[^>]*(?:/>|>[\\s\\S]*?</\\1${name}>)`, 'g'), '')
}
