/** The columns of a table as its sheet and its plain formula have them: in order, by key. */
import type { Columns } from './definition'

/** How many columns stand left of this one. */
export function columnsBefore<C extends Columns>(columns: C, key: keyof C & string): number {
  return Object.keys(columns).indexOf(key)
}

/** The headings as a row of a plain formula. */
export function headingRow(columns: Columns): string {
  return `HSTACK(${Object.values(columns)
    .map(({ heading }) => `"${heading}"`)
    .join(', ')})`
}

/** What a plain formula has for each column, one after the other. */
export function inOrder<C extends Columns>(columns: C, formulas: { readonly [K in keyof C]: string }): string {
  return Object.keys(columns)
    .map((key) => formulas[key as keyof C])
    .join(', ')
}

/** A column of a block as a plain formula takes it. */
export function columnOf<C extends Columns>(columns: C, key: keyof C & string, block: string): string {
  return `INDEX(${block}, 0, ${columnsBefore(columns, key) + 1})`
}

/** What the last row of a block has in a column. */
export function lastOf<C extends Columns>(columns: C, key: keyof C & string, block: string): string {
  return `INDEX(${block}, ROWS(${block}), ${columnsBefore(columns, key) + 1})`
}
