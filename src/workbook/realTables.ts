/**
 * Which tables of a sheet Excel can take as they stand. The others stay plain cells: in a file Excel would report a
 * table without proper headings as damage, and into a table no formula may spill.
 */
import { rangesRead } from '../formula/rangesRead'
import type { Block } from '../formula/address'
import type { Sheet, SheetTable } from './book'

/** A table with its place, the row of headings included. */
export interface RealTable extends SheetTable, Block {
  readonly headings: readonly string[]
}

export function realTables({ name, rows, tables = [] }: Sheet): readonly RealTable[] {
  const real: RealTable[] = []
  for (const table of tables) {
    const [block] = rangesRead(`=${table.range}`, name, new Map())
    if (block === undefined) continue
    const { top, left, bottom, right } = block
    const headings = rows[top]?.slice(left, right + 1) ?? []
    const texts = headings.flatMap((cell) =>
      typeof cell?.value === 'string' && cell.value.trim() !== '' ? [cell.value] : [],
    )
    const isDistinct = new Set(texts.map((text) => text.toLowerCase())).size === right - left + 1
    const spills = rows.slice(top, bottom + 1).some((row) => row.slice(left, right + 1).some((cell) => cell?.spills))
    if (isDistinct && !spills && bottom > top && !real.some((other) => overlap(other, block)))
      real.push({ ...table, top, left, bottom, right, headings: texts })
  }
  return real
}

function overlap(one: Block, other: Block): boolean {
  return one.top <= other.bottom && other.top <= one.bottom && one.left <= other.right && other.left <= one.right
}
