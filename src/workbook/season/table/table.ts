/**
 * A table of the season, declared once: from its columns follow the headings, units, formats and widths of its sheet,
 * what may be typed, and the names by which other sheets read it. What its results are made of stands with the sheet.
 */
import type { Allowed } from '../../book'
import { nameOf } from './nameOf'

/** A unit as it stands above a heading; money is named by the currency of the season, which is a cell. */
export type Unit = string | { readonly money: string }

/** What a cell takes, in the words that stand above the column or beside the figure. */
export type Filling =
  | 'number'
  | 'share'
  | 'text'
  | 'number or blank'
  | 'share or blank'
  | 'any number'
  | 'any number or blank'
  | 'text or blank'
  | 'calculated'

export interface Column {
  readonly heading: string
  readonly unit: Unit
  readonly filling: Filling
  readonly format?: string
  readonly note?: string
  readonly allowed?: Allowed
  /** The only words that are taken. */
  readonly words?: Words
  /** The table in which a row must have this entry as its key. */
  readonly isIn?: Table
  /** True where that row need not be complete, because it waits for this one. */
  readonly isAwaited?: true
  /** In characters; left out, as wide as its heading. */
  readonly width?: number
}

/** A few words of the trade to choose from, which stand as a named list in the workbook. */
export interface Words {
  readonly name: string
  readonly words: readonly string[]
}

/** @template T The columns that are typed. @template R Those that are calculated, which stand right of them. */
export interface Table<T extends string = string, R extends string = string> {
  /** The sheet that holds it, and nothing else below its headings, so that it can grow. */
  readonly sheet: string
  /** What one row is called, in names: "Order". */
  readonly row: string
  /** The column by which other tables look a row up. */
  readonly key: T
  /** Whether several rows may have the same key. */
  readonly repeats: boolean
  readonly typed: Readonly<Record<T, Column>>
  readonly results: Readonly<Record<R, Column>>
}

/** The references of a row's cells, by column. */
export type RowOf<T extends Table> = Readonly<Record<ColumnOf<T>, string>>
export type ColumnOf<T extends Table> = T extends Table<infer Typed, infer Results> ? Typed | Results : never

export function declareTable<T extends string, R extends string>(table: {
  readonly sheet: string
  readonly row: string
  readonly key: NoInfer<T>
  readonly repeats?: boolean
  readonly typed: Readonly<Record<T, Column>>
  readonly results: Readonly<Record<R, Column>>
}): Table<T, R> {
  return { repeats: false, ...table }
}

/** The name of a whole column: `all(orders, 'liners')` is OrderLiners. */
export function all<T extends Table>({ row }: T, key: ColumnOf<T> | 'state'): string {
  return nameOf(row, key)
}

/** What the row of this key has in a column; #N/A where no row has the key. */
export function lookUp<T extends Table>(table: T, key: string, column: ColumnOf<T> | 'state'): string {
  return `INDEX(${all(table, column)},MATCH(${key},${all(table, table.key as ColumnOf<T>)},0))`
}

/** The sum of a column over the rows in which another one holds this value. */
export function sumWhere<T extends Table>(table: T, column: ColumnOf<T>, where: ColumnOf<T>, is: string): string {
  return `SUMIF(${all(table, where)},${is},${all(table, column)})`
}

/** A column of the rows that are complete and hold this value in another one; one empty text where there are none. */
export function onlyWhere<T extends Table>(table: T, column: ColumnOf<T>, where: ColumnOf<T>, is: string): string {
  return filtered(all(table, column), `(${all(table, where)}=${is})*(${all(table, 'state')}="ready")`)
}

/** A column of the rows that are complete, or a formula over columns; one empty text where there are none. */
export function onlyReady<T extends Table>(table: T, column: ColumnOf<T>): string {
  return filtered(all(table, column), `${all(table, 'state')}="ready"`)
}

/** Of a formula over whole columns the rows for which a condition over whole columns holds. */
export function filtered(columns: string, when: string): string {
  return `FILTER(${columns},${when},"")`
}

/** How many rows are complete. */
export function countReady(table: Table): string {
  return `COUNTIF(${all<Table>(table, 'state')},"ready")`
}

/** How many rows hold this value. */
export function countOf<T extends Table>(table: T, column: ColumnOf<T> | 'state', is: string): string {
  return `COUNTIF(${all(table, column)},${is})`
}

/** How many rows were begun and are not complete. */
export function notComplete({ row }: Table): string {
  return `${row}NotComplete`
}

/** A total of a column, which shows no part of itself as the whole. */
export function totalOf<T extends Table>(table: T, column: ColumnOf<T>): string {
  return `IF(${notComplete(table)}>0,"not complete",SUM(${all(table, column)}))`
}
