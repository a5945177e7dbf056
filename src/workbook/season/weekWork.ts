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
  /** What Monday lacks before it can answer, or its error; empty where it answers. */
  readonly lacks: string
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
}

type Read = (name: string) => ReturnType<WorkbookPort['valuesOf']>

/** Undefined where the workbook has no such sheet. */
export async function weekWorkOf(port: Pick<WorkbookPort, 'valuesOf'>): Promise<WeekWork | undefined> {
  const read: Read = (name) => port.valuesOf(name, monday.sheet)
  const state = (await read(stateOf(monday)))?.[0]?.[0]
  if (state === undefined) return undefined
  const figure = async (key: keyof typeof monday.results) => (await read(figureOf(monday, key)))?.[0]?.[0]
  const [week, litres, hours, deliver, note, sticking, stands] = await Promise.all([
    figure('week'),
    figure('litres'),
    figure('hours'),
    figure('deliver'),
    figure('note'),
    rowsOf(toStick, read),
    rowsOf(standing, read),
  ])
  return {
    lacks: state === 'ready' ? textIn([week, litres, hours, deliver, note].find(isCellError)) : textIn(state),
    week: textIn(week),
    litres: numberIn(litres),
    hours: numberIn(hours),
    deliver: numberIn(deliver),
    note: textIn(note),
    sticking: sticking.map((row) => ({
      ...placed(row),
      cuttings: numberIn(row.cuttings),
      medium: textIn(row.medium),
    })),
    standing: stands.map((row) => ({ ...placed(row), until: dayText(numberIn(row.until)) ?? '' })),
  }
}

/** Of a table that may have fewer rows than are drawn, or the one that says that there is none. */
async function rowsOf<K extends string>(
  { name, headings }: { readonly name: string; readonly headings: Readonly<Record<K | 'pieces', string>> },
  read: Read,
): Promise<readonly Readonly<Record<K | 'pieces', ReadCell>>[]> {
  const keys = Object.keys(headings) as (K | 'pieces')[]
  const columns = await Promise.all(keys.map((key) => read(spilledColumn(name, key))))
  const rows = (columns[0] ?? []).map(
    (_cell, row) =>
      Object.fromEntries(keys.map((key, column) => [key, columns[column]?.[row]?.[0] ?? ''])) as Record<
        K | 'pieces',
        ReadCell
      >,
  )
  return rows.filter(({ pieces }) => typeof pieces === 'number')
}

function placed(row: Readonly<Record<keyof Placed, ReadCell>>): Placed {
  return {
    line: textIn(row.line),
    species: textIn(row.species),
    pieces: numberIn(row.pieces),
    container: textIn(row.container),
  }
}

const textIn = (value: ReadCell | undefined): string => (isCellError(value) ? value.code : String(value ?? ''))
const numberIn = (value: ReadCell | undefined): number => (typeof value === 'number' ? value : 0)
