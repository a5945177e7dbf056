/** Lays a declared table out as a sheet: what it is about, its totals, its headings, and below them nothing but rows. */
import { absoluteAddress, addressOf } from '../../../formula/address'
import type { CellContent, DefinedName } from '../../book'
import { caution, formats, frozen, heading, result, text, title, total, type NamedSheet, type Row } from '../cells'
import { checksOfEntry, checksOfFigure, firstOf, type Check } from './checks'
import { resultCell, typedCell } from './cellOf'
import { all, countOf, notComplete, totalOf, type Column, type ColumnOf, type RowOf, type Table } from './table'
import { unitCell } from './unitCell'

/** What a nursery typed into the rows of a table. */
export type Typed<T extends Table> = readonly Readonly<Partial<Record<keyof T['typed'] & string, CellContent>>>[]

type ResultOf<T extends Table> = keyof T['results'] & string

export interface TableSheet<T extends Table> {
  readonly title: string
  readonly about: readonly string[]
  /** What a complete row has in each calculated column, as a formula without "=". */
  readonly results: Readonly<Record<ResultOf<T>, (row: RowOf<T>) => string>>
  /** The columns that are added up above the headings. */
  readonly totals?: readonly ColumnOf<T>[]
  /** What else keeps a row from being complete. */
  readonly needs?: (row: RowOf<T>) => readonly Check[]
  readonly cautions?: readonly Row[]
}

/** @param rows What was typed. @param open How many rows stand below them to be typed into. */
export function tableSheet<T extends Table>(
  table: T,
  written: TableSheet<T>,
  mark: string,
  rows: Typed<T>,
  open: number,
): NamedSheet {
  const columns = columnsOf(table)
  const keys = Object.keys(columns)
  const above: readonly Row[] = [
    [title(written.title)],
    [caution(mark)],
    ...written.about.map((line) => [text(line)]),
    ...(written.cautions ?? []),
  ]
  const place = placeOf(above.length, Object.keys(table.typed).length, keys)
  const body = [...rows, ...Array.from({ length: open }, () => ({}))].map((typed, index) =>
    rowOf(table, written, place, place.first + index, typed),
  )
  const last = place.first + body.length - 1
  const named = (name: string, column: number, top: number, bottom: number): DefinedName => ({
    name,
    refersTo: `${table.sheet}!${absoluteAddress({ top, bottom, left: column, right: column })}`,
  })
  return {
    sheet: {
      name: table.sheet,
      widths: [22, ...keys.map((key) => columns[key]!.width ?? Math.max(10, columns[key]!.heading.length + 2))],
      frozenRows: frozen(place.first),
      frozenColumns: 2,
      rows: [...above, ...headingsOf(table, written.totals ?? []), ...body],
      tables: [
        { name: `${table.sheet}Table`, range: `${addressOf(place.headings, 0)}:${addressOf(last, keys.length)}` },
      ],
    },
    names: [
      named(notComplete(table), 1, above.length, above.length),
      ...['state', ...keys].map((key, column) => named(all<Table>(table, key), column, place.first, last)),
    ],
  }
}

function columnsOf({ typed, results }: Table): Readonly<Record<string, Column>> {
  return { ...typed, ...results }
}

/** What stands between the lines about the sheet and its rows: how complete it is, totals, what to type, units, headings. */
function headingsOf(table: Table, totals: readonly string[]): readonly Row[] {
  const columns = Object.entries(columnsOf(table))
  const state = all<Table>(table, 'state')
  return [
    [
      text('Rows not complete'),
      result(`=SUMPRODUCT((${begun(table)}>0)*(${state}<>"ready"))`, formats.count),
      result(
        `=IF(${notComplete(table)}=0,"Every row is complete.","What a row lacks stands in its first column. Totals wait for it. Where nothing stands there, copy the row above and type over it.")`,
      ),
    ],
    [
      heading('All rows'),
      ...columns.map(([key, { format }]) =>
        totals.includes(key) ? total(`=${totalOf<Table>(table, key)}`, format) : undefined,
      ),
    ],
    [heading('What to type'), ...columns.map(([, { filling }]) => heading(filling))],
    [undefined, ...columns.map(([, { unit }]) => unitCell(unit))],
    [
      heading('State'),
      ...columns.map(([, { heading: called, note }]) => ({
        ...heading(called),
        ...(note === undefined ? {} : { note }),
      })),
    ],
  ]
}

/** How much stands in a row. One that was inserted by hand has no state, and must not be added up without a word. */
function begun(table: Table): string {
  const needed = Object.entries(table.typed).filter(([, { filling }]) => !filling.endsWith('or blank'))
  return ['state', ...needed.map(([key]) => key)].map((key) => `LEN(${all<Table>(table, key)})`).join('+')
}

/** One row, with what was typed into it. */
function rowOf<T extends Table>(
  table: T,
  { results, needs = () => [] }: TableSheet<T>,
  place: Place,
  at: number,
  typed: Readonly<Partial<Record<string, CellContent>>>,
): Row {
  const cells = Object.fromEntries(
    Object.keys(columnsOf(table)).map((key) => [key, place.inRow(at, key)]),
  ) as unknown as RowOf<T>
  const state = place.inRow(at, 'state')
  return [
    result(`=${stateOf(table, place, at, needs(cells))}`),
    ...Object.entries(table.typed).map(([key, column]) => typedCell(column, typed[key])),
    ...Object.entries(table.results).map(([key, column]) =>
      resultCell(column, `IF(${state}="ready",${results[key as ResultOf<T>](cells)},"")`),
    ),
  ]
}

interface Place {
  readonly headings: number
  readonly first: number
  /** The typed cells of a row. */
  readonly typedIn: (row: number) => string
  readonly inRow: (row: number, key: string) => string
}

/** Where things stand, by the number of rows above the table. */
function placeOf(above: number, typed: number, keys: readonly string[]): Place {
  const headings = above + 4
  const inRow = (row: number, key: string) => `$${addressOf(row, key === 'state' ? 0 : keys.indexOf(key) + 1)}`
  return {
    headings,
    first: headings + 1,
    typedIn: (row) => `${inRow(row, keys[0]!)}:${inRow(row, keys[typed - 1]!)}`,
    inRow,
  }
}

/**
 * The state of a row as a formula: nothing where nothing was typed, what is missing or wrong, or "ready". Results wait
 * for it, so that no blank counts as 0 without a word.
 */
function stateOf<T extends Table>(table: T, { typedIn, inRow }: Place, row: number, needs: readonly Check[]): string {
  const key = inRow(row, table.key)
  const typed = Object.entries(table.typed).map(([column, declared]) => ({ declared, cell: inRow(row, column) }))
  // Cell by cell: in the grid's engine an array of cells takes many times as long.
  const checks: readonly Check[] = [
    ...typed.flatMap(({ declared, cell }) => checksOfFigure(declared, cell)),
    ...(table.repeats ? [] : [[`${countOf<Table>(table, table.key, key)}>1`, '"Two rows have this name"'] as const]),
    ...typed.flatMap(({ declared, cell }) => checksOfEntry(declared, cell)),
    ...needs,
  ]
  return `IF(COUNTA(${typedIn(row)})=0,"",${firstOf(checks)})`
}
