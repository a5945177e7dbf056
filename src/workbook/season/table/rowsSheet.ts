/** Lays rows out that are calculated alone, such as the weeks of a calendar: each column is one formula that fills it. */
import { absoluteAddress } from '../../../formula/address'
import { caution, heading, spilledOver, text, title, type NamedSheet, type Row } from '../cells'
import { nameOf } from './nameOf'
import type { Column } from './table'
import { unitCell } from './unitCell'

/** A declared table without anything typed. */
export interface Rows<K extends string = string> {
  readonly sheet: string
  readonly columns: Readonly<Record<K, Column>>
}

interface RowsSheet<K extends string> {
  readonly title: string
  readonly about: readonly string[]
  /** What fills each column, as a formula without "=": as many rows as the sheet has. */
  readonly results: Readonly<Record<K, string>>
}

/** The name of a whole column: `rowsOf(calendar, 'toStick')` is CalendarToStick. */
export function rowsOf<K extends string>({ sheet }: Rows<K>, key: K): string {
  return nameOf(sheet, key)
}

export function rowsSheet<K extends string>(
  rows: Rows<K>,
  { title: called, about, results }: RowsSheet<K>,
  mark: string,
  height: number,
): NamedSheet {
  const { sheet, columns } = rows
  const keys = Object.keys(columns) as K[]
  const above: readonly Row[] = [
    [title(called)],
    [caution(mark)],
    ...about.map((line) => [text(line)]),
    keys.map((key) => unitCell(columns[key].unit)),
    keys.map((key) => ({ ...heading(columns[key].heading), ...(columns[key].note && { note: columns[key].note }) })),
  ]
  const first = above.length
  return {
    sheet: {
      name: sheet,
      widths: keys.map((key) => columns[key].width ?? Math.max(10, columns[key].heading.length + 2)),
      frozenRows: first,
      frozenColumns: 1,
      rows: [
        ...above,
        keys.map((key) => ({ ...spilledOver(columns[key].format), formula: `=${results[key]}`, spills: true })),
        ...Array.from({ length: height - 1 }, () => keys.map((key) => spilledOver(columns[key].format))),
      ],
    },
    names: keys.map((key, column) => ({
      name: rowsOf(rows, key),
      refersTo: `${sheet}!${absoluteAddress({ top: first, bottom: first + height - 1, left: column, right: column })}`,
    })),
  }
}
