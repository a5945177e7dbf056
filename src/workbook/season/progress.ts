/** How far a season is typed, sheet by sheet, in the order in which it is filled in. */
import type { WorkbookPort } from '../port'
import { figureOf, stateOf } from './table/figures'
import { all, type Table } from './table/table'
import { overview } from './tables/answers'
import { blends } from './tables/blends'
import { components } from './tables/components'
import { containers } from './tables/containers'
import { media } from './tables/media'
import { methods } from './tables/methods'
import { orders } from './tables/orders'
import { setup } from './tables/setup'

export interface SheetProgress {
  readonly sheet: string
  /** Rows that are complete, and that were begun and are not; undefined of Setup, which has no rows. */
  readonly rows?: { readonly ready: number; readonly begun: number }
  /** What Setup, or the first row that is not complete, says of itself; empty where all is complete. */
  readonly lacks: string
}

export interface Progress {
  /** What stands first on the sheet Season. */
  readonly season: string
  readonly sheets: readonly SheetProgress[]
}

/** What must be typed before anything is costed. */
const first: readonly Table[] = [containers, media, blends, components, methods, orders]

/** Undefined where the workbook holds no season of this kind. */
export async function progressOf(port: Pick<WorkbookPort, 'valuesOf'>): Promise<Progress | undefined> {
  const [complete, ofSetup, ...states] = await Promise.all(
    [figureOf(overview, 'complete'), stateOf(setup), ...first.map((table) => all<Table>(table, 'state'))].map((name) =>
      port.valuesOf(name, overview.sheet),
    ),
  )
  if (complete === undefined || ofSetup === undefined) return undefined
  return {
    season: String(complete[0]?.[0] ?? ''),
    sheets: [
      { sheet: setup.sheet, lacks: lacking(ofSetup.flat()) },
      ...first.map((table, index) => {
        const begun = (states[index] ?? []).flat().filter((state) => state !== '' && state !== null)
        const ready = begun.filter((state) => state === 'ready').length
        return { sheet: table.sheet, rows: { ready, begun: begun.length - ready }, lacks: lacking(begun) }
      }),
    ],
  }
}

function lacking(states: readonly unknown[]): string {
  return String(states.find((state) => state !== 'ready') ?? '')
}
