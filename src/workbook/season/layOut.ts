/** Lays named lines out as rows, so that a formula says which line it reads and no row number is written by hand. */
import type { Row } from './cells'

export type RowNumbers<Key extends string> = Readonly<Record<Key, number>>

type OneRow<Key extends string> = (at: RowNumbers<Key>) => Row

/** Several rows under one name, which stands for the number of the first. */
interface SomeRows<Key extends string> {
  readonly height: number
  readonly rows: (at: RowNumbers<Key>) => readonly Row[]
}

export interface Layout<Key extends string> {
  readonly rows: readonly Row[]
  readonly at: RowNumbers<Key>
}

/** Lines come in the order in which they are written; each may read the row number of any other. */
export function layOut<Key extends string>(lines: Readonly<Record<Key, OneRow<Key> | SomeRows<Key>>>): Layout<Key> {
  const keys = Object.keys(lines) as Key[]
  const numbers: Partial<Record<Key, number>> = {}
  let next = 1
  for (const key of keys) {
    const line = lines[key]
    numbers[key] = next
    next += typeof line === 'function' ? 1 : line.height
  }
  const at = numbers as RowNumbers<Key>
  return { at, rows: keys.flatMap((key) => laidOut(lines[key], at)) }
}

function laidOut<Key extends string>(line: OneRow<Key> | SomeRows<Key>, at: RowNumbers<Key>): readonly Row[] {
  return typeof line === 'function' ? [line(at)] : line.rows(at)
}

export const blank = (): Row => []
