/** What stands week by week against what there is, as the sheet Calendar has it. */
import type { WorkbookPort } from '../port'
import type { ReadCell } from '../openBook'
import { figureOf } from './table/figures'
import { rowsOf } from './table/rowsSheet'
import { calendar } from './tables/calendar'
import { setup } from './tables/setup'

export interface Week {
  /** ISO 8601: "2026-W53". */
  readonly week: string
  readonly taken: number
}

export interface Weeks {
  readonly of: 'bench' | 'ground' | 'hours'
  readonly thereIs: number
  /** From the first week in which something is taken to the last. */
  readonly weeks: readonly Week[]
}

const measures = [
  { of: 'bench', thereIs: 'benchArea' },
  { of: 'ground', thereIs: 'bedArea' },
  { of: 'hours', thereIs: 'hours' },
] as const

/** One for each measure of which something is taken; undefined where the workbook has no calendar. */
export async function weeksOf(port: Pick<WorkbookPort, 'valuesOf'>): Promise<readonly Weeks[] | undefined> {
  const read = (name: string) => port.valuesOf(name, calendar.sheet)
  const labels = await read(rowsOf(calendar, 'week'))
  if (labels === undefined) return undefined
  const found = await Promise.all(
    measures.map(async ({ of, thereIs }): Promise<Weeks> => {
      const [taken, limit] = await Promise.all([read(rowsOf(calendar, of)), read(figureOf(setup, thereIs))])
      const all = labels.map(([week], row) => ({ week: String(week ?? ''), taken: numberIn(taken?.[row]?.[0]) }))
      const busy = all.map((one) => one.taken > 0)
      return {
        of,
        thereIs: numberIn(limit?.[0]?.[0]),
        weeks: all.slice(Math.max(0, busy.indexOf(true)), busy.lastIndexOf(true) + 1),
      }
    }),
  )
  return found.filter(({ weeks }) => weeks.length > 0)
}

const numberIn = (value: ReadCell | undefined): number => (typeof value === 'number' ? value : 0)
