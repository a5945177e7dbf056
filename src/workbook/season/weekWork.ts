/** What is to be done in the week that Monday asks about, as that sheet has it: for those who work by it. */
import { isCellError } from '../../core/definition/problem'
import { dayText } from '../../core/quantity/day'
import type { ReadCell } from '../openBook'
import type { WorkbookPort } from '../port'
import { figureOf, stateOf } from './table/figures'
import { spilledColumn } from './table/spilled'
import { monday, standing, toStick } from './tables/answers'

/** So many containers of a line or a batch. */
export interface Placed {
  readonly line: string
  readonly species: string
  readonly pieces: number
  readonly container: string
}

export interface Sticking extends Placed {
  readonly cuttings: number
  /** What they are filled with; empty where they are not to be filled. */
  readonly medium: string
}

export interface Standing extends Placed {
  /** The Monday from which on their place is free: "2026-05-04". */
  readonly until: string
}

export interface WeekWork {
  /** ISO 8601: "2026-W16". */
  readonly week: string
  readonly litres: number
  readonly hours: number
  /** Liners to deliver. */
  readonly deliver: number
  /** What does not fit. */
  readonly note: string
  readonly sticking: readonly Sticking[]
  readonly standing: readonly Standing[]
  /** Whether a list fills all rows that are drawn for it, and may go on. */
  readonly mayGoOn: boolean
}

/** What Monday lacks before it can answer, or which of its cells shows something else than a figure. */
export interface NoWork {
  readonly lacks: string
}

type Read = (name: string) => ReturnType<WorkbookPort['valuesOf']>

/** Undefined where the workbook has no such sheet, or one from before its cells had names. */
export async function weekWorkOf(port: Pick<WorkbookPort, 'valuesOf'>): Promise<WeekWork | NoWork | undefined> {
  const read: Read = (name) => port.valuesOf(name, monday.sheet)
  const figure = async (key: keyof typeof monday.results) => (await read(figureOf(monday, key)))?.[0]?.[0]
  const [ready, week, litres, hours, deliver, note, sticking, stands] = await Promise.all([
    read(stateOf(monday)),
    figure('week'),
    figure('litres'),
    figure('hours'),
    figure('deliver'),
    figure('note'),
    tableOf(toStick, read),
    tableOf(standing, read),
  ])
  const state = ready?.[0]?.[0]
  if ([state, week, litres, hours, deliver, note, sticking, stands].includes(undefined)) return undefined
  if (state !== 'ready') return { lacks: shown(state) }

  const faults: string[] = []
  const text = (value: ReadCell | undefined, heading: string): string => {
    if (isCellError(value)) faults.push(`${heading}: ${shown(value)}`)
    return textIn(value)
  }
  const number = (value: ReadCell | undefined, heading: string): number => {
    if (typeof value === 'number') return value
    faults.push(`${heading}: ${shown(value)}`)
    return 0
  }
  const { results } = monday
  const placed = (row: Row<keyof Placed>): Placed => ({
    line: text(row.line, toStick.headings.line),
    species: text(row.species, toStick.headings.species),
    pieces: number(row.pieces, toStick.headings.pieces),
    container: text(row.container, toStick.headings.container),
  })
  const work: WeekWork = {
    week: text(week, results.week.heading),
    litres: number(litres, results.litres.heading),
    hours: number(hours, results.hours.heading),
    deliver: number(deliver, results.deliver.heading),
    note: text(note, results.note.heading),
    sticking: sticking!.rows.map((row) => ({
      ...placed(row),
      cuttings: number(row.cuttings, toStick.headings.cuttings),
      medium: text(row.medium, toStick.headings.medium),
    })),
    standing: stands!.rows.map((row) => ({
      ...placed(row),
      until: dayOf(number(row.until, standing.headings.until)),
    })),
    mayGoOn: sticking!.isFull || stands!.isFull,
  }
  // Of a table that shows an error only the corner shows it.
  for (const { corner, heading } of [sticking!, stands!])
    if (corner !== heading) faults.push(`${heading}: ${shown(corner)}`)
  return faults[0] === undefined ? work : { lacks: faults[0] }
}

type Row<K extends string> = Readonly<Record<K, ReadCell>>

interface ReadTable<K extends string> {
  /** What stands in the place of the first heading, and what should. */
  readonly corner: ReadCell | undefined
  readonly heading: string
  /** Without the one that says that there is none. */
  readonly rows: readonly Row<K>[]
  readonly isFull: boolean
}

/** Of a table that may have fewer rows than are drawn. Undefined where its cells have no names. */
async function tableOf<K extends string>(
  { name, headings }: { readonly name: string; readonly headings: Readonly<Record<K, string>> },
  read: Read,
): Promise<ReadTable<K> | undefined> {
  const keys = Object.keys(headings) as K[]
  const [corner, ...columns] = await Promise.all([name, ...keys.map((key) => spilledColumn(name, key))].map(read))
  if (corner === undefined || columns.includes(undefined)) return undefined
  const drawn = columns[0]!.map((_cell, row) => keys.map((_key, column) => columns[column]![row]?.[0] ?? ''))
  const filled = drawn.filter((cells) => cells.some((cell) => cell !== ''))
  const isNone = (cells: readonly ReadCell[]) => cells[0] === 'none' && cells.slice(1).every((cell) => cell === '')
  return {
    corner: corner[0]?.[0],
    heading: headings[keys[0]!],
    rows: filled
      .filter((cells) => !isNone(cells))
      .map((cells) => Object.fromEntries(keys.map((key, column) => [key, cells[column]])) as Row<K>),
    isFull: filled.length === drawn.length,
  }
}

const textIn = (value: ReadCell | undefined): string => (isCellError(value) ? value.code : String(value ?? ''))
const dayOf = (serial: number): string => dayText(serial) ?? String(serial)
/** In a sentence. */
const shown = (value: ReadCell | undefined): string => textIn(value) || 'empty'
