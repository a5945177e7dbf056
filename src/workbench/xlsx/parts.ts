/** Finds the parts of an unpacked workbook: its sheets in their order, and what belongs to each. */
import { parseXml, walk, type XmlElement } from '@cj-tech-master/excelts/xml'
import type { Parts } from './unpack'

export const workbookPath = 'xl/workbook.xml'

export interface SheetPart {
  readonly name: string
  /** "xl/worksheets/sheet1.xml" */
  readonly path: string
  readonly hidden: boolean
}

export interface FileName {
  readonly name: string
  /** As the file spells it, without "=". */
  readonly refersTo: string
  readonly onlyOnSheet?: string
  readonly hidden?: true
}

/** The worksheets; chart sheets and sheets of old macros hold no cells. */
export function sheetParts(parts: Parts): readonly SheetPart[] {
  const worksheets = new Set(
    relations(parts, workbookPath).flatMap(({ type, target }) => (type.endsWith('/worksheet') ? [target] : [])),
  )
  return allSheets(parts).filter(({ path }) => worksheets.has(path))
}

/** The sheet that was seen when the file was saved; undefined where that was the first. */
export function shownSheet(parts: Parts): string | undefined {
  const [view] = elementsOf(rootOf(parts, workbookPath), 'workbookView')
  const tab = Number(view?.attributes.activeTab ?? 0)
  return tab > 0 ? allSheets(parts)[tab]?.name : undefined
}

/** Without those that Excel keeps for itself. */
export function definedNames(parts: Parts): readonly FileName[] {
  const sheets = allSheets(parts)
  return elementsOf(rootOf(parts, workbookPath), 'definedName').flatMap((element) => {
    const { name, hidden, localSheetId } = element.attributes
    if (name === undefined || name.startsWith('_xl')) return []
    const sheet = localSheetId === undefined ? undefined : sheets[Number(localSheetId)]
    return [
      {
        name,
        refersTo: textOf(element).trim(),
        ...(sheet && { onlyOnSheet: sheet.name }),
        ...(isSet(hidden) && { hidden: true }),
      },
    ]
  })
}

/** Of all sheets, chart sheets too: a name of one sheet tells its number among these. */
export function sheetNames(parts: Parts): readonly string[] {
  return allSheets(parts).map(({ name }) => name)
}

export function notePaths(parts: Parts, sheets: readonly SheetPart[]): readonly string[] {
  return sheets.flatMap(({ path }) =>
    relations(parts, path).flatMap(({ type, target }) => (type.endsWith('/comments') ? [target] : [])),
  )
}

/** By address: the text of a sheet's notes, also where the cell is empty. */
export function notesOf(parts: Parts, sheet: SheetPart): ReadonlyMap<string, string> {
  const [path] = notePaths(parts, [sheet])
  const notes = path === undefined ? [] : elementsOf(rootOf(parts, path), 'comment')
  return new Map(notes.map((note) => [note.attributes.ref ?? '', elementsOf(note, 't').map(textOf).join('')]))
}

/** A sheet without its rows: what says how it is looked at, printed and guarded. */
export function frameOf(parts: Parts, { path }: SheetPart): XmlElement {
  const xml = textOfPart(parts, path)
  const [start, end] = [xml.search(/<(?:[\w.-]+:)?sheetData[\s>]/), xml.search(/<\/(?:[\w.-]+:)?sheetData>/)]
  return parseXml(start === -1 || end === -1 ? xml : xml.slice(0, start) + xml.slice(xml.indexOf('>', end) + 1)).root
}

/** The parts that belong to the file as a whole, by the type of their relation. */
export function packageParts(parts: Parts, type: RegExp): readonly string[] {
  return relations(parts, '').flatMap((one) => (type.test(one.type) && parts[one.target] ? [one.target] : []))
}

/** A truth of a file. */
export function isSet(attribute: string | undefined): boolean {
  return attribute === '1' || attribute === 'true'
}

/** A part as text; empty where there is no such part. */
export function textOfPart(parts: Parts, path: string): string {
  return new TextDecoder().decode(parts[path] ?? new Uint8Array())
}

function allSheets(parts: Parts): readonly SheetPart[] {
  const targets = new Map(relations(parts, workbookPath).map(({ id, target }) => [id, target]))
  return elementsOf(rootOf(parts, workbookPath), 'sheet').map(({ attributes }) => ({
    name: attributes.name ?? '',
    path: targets.get(relationId(attributes) ?? '') ?? '',
    hidden: attributes.state !== undefined && attributes.state !== 'visible',
  }))
}

export interface Relation {
  readonly id: string
  readonly type: string
  /** The path of a part, or an address outside the file. */
  readonly target: string
  readonly isOutside: boolean
}

export function relations(parts: Parts, path: string): readonly Relation[] {
  const slash = path.lastIndexOf('/')
  const folder = path.slice(0, Math.max(slash, 0))
  const relationsPath = path === '' ? '_rels/.rels' : `${folder}/_rels${path.slice(slash)}.rels`
  if (parts[relationsPath] === undefined) return []
  return elementsOf(rootOf(parts, relationsPath), 'Relationship').map(({ attributes }) => ({
    id: attributes.Id ?? '',
    type: attributes.Type ?? '',
    isOutside: attributes.TargetMode === 'External',
    target: attributes.TargetMode === 'External' ? (attributes.Target ?? '') : resolve(folder, attributes.Target ?? ''),
  }))
}

/** "../comments1.xml" as seen from "xl/worksheets". */
function resolve(folder: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1)
  const steps = folder === '' ? [] : folder.split('/')
  for (const step of target.split('/')) {
    if (step === '..') steps.pop()
    else steps.push(step)
  }
  return steps.join('/')
}

/** The prefix of the attribute is the writer's choice: r:id in most files. */
function relationId(attributes: XmlElement['attributes']): string | undefined {
  const name = Object.keys(attributes).find((key) => key.endsWith(':id'))
  return name === undefined ? undefined : attributes[name]
}

export function rootOf(parts: Parts, path: string): XmlElement {
  return parseXml(textOfPart(parts, path)).root
}

export function elementsOf(element: XmlElement, name: string): XmlElement[] {
  const found: XmlElement[] = []
  walk(element, (inner) => {
    if (localName(inner) === name) found.push(inner)
  })
  return found
}

/** Without the prefix, which is the writer's choice. */
export function localName({ name }: XmlElement): string {
  return name.slice(name.indexOf(':') + 1)
}

export function textOf(element: XmlElement): string {
  return element.children.map((child) => (child.type === 'text' ? child.value : '')).join('')
}
