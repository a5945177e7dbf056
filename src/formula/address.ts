/** Addresses of cells in the A1 way. Rows and columns count from 0; the numbers in an address begin with 1. */
import { parseA1Ref, stringifyA1Ref } from '@borgar/fx'

export interface Position {
  readonly row: number
  readonly column: number
}

/** Both ends included; a whole row or column has no end. */
export interface Block {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

/** "B4" for row 3, column 1. */
export function addressOf(row: number, column: number): string {
  return stringifyA1Ref({ range: { top: row, left: column, bottom: row, right: column } })
}

/** "B4", "B4:C9"; "B:B" and "4:4" for whole columns and rows. */
export function blockAddress({ top, left, bottom, right }: Block): string {
  return stringifyA1Ref({
    range: {
      ...(Number.isFinite(bottom) ? { top, bottom } : { top: null, bottom: null }),
      ...(Number.isFinite(right) ? { left, right } : { left: null, right: null }),
    },
  })
}

/** "$B$4", "$B$4:$C$9": what stays where it is when its formula is copied. */
export function absoluteAddress({ top, left, bottom, right }: Block): string {
  return stringifyA1Ref({ range: { top, left, bottom, right, $top: true, $left: true, $bottom: true, $right: true } })
}

/** "B4", "$B$4:$C$9", "B:B"; no sheet, and no defined name. */
export function isAddress(text: string): boolean {
  return blockOf(text) !== undefined
}

/** The cells that an address without a sheet names: "B4", "$B$4:$C$9", "B:B"; undefined for any other text. */
export function blockOf(address: string): Block | undefined {
  const parsed = parseA1Ref(address)
  if (parsed === undefined || !('range' in parsed) || parsed.range === undefined || (parsed.context ?? []).length > 0)
    return undefined
  const { top, left, bottom, right } = parsed.range
  return { top: top ?? 0, left: left ?? 0, bottom: bottom ?? Infinity, right: right ?? Infinity }
}

/** Of an address that a host or a file gives, and so is one; throws on any other text. */
export function blockIn(address: string): Block {
  const block = blockOf(address)
  if (block === undefined) throw new RangeError(`"${address}" is no address of cells.`)
  return block
}

/** Of "B4" or "$B$4", as blockIn takes it; of a block its first cell. */
export function positionOf(address: string): Position {
  const { top: row, left: column } = blockIn(address)
  return { row, column }
}

/** Each cell of a block that has an end, row by row. */
export function* positionsIn({ top, left, bottom, right }: Block): Iterable<Position> {
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) yield { row, column }
  }
}

/** Each cell of a block that has an end by its address, row by row. */
export function addressesIn(block: Block): readonly string[] {
  return [...positionsIn(block)].map(({ row, column }) => addressOf(row, column))
}
