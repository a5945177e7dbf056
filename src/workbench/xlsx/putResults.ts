/**
 * Puts new results into a workbook as it lies there as a file. Only the cells' results are exchanged, in the text
 * of the sheets; every other part is carried over byte by byte: charts, pictures, pivot tables, macros, rules,
 * styles, print set-up. Nothing can be lost that nobody thought of.
 */
import { editZip } from '@cj-tech-master/excelts/archive'
import { parseXml, xmlEncode, xmlEncodeAttr, type XmlElement, type XmlNode } from '@cj-tech-master/excelts/xml'
import { isCellError } from '../../core/definition/problem'
import { addressOf, blockIn, type Position, positionOf, positionsIn } from '../../formula/address'
import type { OpenBook, OpenSheet, ReadCell } from '../../workbook/openBook'
import type { Home } from './fileNames'
import { sheetParts, textOfPart } from './parts'
import { spillOf } from './spill'
import { unpack } from './unpack'
import { XlsxProblem } from './xlsxProblem'

export interface WithResults {
  readonly bytes: Uint8Array
  /** True where the workbook was signed: a signature holds for the bytes as they were. */
  readonly breaksSignature: boolean
}

/** What is kept is not touched. */
export async function putResults(
  bytes: Uint8Array,
  calculated: OpenBook,
  kept: readonly Home[] = [],
): Promise<WithResults> {
  const parts = await unpack(bytes)
  const archive = await editZip(bytes)
  for (const { name, path } of sheetParts(parts)) {
    const sheet = calculated.sheets.find((one) => one.name === name)
    if (sheet === undefined) continue
    const keptHere = new Set(kept.filter((one) => one.sheet === name).map(({ address }) => address))
    archive.set(
      path,
      asDamaged(() => sheetWithResults(textOfPart(parts, path), sheet, keptHere)),
    )
  }
  const breaksSignature = Object.keys(parts).some((path) => path.startsWith('_xmlsignatures/'))
  return { bytes: await archive.bytes(), breaksSignature }
}

/** The library that reads a file takes more for XML, and for cells, than there is. */
function asDamaged<Result>(act: () => Result): Result {
  try {
    return act()
  } catch (problem) {
    throw new XlsxProblem('damaged', { cause: problem })
  }
}

function sheetWithResults(xml: string, calculated: OpenSheet, kept: ReadonlySet<string>): string {
  const [, prefix = ''] = /<((?:[\w.-]+:)?)sheetData[\s>]/.exec(xml) ?? []
  const start = xml.search(/<(?:[\w.-]+:)?sheetData[\s>]/)
  const closing = `</${prefix}sheetData>`
  const end = xml.indexOf(closing)
  // A sheet without any cell has no such block, or an empty tag.
  if (start === -1 || end === -1) return xml
  const data = new SheetData(parseXml(xml.slice(start, end + closing.length)).root, prefix)
  const formulas = data
    .formulas()
    .map(([address, cell]) => ({ address, cell, result: calculated.cells.get(address), range: data.arrayRange(cell) }))
  if (formulas.length === 0) return xml
  const renewed = formulas.filter(({ address }) => !kept.has(address))
  // All old spills go before any new one comes, because one may grow to where another one was.
  for (const { address, range } of renewed) {
    for (const place of positionsIn(blockIn(range ?? address))) data.setValue(data.cell(place), null)
  }
  for (const { address, cell, result, range } of renewed) {
    data.setValue(cell, result?.value ?? null)
    if (range !== undefined) putSpill(data, address, cell, range, calculated)
  }
  return xml.slice(0, start) + serialize(data.root) + xml.slice(end + closing.length)
}

function putSpill(data: SheetData, address: string, cell: XmlElement, range: string, calculated: OpenSheet): void {
  const isDynamic = cell.attributes.cm !== undefined
  const filled = isDynamic ? (spillOf(calculated.cells.get(address)) ?? address) : range
  data.setArrayRange(cell, filled)
  for (const place of positionsIn(blockIn(filled))) {
    const other = addressOf(place.row, place.column)
    // The cells of an array of fixed size that the result does not reach show #N/A.
    const beyond: ReadCell = isDynamic ? null : { kind: 'cellError', code: '#N/A' }
    if (other !== address) data.setValue(data.cell(place), calculated.cells.get(other)?.value ?? beyond)
  }
}

/** The <sheetData> of a sheet: its rows, and in them its cells. */
class SheetData {
  private readonly rows = new Map<number, XmlElement>()
  private readonly cells = new Map<string, XmlElement>()

  constructor(
    readonly root: XmlElement,
    private readonly prefix: string,
  ) {
    // Rows and cells may leave out their number; it is then one more than that of the one before.
    let row = 0
    for (const rowElement of elements(root)) {
      row = Number(rowElement.attributes.r ?? row + 1)
      rowElement.attributes.r = String(row)
      this.rows.set(row, rowElement)
      let column = -1
      for (const cell of elements(rowElement)) {
        column = cell.attributes.r === undefined ? column + 1 : positionOf(cell.attributes.r).column
        const address = addressOf(row - 1, column)
        cell.attributes.r = address
        this.cells.set(address, cell)
      }
    }
  }

  /** Without what-if tables, which only Excel calculates. */
  formulas(): [address: string, cell: XmlElement][] {
    return [...this.cells].filter(([, cell]) => {
      const formula = this.child(cell, 'f')
      return formula !== undefined && formula.attributes.t !== 'dataTable'
    })
  }

  /** Where the formula of a cell is stored as an array. */
  arrayRange(cell: XmlElement): string | undefined {
    const formula = this.child(cell, 'f')
    return formula?.attributes.t === 'array' ? formula.attributes.ref : undefined
  }

  setArrayRange(cell: XmlElement, range: string): void {
    const formula = this.child(cell, 'f')
    if (formula !== undefined) formula.attributes.ref = range
  }

  cell(place: Position): XmlElement {
    const address = addressOf(place.row, place.column)
    const known = this.cells.get(address)
    if (known !== undefined) return known
    const row = this.row(place.row + 1)
    // Says which columns are in use; without it a reader looks for itself.
    delete row.attributes.spans
    const cell = this.element('c', { r: address })
    insertInOrder(row, cell, (element) => positionOf(element.attributes.r ?? '').column, place.column)
    this.cells.set(address, cell)
    return cell
  }

  setValue(cell: XmlElement, result: ReadCell): void {
    cell.children = cell.children.filter(
      (child) => child.type !== 'element' || ![`${this.prefix}v`, `${this.prefix}is`].includes(child.name),
    )
    delete cell.attributes.t
    // Refers to more about the old value, such as why it was an error.
    delete cell.attributes.vm
    const shown = isCellError(result) ? result.code : result
    if (shown === null) return
    if (isCellError(result)) cell.attributes.t = 'e'
    else if (typeof shown === 'boolean') cell.attributes.t = 'b'
    else if (typeof shown === 'string') cell.attributes.t = 'str'
    const text = typeof shown === 'boolean' ? String(Number(shown)) : withoutSigns(String(shown))
    const value = this.element('v', text.trim() === text ? {} : { 'xml:space': 'preserve' })
    value.children.push({ type: 'text', value: text })
    const formula = this.child(cell, 'f')
    cell.children.splice(formula === undefined ? 0 : cell.children.indexOf(formula) + 1, 0, value)
  }

  private child(cell: XmlElement, name: string): XmlElement | undefined {
    return elements(cell).find((element) => element.name === this.prefix + name)
  }

  private row(number: number): XmlElement {
    const known = this.rows.get(number)
    if (known !== undefined) return known
    const row = this.element('row', { r: String(number) })
    insertInOrder(this.root, row, (element) => Number(element.attributes.r), number)
    this.rows.set(number, row)
    return row
  }

  private element(name: string, attributes: Record<string, string>): XmlElement {
    return { type: 'element', name: this.prefix + name, attributes, children: [] }
  }
}

/** ECMA-376 part 1, 22.9.2.19: what XML has no place for by its number, _x0007_, and what would be read so. */
function withoutSigns(text: string): string {
  return text
    .replace(/_(?=x[\da-f]{4}_)/gi, '_x005F_')
    .replace(
      /[^\P{Cc}\t\n\u0080-\u009f]/gu,
      (sign) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    )
}

function elements(parent: XmlElement): XmlElement[] {
  return parent.children.filter((child) => child.type === 'element')
}

function insertInOrder(
  parent: XmlElement,
  element: XmlElement,
  numberOf: (element: XmlElement) => number,
  number: number,
): void {
  const next = elements(parent).find((other) => numberOf(other) > number)
  parent.children.splice(next === undefined ? parent.children.length : parent.children.indexOf(next), 0, element)
}

function serialize(node: XmlNode): string {
  if (node.type === 'text') return xmlEncode(node.value)
  if (node.type !== 'element') return ''
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${xmlEncodeAttr(value)}"`)
    .join('')
  if (node.children.length === 0) return `<${node.name}${attributes}/>`
  return `<${node.name}${attributes}>${node.children.map(serialize).join('')}</${node.name}>`
}
