/** Lays single figures out as a sheet, one below the other, each with its unit and what it means; below them tables. */
import { absoluteAddress } from '../../../formula/address'
import type { CellContent, DefinedName } from '../../book'
import { caution, frozen, headings, result, text, title, type NamedSheet, type Row } from '../cells'
import { checksOfEntry, checksOfFigure, firstOf, type Check } from './checks'
import { resultCell, typedCell } from './cellOf'
import { figureOf, stateOf, type FigureOf, type Figures } from './figures'
import { sideBySide, type Spilled } from './spilled'
import { unitCell } from './unitCell'

export type TypedFigures<F extends Figures> = Readonly<Partial<Record<keyof F['typed'] & string, CellContent>>>

export interface FiguresSheet<F extends Figures> {
  readonly title: string
  readonly about: readonly string[]
  /** What each calculated figure is as soon as the sheet is complete, as a formula without "=". */
  readonly results: Readonly<Record<keyof F['results'] & string, string>>
  /** Headings between the figures, each above the one that is named; one stands above all. */
  readonly sections?: Readonly<Partial<Record<FigureOf<F>, string>>>
  /** What else keeps the sheet from being complete. */
  readonly needs?: readonly Check[]
  readonly cautions?: readonly Row[]
  readonly tables?: readonly Spilled[]
}

export function figuresSheet<F extends Figures>(
  figures: F,
  { title: called, about, results, sections, needs = [], cautions = [], tables = [] }: FiguresSheet<F>,
  mark: string,
  typed: TypedFigures<F>,
): NamedSheet {
  const nameOf = (key: string) => figureOf<Figures>(figures, key)
  const state = firstOf([
    ...Object.entries(figures.typed).flatMap(([key, column]) => [
      ...checksOfFigure(column, nameOf(key)),
      ...checksOfEntry(column, nameOf(key)),
    ]),
    ...needs,
  ])
  const rows: Row[] = [
    [title(called)],
    [caution(mark)],
    ...about.map((line) => [text(line)]),
    ...cautions,
    [text('State'), result(`=${state}`)],
    [],
  ]
  const names: DefinedName[] = [{ name: stateOf(figures), refersTo: cellAt(figures.sheet, rows.length - 2) }]
  const begin = (heading: string) => headings(heading, 'Value', 'Unit', 'What to type', 'What it means')
  const headed = (sections ?? {}) as Readonly<Partial<Record<string, string>>>
  const made = results as Readonly<Record<string, string>>
  const given = typed as Readonly<Partial<Record<string, CellContent>>>
  const frozenRows = frozen(rows.length + 1)
  rows.push(begin('Figure'))
  for (const [key, column] of [...Object.entries(figures.typed), ...Object.entries(figures.results)]) {
    if (headed[key] !== undefined) rows.push([], begin(headed[key]))
    names.push({ name: nameOf(key), refersTo: cellAt(figures.sheet, rows.length) })
    const formula = made[key]
    rows.push([
      text(column.heading),
      formula === undefined ? typedCell(column, given[key]) : resultCell(column, whenReady(figures, formula)),
      unitCell(column.unit, 'text'),
      text(column.filling),
      text(column.note ?? ''),
    ])
  }
  if (tables.length > 0) rows.push([])
  const below = sideBySide(tables, figures.sheet, rows.length)
  const widest = Math.max(...below.rows.map((row) => row.length), 0)
  return {
    sheet: {
      name: figures.sheet,
      widths: [40, 24, 24, ...Array.from({ length: Math.max(7, widest - 3) }, () => 22)],
      frozenRows,
      frozenColumns: 1,
      rows: [...rows, ...below.rows],
    },
    names: [...names, ...below.names],
  }
}

/** Nothing as long as the sheet is not complete. */
export function whenReady<F extends Figures>(figures: F, formula: string): string {
  return `IF(${stateOf(figures)}="ready",${formula},"")`
}

function cellAt(sheet: string, row: number): string {
  return `${sheet}!${absoluteAddress({ top: row, bottom: row, left: 1, right: 1 })}`
}
