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
  const [view] = elementsOf(root(parts, workbookPath), 'workbookView')
  const tab = Number(view?.attributes.activeTab ?? 0)
  return tab > 0 ? allSheets(parts)[tab]?.name : undefined
}

/** Without those that Excel keeps for itself. */
export function definedNames(parts: Parts): readonly FileName[] {
  const sheets = allSheets(parts)
  return elementsOf(root(parts, workbookPath), 'definedName').flatMap((element) => {
    const { name, hidden, localSheetId } = element.attributes
    if (name === undefined || name.startsWith('_xl')) return []
    const sheet = localSheetId === undefined ? undefined : sheets[Number(localSheetId)]
    return [
      {
        name,
        refersTo: textOf(element).trim(),
        ...(sheet && { onlyOnSheet: sheet.name }),
        ...(/^(1|true)$/.test(hidden ?? '') && { hidden: true }),
      },
    ]
  })
}

/** By address: the text of a sheet's notes, also where the cell is empty. */
export function notesOf(parts: Parts, sheet: SheetPart): ReadonlyMap<string, string> {
  const path = relations(parts, sheet.path).find(({ type }) => type.endsWith('/comments'))?.target
  const notes = path === undefined ? [] : elementsOf(root(parts, path), 'comment')
  return new Map(notes.map((note) => [note.attributes.ref ?? '', elementsOf(note, 't').map(textOf).join('')]))
}

/** A part as text; empty where there is no such part. */
export function textOfPart(parts: Parts, path: string): string {
  return new TextDecoder().decode(parts[path] ?? new Uint8Array())
}

function allSheets(parts: Parts): readonly SheetPart[] {
  const targets = new Map(relations(parts, workbookPath).map(({ id, target }) => [id, target]))
  return elementsOf(root(parts, workbookPath), 'sheet').map(({ attributes }) => ({
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
  const folder = path.slice(0, slash)
  const relationsPath = `${folder}/_rels${path.slice(slash)}.rels`
  if (parts[relationsPath] === undefined) return []
  return elementsOf(root(parts, relationsPath), 'Relationship').map(({ attributes }) => ({
    id: attributes.Id ?? '',
    type: attributes.Type ?? '',
    isOutside: attributes.TargetMode === 'External',
    target: attributes.TargetMode === 'External' ? (attributes.Target ?? '') : resolve(folder, attributes.Target ?? ''),
  }))
}

/** "../comments1.xml" as seen from "xl/worksheets". */
function resolve(folder: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1)
  const steps = folder.split('/')
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

function root(parts: Parts, path: string): XmlElement {
  return parseXml(textOfPart(parts, path)).root
}

function elementsOf(element: XmlElement, localName: string): XmlElement[] {
  const found: XmlElement[] = []
  walk(element, (inner) => {
    if (inner.name === localName || inner.name.endsWith(`:${localName}`)) found.push(inner)
  })
  return found
}

function textOf(element: XmlElement): string {
  return element.children.map((child) => (child.type === 'text' ? child.value : '')).join('')
}
