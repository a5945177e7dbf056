/** A table that one formula spills below the figures of a sheet, and the names of its columns. */
import { columnsBefore } from '../../../core/definition/columns'
import type { Columns } from '../../../core/definition/definition'
import { absoluteAddress } from '../../../formula/address'
import type { Cell, DefinedName } from '../../book'
import { spilledOver, type Row } from '../cells'
import { nameOf } from './nameOf'
import type { Unit } from './table'
import { unitCell } from './unitCell'

export interface Spilled<C extends Columns = Columns> {
  /** Of its corner; its columns are called so with their key behind: OrderPlan, OrderPlanCost. */
  readonly name: string
  readonly columns: C
  readonly formula: string
  /** A column without a format holds texts. */
  readonly formats: Readonly<Record<keyof C & string, string | undefined>>
  /** Above the headings: the unit, or what the table is about. */
  readonly units: Readonly<Record<keyof C & string, Unit>>
  /** So many rows below the headings are drawn, and named; it may have fewer. */
  readonly height: number
  /** True where figures are read from it and it grows with a table that is typed: its names then reach further down. */
  readonly grows?: true
}

/** So many rows a nursery may add to a table before names of what grows with it end too early. */
const roomToGrow = 200

/** A table by its definition. */
export function spilled<C extends Columns>(
  { result: { columns } }: { readonly result: { readonly columns: C } },
  rest: Omit<Spilled<C>, 'columns'>,
): Spilled {
  return { columns, ...rest }
}

/** A table that a formula of plain functions makes, headings and all. */
export function plainSpilled<K extends string>(
  headings: Readonly<Record<K, string>>,
  rest: Omit<Spilled, 'columns' | 'formula' | 'formats' | 'units'> & {
    /** Of what stands below the headings, without "=". */
    readonly body: string
    readonly formats: Readonly<Record<K, string | undefined>>
    readonly units: Readonly<Record<K, Unit>>
  },
): Spilled {
  const { body, ...kept } = rest
  const texts: readonly string[] = Object.values(headings)
  return {
    columns: Object.fromEntries(
      Object.entries<string>(headings).map(([key, heading]) => [key, { heading, text: heading, unit: '' }]),
    ),
    // Where nothing is found there is one cell that says so, and the others of its row stay empty.
    formula: `IFNA(VSTACK(HSTACK(${texts.map((text) => `"${text}"`).join(',')}),${body}),"")`,
    ...kept,
  }
}

/** The name of a column below its heading. */
export function spilledColumn(name: string, key: string): string {
  return nameOf(name, key)
}

/**
 * A figure read from a spilled table. Where its function refuses, only the corner shows the error; the other cells stay
 * empty and would count as 0.
 */
export function fromSpilled(name: string, figure: string): string {
  return `IF(ISERROR(${name}),${name},${figure})`
}

/** Its rows from that of the units on, and its names, where it begins in this row and column of the sheet. */
function spilledAt(
  { name, columns, formula, formats, units, height, grows }: Spilled,
  sheet: string,
  top: number,
  left: number,
): { readonly rows: readonly Row[]; readonly names: readonly DefinedName[] } {
  const keys = Object.keys(columns)
  const last = top + 1 + height + (grows ? roomToGrow : 0)
  const named = (called: string, column: number, from: number, to: number): DefinedName => ({
    name: called,
    refersTo: `${sheet}!${absoluteAddress({ top: from, bottom: to, left: column, right: column })}`,
  })
  return {
    rows: [
      keys.map((key) => unitCell(units[key]!)),
      keys.map((_, column): Cell =>
        column === 0 ? { formula: `=${formula}`, spills: true, look: 'heading' } : { look: 'heading' },
      ),
      ...Array.from({ length: height }, () => keys.map((key) => spilledOver(formats[key]))),
    ],
    names: [
      named(name, left, top + 1, top + 1),
      ...keys.map((key) => named(spilledColumn(name, key), left + columnsBefore(columns, key), top + 2, last)),
    ],
  }
}

/** Several tables side by side, with an empty column between them; each may grow downwards. */
export function sideBySide(
  tables: readonly Spilled[],
  sheet: string,
  top: number,
): { readonly rows: readonly Row[]; readonly names: readonly DefinedName[] } {
  let left = 0
  const placed = tables.map((table) => {
    const at = { left, ...spilledAt(table, sheet, top, left) }
    left += Object.keys(table.columns).length + 1
    return at
  })
  const height = Math.max(0, ...placed.map(({ rows }) => rows.length))
  return {
    rows: Array.from({ length: height }, (_, index) => {
      const row: (Cell | undefined)[] = []
      for (const { left: from, rows } of placed) rows[index]?.forEach((cell, column) => (row[from + column] = cell))
      return Array.from(row)
    }),
    names: placed.flatMap(({ names }) => names),
  }
}
