/** What was typed, as the accountant reads it; and what the accountant expects a sheet to show. */
import type { CellContent } from '../../../../src/workbook/book'
import type { Figures } from '../../../../src/workbook/season/table/figures'
import type { Table } from '../../../../src/workbook/season/table/table'
import type { Fraction } from '../fraction'
import { fraction } from '../fraction'

/** An exact figure, one that only a long sum in doubles can tell, or a text; '' is a cell that shows nothing. */
export type Shown = Fraction | number | string

/** Every calculated column of a table: the compiler says which one is forgotten. */
export type ResultsOf<T extends Table> = Readonly<Record<keyof T['results'] & string, Shown>>

/** Every calculated figure of a sheet. */
export type FiguresOf<F extends Figures> = Readonly<Record<keyof F['results'] & string, Shown>>

/** A typed figure; a blank one is what its note says that blank means. */
export function typed(value: CellContent | undefined, blank?: number): Fraction {
  if (typeof value === 'number') return fraction(value)
  if (blank === undefined) throw new Error(`A figure is missing: ${value}`)
  return fraction(blank)
}

/** The row that a name stands for. */
export function rowCalled<Row, Key extends keyof Row>(rows: readonly Row[], key: Key, name: unknown): Row {
  const row = rows.find((each) => each[key] === name)
  if (row === undefined) throw new Error(`No row is called ${String(name)}.`)
  return row
}

/** The Monday of the week in which a day lies: day 2 of a spreadsheet's calendar was a Monday. */
export function mondayOf(day: Fraction): Fraction {
  return day.minus(2).over(7).down().times(7).plus(2)
}
