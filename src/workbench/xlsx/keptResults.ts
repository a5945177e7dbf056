/**
 * What of a calculated file cannot be vouched for: formulas that the grid's engine cannot calculate as Excel does, and
 * all that read them. These keep the results that the file stores.
 */
import { isCellError } from '../../core/definition/problem'
import { addressesIn, addressOf, blockIn, positionOf } from '../../formula/address'
import { namedRanges, rangesRead, referencesIn, type NamedRanges, type RangeRead } from '../../formula/rangesRead'
import type { Book } from '../../workbook/book'
import type { OpenBook, OpenCell } from '../../workbook/openBook'
import type { Why } from './fileFormulas'
import type { Home } from './fileNames'
import type { ReadBook, StoredFormulas } from './readXlsx'

export interface KeptResult extends Home {
  /** Absent where it keeps its result for what it reads. */
  readonly why?: Why
}

export interface WithKeptResults {
  /** The kept cells with their stored results. */
  readonly book: OpenBook
  readonly kept: readonly KeptResult[]
}

export function withKeptResults(
  { book, formulas }: Pick<ReadBook, 'book' | 'formulas'>,
  calculated: OpenBook,
): WithKeptResults {
  const kept = new Map<string, KeptResult>(formulas.kept.map((one) => [placeOf(one), one]))
  for (const { sheet, address, cell } of cellsOf(calculated)) {
    const why = cell.formula === '' ? undefined : whyNot(cell, formulas.arrayRange(sheet, address))
    if (why !== undefined && why !== 'unknownName') kept.set(placeOf({ sheet, address }), { sheet, address, why })
  }
  const readers = new Readers(calculated, namesOf(book))
  readers.keep(kept, formulas)
  // What shows #NAME? by now reads no other that does, but for those that are named here.
  for (const { sheet, address, cell } of cellsOf(calculated)) {
    const place = placeOf({ sheet, address })
    if (!kept.has(place) && whyNot(cell, undefined) === 'unknownName')
      kept.set(place, { sheet, address, why: 'unknownName' })
  }
  readers.keep(kept, formulas)
  return { book: withStored(calculated, kept, formulas), kept: [...kept.values()] }
}

function whyNot({ value, spill }: OpenCell, arrayRange: string | undefined): Why | undefined {
  if (isCellError(value) && value.code === '#CYCLE!') return 'circle'
  if (isCellError(value) && value.code === '#NAME?') return 'unknownName'
  // Excel takes one cell of what is not stored as an array, the grid all.
  return spill !== undefined && arrayRange === undefined ? 'oldArray' : undefined
}

function* cellsOf(book: OpenBook): Iterable<Home & { readonly cell: OpenCell }> {
  for (const { name, cells } of book.sheets) for (const [address, cell] of cells) yield { sheet: name, address, cell }
}

function placeOf({ sheet, address }: Home): string {
  return `${sheet.toLowerCase()}!${address}`
}

function namesOf({ names }: Book): NamedRanges {
  return namedRanges(names)
}

/** So many names may lead to each other. */
const deepest = 20

function readBy(formula: string, sheet: string, names: NamedRanges, depth = 0): readonly RangeRead[] {
  const named = referencesIn(formula).flatMap((one) => names.get(one.toLowerCase()) ?? [])
  const within = depth < deepest ? named.flatMap((one) => readBy(`=${one}`, sheet, names, depth + 1)) : []
  return [...rangesRead(formula, sheet, names), ...within]
}

interface Block {
  readonly range: RangeRead
  readonly readers: Home[]
}

/** Who reads which cell. Found out once something is kept. */
class Readers {
  private readonly ofCells = new Map<string, Home[]>()
  private readonly ofBlocks = new Map<string, Block>()
  /** What they read, they find by calculating. */
  private readonly ofAny: Home[] = []
  private isKnown = false

  constructor(
    private readonly calculated: OpenBook,
    private readonly names: NamedRanges,
  ) {}

  /** Adds all that read what is kept. */
  keep(kept: Map<string, KeptResult>, formulas: StoredFormulas): void {
    if (kept.size === 0) return
    this.find()
    const open: Home[] = [...kept.values()]
    const add = (readers: readonly Home[]) => {
      for (const reader of readers) {
        if (kept.has(placeOf(reader))) continue
        kept.set(placeOf(reader), reader)
        open.push(reader)
      }
    }
    add(this.ofAny)
    for (let one = open.pop(); one !== undefined; one = open.pop()) {
      for (const address of this.filledBy(one, formulas)) {
        add(this.ofCells.get(placeOf({ ...one, address })) ?? [])
        add(this.blocksAround(one.sheet, address))
      }
    }
  }

  private filledBy(one: Home, formulas: StoredFormulas): readonly string[] {
    const cell = this.calculated.sheets.find(({ name }) => name === one.sheet)?.cells.get(one.address)
    const ranges = [formulas.arrayRange(one.sheet, one.address), cell?.spill].filter((range) => range !== undefined)
    return [...new Set([one.address, ...ranges.flatMap((range) => addressesIn(blockIn(range)))])]
  }

  private blocksAround(sheet: string, address: string): readonly Home[] {
    const { top: row, left: column } = blockIn(address)
    const found: (readonly Home[])[] = []
    for (const [key, { range, readers }] of this.ofBlocks) {
      if (range.sheet.toLowerCase() !== sheet.toLowerCase() || row < range.top || row > range.bottom) continue
      if (column < range.left || column > range.right) continue
      found.push(readers)
      this.ofBlocks.delete(key)
    }
    return found.flat()
  }

  private find(): void {
    if (this.isKnown) return
    this.isKnown = true
    for (const { sheet, address, cell } of cellsOf(this.calculated)) {
      if (cell.formula === '') continue
      const reader = { sheet, address }
      if (/\b(INDIRECT|OFFSET)\(/i.test(cell.formula)) this.ofAny.push(reader)
      for (const range of readBy(cell.formula, sheet, this.names)) {
        if (range.top === range.bottom && range.left === range.right) {
          const place = placeOf({ sheet: range.sheet, address: addressOf(range.top, range.left) })
          const readers = this.ofCells.get(place) ?? []
          readers.push(reader)
          this.ofCells.set(place, readers)
        } else {
          const key = [range.sheet.toLowerCase(), range.top, range.left, range.bottom, range.right].join('\n')
          const block = this.ofBlocks.get(key) ?? { range, readers: [] }
          block.readers.push(reader)
          this.ofBlocks.set(key, block)
        }
      }
    }
  }
}

function withStored(calculated: OpenBook, kept: ReadonlyMap<string, KeptResult>, formulas: StoredFormulas): OpenBook {
  if (kept.size === 0) return calculated
  const byName = new Map(calculated.sheets.map(({ name, cells }) => [name, new Map(cells)]))
  for (const { sheet, address } of kept.values()) {
    const cells = byName.get(sheet)
    const own = cells?.get(address)
    const filled = [own?.spill, formulas.arrayRange(sheet, address)].filter((range) => range !== undefined)
    for (const place of new Set([address, ...filled.flatMap((range) => addressesIn(blockIn(range)))])) {
      const { row, column, formula, isHeading }: OpenCell = cells?.get(place) ?? emptyAt(place)
      const value = formulas.result(sheet, place)
      cells?.set(place, { row, column, formula, value, calls: undefined, ...(isHeading && { isHeading }) })
    }
  }
  return { ...calculated, sheets: calculated.sheets.map(({ name }) => ({ name, cells: byName.get(name)! })) }
}

function emptyAt(address: string): OpenCell {
  return { ...positionOf(address), formula: '', value: null, calls: undefined }
}
