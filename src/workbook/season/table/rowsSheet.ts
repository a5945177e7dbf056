/** Lays rows out that are calculated alone, such as the weeks of a calendar: nothing in them is typed. */
import { absoluteAddress, addressOf } from '../../../formula/address'
import { caution, heading, text, title, type NamedSheet, type Row } from '../cells'
import type { Column } from './table'
import { unitCell } from './unitCell'

/** The references of a row's cells. */
type Cells<K extends string> = Readonly<Record<K, string>>

/** A declared table without anything typed. */
export interface Rows<K extends string = string> {
  readonly sheet: string
  readonly columns: Readonly<Record<K, Column>>
}

interface RowsSheet<K extends string> {
  readonly title: string
  readonly about: readonly string[]
  /** What stands in each column, as a formula without "="; the first row has none before it. */
  readonly results: Readonly<Record<K, (row: Cells<K>, before: Cells<K> | undefined) => string>>
}

/** The name of a whole column: `rowsOf(calendar, 'toStick')` is CalendarToStick. */
export function rowsOf<K extends string>({ sheet }: Rows<K>, key: K): string {
  return `${sheet}${key.charAt(0).toUpperCase()}${key.slice(1)}`
}

export function rowsSheet<K extends string>(
  { sheet, columns }: Rows<K>,
  { title: called, about, results }: RowsSheet<K>,
  mark: string,
  height: number,
): NamedSheet {
  const keys = Object.keys(columns) as K[]
  const above: readonly Row[] = [
    [title(called)],
    [caution(mark)],
    ...about.map((line) => [text(line)]),
    keys.map((key) => unitCell(columns[key].unit)),
    keys.map((key) => ({ ...heading(columns[key].heading), ...(columns[key].note && { note: columns[key].note }) })),
  ]
  const first = above.length
  const cellsOf = (row: number) =>
    Object.fromEntries(keys.map((key, column) => [key, `$${addressOf(row, column)}`])) as Cells<K>
  return {
    sheet: {
      name: sheet,
      widths: keys.map((key) => columns[key].width ?? Math.max(10, columns[key].heading.length + 2)),
      frozenRows: first,
      frozenColumns: 1,
      rows: [
        ...above,
        ...Array.from({ length: height }, (_, index) =>
          keys.map((key) => ({
            formula: `=${results[key](cellsOf(first + index), index === 0 ? undefined : cellsOf(first + index - 1))}`,
            look: 'result' as const,
            ...(columns[key].format === undefined ? {} : { format: columns[key].format }),
          })),
        ),
      ],
      tables: [
        {
          name: `${sheet}Table`,
          range: `${addressOf(first - 1, 0)}:${addressOf(first + height - 1, keys.length - 1)}`,
        },
      ],
    },
    names: keys.map((key, column) => ({
      name: rowsOf({ sheet, columns }, key),
      refersTo: `${sheet}!${absoluteAddress({ top: first, bottom: first + height - 1, left: column, right: column })}`,
    })),
  }
}
