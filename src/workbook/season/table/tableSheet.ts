/** Lays a declared table out as a sheet: what it is about, its totals, its headings, and below them nothing but rows. */
import { absoluteAddress, addressOf } from '../../../formula/address'
import type { Cell, CellContent, DefinedName } from '../../book'
import { caution, formats, heading, text, title, type NamedSheet, type Row } from '../cells'
import { checksOfEntry, firstOf, type Check } from './checks'
import type { Column } from './column'
import { all, countOf, countReady, notComplete, totalOf, type ColumnOf, type RowOf, type Table } from './table'
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
  { title: called, about, results, totals = [], needs = () => [], cautions = [] }: TableSheet<T>,
  mark: string,
  rows: Typed<T>,
  open: number,
): NamedSheet {
  const columns = { ...table.typed, ...table.results } as Readonly<Record<string, Column>>
  const keys = Object.keys(columns)
  const above: readonly Row[] = [[title(called)], [caution(mark)], ...about.map((line) => [text(line)]), ...cautions]
  const place = placeOf(above.length, Object.keys(table.typed).length, keys)
  const lines: readonly Readonly<Partial<Record<string, CellContent>>>[] = [
    ...rows,
    ...Array.from({ length: open }, () => ({})),
  ]
  const last = place.first + lines.length - 1

  const body = lines.map((typed, index): Row => {
    const row = Object.fromEntries(
      keys.map((key) => [key, place.inRow(place.first + index, key)]),
    ) as unknown as RowOf<T>
    const state = place.inRow(place.first + index, 'state')
    return [
      { formula: `=${stateOf(table, place, place.first + index, needs(row))}`, look: 'result' },
      ...Object.entries(table.typed).map(([key, column]) => typedCell(column, typed[key])),
      ...Object.entries(table.results).map(([key, column]) =>
        resultCell(column, `IF(${state}="ready",${results[key as ResultOf<T>](row)},"")`),
      ),
    ]
  })

  const named = (name: string, column: number, top: number, bottom = top): DefinedName => ({
    name,
    refersTo: `${table.sheet}!${absoluteAddress({ top, bottom, left: column, right: column })}`,
  })
  return {
    sheet: {
      name: table.sheet,
      widths: [22, ...keys.map((key) => columns[key]!.width ?? Math.max(10, columns[key]!.heading.length + 2))],
      frozenRows: place.first,
      frozenColumns: 2,
      rows: [
        ...above,
        [
          text('Rows not complete'),
          {
            formula: `=COUNTA(${all(table, table.key as ColumnOf<T>)})-${countReady(table)}`,
            look: 'result',
            format: formats.count,
          },
          {
            formula: `=IF(${notComplete(table)}=0,"Every row is complete.","What a row lacks stands in its first column. Totals wait for it.")`,
            look: 'result',
          },
        ],
        [
          heading('All rows'),
          ...keys.map((key) =>
            totals.includes(key as ColumnOf<T>)
              ? totalCell(columns[key]!, totalOf(table, key as ColumnOf<T>))
              : undefined,
          ),
        ],
        [heading('What to type'), ...keys.map((key) => heading(columns[key]!.filling))],
        [heading(''), ...keys.map((key) => unitCell(columns[key]!.unit))],
        [heading('State'), ...keys.map((key) => headingCell(columns[key]!))],
        ...body,
      ],
      tables: [
        {
          name: `${table.sheet}Table`,
          range: `${addressOf(place.headings, 0)}:${addressOf(last, keys.length)}`,
        },
      ],
    },
    names: [
      named(notComplete(table), 1, above.length),
      ...['state', ...keys].map((key, column) =>
        named(all(table, key as ColumnOf<T> | 'state'), column, place.first, last),
      ),
    ],
  }
}

interface Place {
  readonly headings: number
  readonly first: number
  /** The words above the typed columns, and the cells of a row below them. */
  readonly fillings: string
  readonly called: string
  readonly typedIn: (row: number) => string
  readonly inRow: (row: number, key: string) => string
}

/** Where things stand, by the number of rows above the table. */
function placeOf(above: number, typed: number, keys: readonly string[]): Place {
  const headings = above + 4
  const across = (row: number, isFixed: boolean) => {
    const block = absoluteAddress({ top: row, bottom: row, left: 1, right: typed })
    return isFixed ? block : block.replace(/\$(?=\d)/g, '')
  }
  return {
    headings,
    first: headings + 1,
    fillings: across(above + 2, true),
    called: across(headings, true),
    typedIn: (row) => across(row, false),
    inRow: (row, key) => `$${addressOf(row, key === 'state' ? 0 : keys.indexOf(key) + 1)}`,
  }
}

/**
 * The state of a row as a formula: nothing where nothing was typed, what is missing or wrong, or "ready". Results wait
 * for it, so that no blank counts as 0 without a word.
 */
function stateOf<T extends Table>(
  table: T,
  { fillings, called, typedIn, inRow }: Place,
  row: number,
  needs: readonly Check[],
): string {
  const cells = typedIn(row)
  const isText = `(${fillings}="text")*(LEN(${cells})=0)`
  const isNumber = `(${fillings}="number")*NOT(ISNUMBER(${cells}))`
  const isOther = `ISNUMBER(SEARCH("number or blank",${fillings}))*(LEN(${cells})>0)*NOT(ISNUMBER(${cells}))`
  const isBelow = `(LEFT(${fillings},6)="number")*ISNUMBER(${cells})*(${cells}<0)`
  const wrong = `MATCH(TRUE,IF(ISERROR(${cells}),TRUE,${isText}+${isNumber}+${isOther}+${isBelow}>0),0)`
  const key = inRow(row, table.key)
  const checks: readonly Check[] = [
    ...(table.repeats ? [] : [[`${countOf<Table>(table, table.key, key)}>1`, '"Two rows have this name"'] as const]),
    ...Object.entries(table.typed).flatMap(([column, declared]) => checksOfEntry(declared, inRow(row, column))),
    ...needs,
  ]
  const checked = firstOf(checks)
  return `IF(COUNTA(${cells})=0,"",IF(ISNUMBER(${wrong}),INDEX(${called},${wrong})&": type "&INDEX(${fillings},${wrong}),${checked}))`
}

function typedCell({ format, allowed }: Column, value: CellContent | undefined): Cell {
  return {
    look: 'input',
    ...(value === undefined ? {} : { value }),
    ...(format === undefined ? {} : { format }),
    ...(allowed === undefined ? {} : { allowed }),
  }
}

const resultCell = ({ format }: Column, formula: string): Cell => ({
  formula: `=${formula}`,
  look: 'result',
  ...(format === undefined ? {} : { format }),
})

const totalCell = (column: Column, formula: string): Cell => ({ ...resultCell(column, formula), look: 'total' })

function headingCell({ heading: word, note }: Column): Cell {
  return { ...heading(word), ...(note === undefined ? {} : { note }) }
}
