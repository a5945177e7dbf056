/** Small .xlsx files written as their XML parts, as another program would write them: no library stands between. */
import { zip } from '@cj-tech-master/excelts/archive'
import { positionOf } from '../../../src/formula/address'

export interface PartsCell {
  /** The formula as the file spells it, without "=". */
  readonly f?: string
  /** Attributes of the formula: `t="array" ref="B1:B3"`. */
  readonly fAttributes?: string
  /** What is stored; of a formula, its result. */
  readonly v?: number | string | boolean
  /** Attributes of the cell: `t="s"`, `cm="1"`, `s="1"`. */
  readonly attributes?: string
  /** In the place of all that would stand in the cell. */
  readonly inner?: string
}

export interface PartsSheet {
  readonly name: string
  readonly cells: Readonly<Record<string, PartsCell>>
  /** Attributes of rows, by their number from 1: `hidden="1"`. */
  readonly rows?: Readonly<Record<number, string>>
  readonly before?: string
  readonly after?: string
  readonly state?: string
}

export interface PartsFile {
  readonly sheets: readonly PartsSheet[]
  /** <definedName> elements. */
  readonly names?: string
  /** What stands in <workbookPr …/> and <calcPr …/>. */
  readonly workbookPr?: string
  readonly calcPr?: string
  readonly sharedStrings?: { readonly path: string; readonly texts: readonly string[] }
  /** Number formats of the styles 1, 2, …; style 0 is General. */
  readonly formats?: readonly string[]
  /** More parts, or others in the place of those that are written here; a part of `null` is left out. */
  readonly parts?: Readonly<Record<string, string | Uint8Array | null>>
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const packaged = 'http://schemas.openxmlformats.org/package/2006'
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'

export async function partsFile(file: PartsFile): Promise<Uint8Array> {
  const archive = zip()
  for (const [path, content] of Object.entries({ ...partsOfFile(file), ...file.parts }))
    if (content !== null) archive.add(path, content)
  return archive.bytes()
}

export function partsOfFile(file: PartsFile): Record<string, string> {
  const { sheets, sharedStrings, formats = [] } = file
  const numbered = sheets.map((sheet, index) => ({ sheet, number: index + 1 }))
  const relations = [
    ...numbered.map(({ number }) => relation(`rId${number}`, 'worksheet', `worksheets/sheet${number}.xml`)),
    relation('rIdStyles', 'styles', 'styles.xml'),
    ...(sharedStrings ? [relation('rIdTexts', 'sharedStrings', sharedStrings.path)] : []),
    ...(file.parts?.['xl/externalLinks/externalLink1.xml']
      ? [relation('rIdLink1', 'externalLink', 'externalLinks/externalLink1.xml')]
      : []),
    ...(file.parts?.['xl/metadata.xml'] ? [relation('rIdMeta', 'sheetMetadata', 'metadata.xml')] : []),
  ]
  const type = (path: string, kind: string) =>
    `<Override PartName="/${path}" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${kind}+xml"/>`
  const sheetElements = numbered.map(({ sheet, number }) => {
    const state = sheet.state === undefined ? '' : ` state="${sheet.state}"`
    return `<sheet name="${escaped(sheet.name)}" sheetId="${number}"${state} r:id="rId${number}"/>`
  })
  const linked = file.parts?.['xl/externalLinks/externalLink1.xml']
    ? '<externalReferences><externalReference r:id="rIdLink1"/></externalReferences>'
    : ''
  return {
    '[Content_Types].xml': `${head}<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${type('xl/workbook.xml', 'sheet.main')}${numbered.map(({ number }) => type(`xl/worksheets/sheet${number}.xml`, 'worksheet')).join('')}${type('xl/styles.xml', 'styles')}${sharedStrings ? type(`xl/${sharedStrings.path}`, 'sharedStrings') : ''}</Types>`,
    '_rels/.rels': `${head}<Relationships xmlns="${packaged}/relationships">${relation('rId1', 'officeDocument', 'xl/workbook.xml')}</Relationships>`,
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${office}"><workbookPr ${file.workbookPr ?? ''}/><sheets>${sheetElements.join('')}</sheets>${linked}${file.names ? `<definedNames>${file.names}</definedNames>` : ''}<calcPr calcId="191029" ${file.calcPr ?? ''}/></workbook>`,
    'xl/_rels/workbook.xml.rels': `${head}<Relationships xmlns="${packaged}/relationships">${relations.join('')}</Relationships>`,
    'xl/styles.xml': stylesOf(formats),
    ...(sharedStrings && { [`xl/${sharedStrings.path}`]: sharedStringsOf(sharedStrings.texts) }),
    ...Object.fromEntries(numbered.map(({ sheet, number }) => [`xl/worksheets/sheet${number}.xml`, sheetOf(sheet)])),
  }
}

function relation(id: string, type: string, target: string): string {
  return `<Relationship Id="${id}" Type="${office}/${type}" Target="${target}"/>`
}

function stylesOf(formats: readonly string[]): string {
  const own = formats.map((code, index) => `<numFmt numFmtId="${164 + index}" formatCode="${escaped(code)}"/>`)
  const xfs = ['0', ...formats.map((_, index) => String(164 + index))].map(
    (id) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`,
  )
  return `${head}<styleSheet xmlns="${main}">${own.length > 0 ? `<numFmts count="${own.length}">${own.join('')}</numFmts>` : ''}<fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="${xfs.length}">${xfs.join('')}</cellXfs></styleSheet>`
}

function sharedStringsOf(texts: readonly string[]): string {
  const items = texts.map((text) => `<si><t xml:space="preserve">${escaped(text)}</t></si>`)
  return `${head}<sst xmlns="${main}" count="${texts.length}" uniqueCount="${texts.length}">${items.join('')}</sst>`
}

export function sheetOf({ cells, rows = {}, before = '', after = '' }: PartsSheet): string {
  const byRow = new Map<number, [column: number, xml: string][]>(Object.keys(rows).map((row) => [Number(row) - 1, []]))
  for (const [address, cell] of Object.entries(cells)) {
    const { row, column } = positionOf(address)
    byRow.set(row, [...(byRow.get(row) ?? []), [column, cellXml(address, cell)]])
  }
  const data = [...byRow]
    .sort(([one], [other]) => one - other)
    .map(([row, inRow]) => {
      const sorted = inRow.sort(([one], [other]) => one - other).map(([, xml]) => xml)
      return `<row r="${row + 1}"${rows[row + 1] ? ` ${rows[row + 1]}` : ''}>${sorted.join('')}</row>`
    })
  return `${head}<worksheet xmlns="${main}" xmlns:r="${office}">${before}<sheetData>${data.join('')}</sheetData>${after}</worksheet>`
}

function cellXml(address: string, { f, fAttributes = '', v, attributes = '', inner }: PartsCell): string {
  const type = /\bt="/.test(attributes)
    ? ''
    : typeof v === 'boolean'
      ? ' t="b"'
      : typeof v === 'string'
        ? ' t="str"'
        : ''
  const formula = f === undefined && fAttributes === '' ? '' : `<f ${fAttributes}>${escaped(f ?? '')}</f>`
  const value = v === undefined ? '' : `<v>${typeof v === 'boolean' ? Number(v) : escaped(String(v))}</v>`
  return `<c r="${address}"${type}${attributes ? ` ${attributes}` : ''}>${inner ?? formula + value}</c>`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}
