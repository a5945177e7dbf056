/**
 * The names of a file as a book has them. A file's name may hold on one sheet only, beside one of the whole workbook,
 * and may refer from the cell that uses it; a book's name holds everywhere and means the same everywhere. So the
 * second of two equal names gets another one, and a name that refers from its cell is written out where it is used.
 * By ECMA-376 part 1, 18.2.5, a name refers as it would from A1, and goes on at the other edge of the sheet.
 */
import { parseA1Ref, tokenTypes, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx'
import { outsideTexts } from '../../formula/outsideTexts'
import { quotedSheet } from '../../formula/reference'
import type { DefinedName } from '../../workbook/book'
import { fromFileSpelling, tokensOf } from './formulaSpelling'
import type { Lost } from './lost'
import type { FileName } from './parts'

interface Entry {
  readonly file: FileName
  /** As typed, without "=". */
  readonly refersTo: string
  readonly bookName: string
}

export interface Home {
  readonly sheet: string
  readonly address: string
}

/** Sheet1!Rate, but no Sheet1!A1. */
const namedWithSheet = /!(?!\$?[A-Z]{1,3}(?:\$?\d|:)|\$?\d|#)/i

/** So many names may lead to each other. */
const deepest = 20

export class FileNames {
  /** By their sheet, or nothing, and their name. */
  private readonly entries = new Map<string, Entry>()
  private readonly bookNames = new Set<string>()

  constructor(all: readonly FileName[]) {
    for (const { name, onlyOnSheet } of all) if (onlyOnSheet === undefined) this.bookNames.add(name.toLowerCase())
    for (const file of all) {
      const { name, refersTo, onlyOnSheet } = file
      const bookName = onlyOnSheet === undefined ? name : this.freeBookName(name, onlyOnSheet)
      this.bookNames.add(bookName.toLowerCase())
      this.entries.set(keyOf(name, onlyOnSheet), { file, refersTo: fromFileSpelling(refersTo).slice(1), bookName })
    }
  }

  /** Where every name of the file is one of the book too. */
  private get areAsInBook(): boolean {
    this.asInBook ??= ![...this.entries.values()].some(
      (entry) => entry.file.onlyOnSheet !== undefined || this.isWrittenOut(entry),
    )
    return this.asInBook
  }
  private asInBook: boolean | undefined

  /** Of a book: all but those that are written out. */
  names(): DefinedName[] {
    return [...this.entries.values()]
      .filter((entry) => !this.isWrittenOut(entry))
      .map(({ file, refersTo, bookName }) => {
        const home = { sheet: file.onlyOnSheet ?? '', address: 'A1' }
        return { name: bookName, refersTo: this.respelled(`=${refersTo}`, home).slice(1) }
      })
  }

  lost(): Lost[] {
    const entries = [...this.entries.values()]
    const written = entries.filter((entry) => this.isWrittenOut(entry))
    const renamed = entries.filter((entry) => !written.includes(entry) && entry.bookName !== entry.file.name)
    const spread = entries.filter(
      (entry) => entry.file.onlyOnSheet !== undefined && !written.includes(entry) && !renamed.includes(entry),
    )
    return [
      ...renamed.map(({ file, bookName }): Lost => ({
        what: 'secondName',
        names: [file.name, file.onlyOnSheet!, bookName],
      })),
      ...listed('sheetNames', spread),
      ...listed('relativeNames', written),
    ]
  }

  /** The formula with the names of the book in the place of those of the file. */
  respelled(formula: string, home: Home, depth = 0): string {
    if (this.areAsInBook && !namedWithSheet.test(formula)) return formula
    return tokensOf(formula)
      .map(({ type, value }) => (type === tokenTypes.REF_NAMED ? this.spelled(value, home, depth) : value))
      .join('')
  }

  private spelled(reference: string, home: Home, depth: number): string {
    const entry = this.find(reference, home.sheet)
    if (entry === undefined) return this.bookNames.has(nameIn(reference).toLowerCase()) ? '#NAME?' : reference
    if (!this.isWrittenOut(entry) || depth > deepest) return entry.bookName
    const relative = translateFormulaToR1C1(`=${withSheet(entry.refersTo, home.sheet)}`, 'A1')
    const sheet = entry.file.onlyOnSheet ?? home.sheet
    const written = this.respelled(translateFormulaToA1(relative, home.address), { ...home, sheet }, depth + 1).slice(1)
    return tokensOf(written).length === 1 ? written : `(${written})`
  }

  /** Of its own sheet first, then of the workbook. */
  private find(reference: string, sheet: string): Entry | undefined {
    const name = nameIn(reference)
    const qualifier = reference
      .slice(0, -name.length - 1)
      .replace(/^'|'$/g, '')
      .replaceAll("''", "'")
    return this.entries.get(keyOf(name, qualifier || sheet)) ?? this.entries.get(keyOf(name))
  }

  /** What is hidden a book has no place for. */
  private isWrittenOut({ file, refersTo }: Entry, depth = 0): boolean {
    if (file.hidden === true || tokensOf(`=${refersTo}`).some(isRelative)) return true
    return tokensOf(`=${refersTo}`).some(({ type, value }) => {
      const entry = type === tokenTypes.REF_NAMED ? this.find(value, file.onlyOnSheet ?? '') : undefined
      return entry !== undefined && depth < deepest && this.isWrittenOut(entry, depth + 1)
    })
  }

  private freeBookName(name: string, sheet: string): string {
    if (!this.bookNames.has(name.toLowerCase())) return name
    let other = `${name}_${sheet.replace(/\W/g, '_')}`
    while (this.bookNames.has(other.toLowerCase())) other += '_'
    return other
  }
}

function listed(what: Lost['what'], entries: readonly Entry[]): Lost[] {
  return entries.length > 0 ? [{ what, names: entries.map(({ file }) => file.name) }] : []
}

function keyOf(name: string, sheet = ''): string {
  return `${sheet.toLowerCase()}\n${name.toLowerCase()}`
}

function nameIn(reference: string): string {
  return reference.slice(reference.lastIndexOf('!') + 1)
}

/** `!A1` is A1 of the sheet that uses the name. */
function withSheet(refersTo: string, sheet: string): string {
  return outsideTexts(refersTo, (part) => part.replace(/(?<![\w'.\])])!(?=[$A-Z])/gi, `${quotedSheet(sheet)}!`))
}

function isRelative({ type, value }: { readonly type: string; readonly value: string }): boolean {
  if (value === '!') return true
  if (type !== tokenTypes.REF_RANGE && type !== tokenTypes.REF_BEAM) return false
  const parsed = parseA1Ref(value)
  if (parsed === undefined || !('range' in parsed) || parsed.range === undefined) return false
  const { top, left, $top, $left, bottom, right, $bottom, $right } = parsed.range
  return [
    [top, $top],
    [left, $left],
    [bottom, $bottom],
    [right, $right],
  ].some(([place, isFixed]) => typeof place === 'number' && isFixed !== true)
}
