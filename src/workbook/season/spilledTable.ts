/** A table that one formula spills, and what the sheet has above it and reads from it, by the keys of its columns. */
import { columnsBefore } from '../../core/definition/columns'
import type { Columns } from '../../core/definition/definition'
import { addressOf, positionOf } from '../../formula/address'
import type { Cell } from '../book'
import { heading, spilledOver, type Row } from './cells'

/** The definition of a table. */
interface Spilling<C extends Columns> {
  readonly result: { readonly columns: C }
}

type ByColumn<C extends Columns, T> = { readonly [K in keyof C]: T }

/**
 * Its headings, and `height` rows below them, so many as it has at first. Nothing may stand below it, because it may
 * grow. A column without a format holds texts.
 */
export function spilledTable<C extends Columns>(
  { result: { columns } }: Spilling<C>,
  formula: string,
  formats: ByColumn<C, string | undefined>,
  height: number,
): readonly Row[] {
  const keys: readonly (keyof C)[] = Object.keys(columns)
  const headings = keys.map((_, column): Cell =>
    column === 0 ? { formula, spills: true, look: 'heading' } : { look: 'heading' },
  )
  return [headings, ...Array.from({ length: height }, () => keys.map((key) => spilledOver(formats[key])))]
}

/** The row above its headings: what it is about, and the units. */
export function aboveTable<C extends Columns>({ result: { columns } }: Spilling<C>, texts: ByColumn<C, string>): Row {
  return Object.keys(columns).map((key) => heading(texts[key as keyof C]))
}

/** The letter of one of its columns, where the table begins in column `corner`. */
export function letterOf<C extends Columns>(
  { result: { columns } }: Spilling<C>,
  key: keyof C & string,
  corner = 'A',
): string {
  return addressOf(0, positionOf(`${corner}1`).column + columnsBefore(columns, key)).replace('1', '')
}
