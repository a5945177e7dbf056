/** The cells that a formula itself names: what an auditor looks at next. */
import { namedRanges, rangesRead, referencesIn, type RangeRead } from '../../formula/rangesRead'
import { addressOf, blockAddress } from '../../formula/address'
import type { DefinedName } from '../book'
import { labelsOf } from '../labels'
import type { OpenBook, OpenCell, ReadCell } from '../openBook'
import type { CellPlace } from '../cellPlace'
import { sheetNamed } from '../sheetNamed'

export interface CellsRead extends CellPlace {
  /** The defined name by which the formula reads them. */
  readonly name?: string
  readonly range: RangeRead
}

export function cellsRead(formula: string, sheet: string, names: readonly DefinedName[]): readonly CellsRead[] {
  const named = namedRanges(names)
  const found = new Map<string, CellsRead>()
  for (const reference of referencesIn(formula)) {
    const [range] = rangesRead(`=${reference}`, sheet, named)
    if (range === undefined) continue
    const place = { sheet: range.sheet, address: blockAddress(range) }
    const isName = named.has(reference.toLowerCase())
    const key = `${place.sheet.toLowerCase()}!${place.address}`
    if (!found.has(key)) found.set(key, { ...place, range, ...(isName && { name: reference }) })
  }
  return [...found.values()]
}

export function isOneCell({ top, left, bottom, right }: RangeRead): boolean {
  return top === bottom && left === right
}

/** Cells read with what stands in them, from a workbook that was read as a whole. */
export interface FilledCells extends CellsRead {
  readonly label: string
  /** Row by row; as many as one wants to look at. */
  readonly values: readonly { readonly address: string; readonly value: ReadCell }[]
  /** How many cells there are; Infinity for whole columns and rows. */
  readonly count: number
}

/** @param most How many values of one range are given. */
export function filledCells(read: readonly CellsRead[], book: OpenBook, most: number): readonly FilledCells[] {
  return read.map((cells) => {
    const held = sheetNamed(book, cells.sheet)?.cells ?? new Map<string, OpenCell>()
    const { top, left, bottom, right } = cells.range
    const values: { address: string; value: ReadCell }[] = []
    for (let row = top; row <= bottom && values.length < most; row += 1) {
      for (let column = left; column <= right && values.length < most; column += 1) {
        const address = addressOf(row, column)
        values.push({ address, value: held.get(address)?.value ?? null })
      }
    }
    const label = labelsOf(held).textOf(cells.range)
    return { ...cells, label, values, count: (bottom - top + 1) * (right - left + 1) }
  })
}
