/** What a season comes to, as the sheet Season has it: what a phone has no room for there. */
import type { WorkbookPort } from '../port'
import { figureOf } from './table/figures'
import { overview } from './tables/answers'
import { setup } from './tables/setup'

export interface Answer {
  /** Liners ordered, and saleable ones to expect. */
  readonly liners: number
  readonly expected: number
  /** Cash to pay for media and containers. */
  readonly buying: number
  readonly rooting: number
  /** As it stands on Setup: "EUR". */
  readonly currency: string
}

/** Undefined where the workbook holds no season of this kind, or one that is not complete. */
export async function answerOf(port: Pick<WorkbookPort, 'valuesOf'>): Promise<Answer | undefined> {
  const read = async (name: string) => (await port.valuesOf(name, overview.sheet))?.[0]?.[0]
  const [liners, expected, buying, rooting, currency] = await Promise.all([
    read(figureOf(overview, 'liners')),
    read(figureOf(overview, 'expected')),
    read(figureOf(overview, 'buying')),
    read(figureOf(overview, 'rooting')),
    read(figureOf(setup, 'currency')),
  ])
  if (typeof liners !== 'number' || typeof expected !== 'number') return undefined
  if (typeof buying !== 'number' || typeof rooting !== 'number') return undefined
  return { liners, expected, buying, rooting, currency: typeof currency === 'string' ? currency : '' }
}
