/** A workbook of one sheet with results that a test makes up. */
import { positionOf } from '../../../src/formula/address'
import type { OpenBook, OpenCell, ReadCell } from '../../../src/workbook/openBook'

/** A typed value; or a formula, what it gave, and what else is known of it. */
export type Shown =
  ReadCell | readonly [formula: string, value: ReadCell, more?: Partial<Pick<OpenCell, 'spill' | 'calls'>>]

export function openBookOf(cells: Readonly<Record<string, Shown>>, names: OpenBook['names'] = []): OpenBook {
  const all = Object.entries(cells).map(([address, shown]): [string, OpenCell] => {
    const [formula, value, more] = Array.isArray(shown)
      ? (shown as [string, ReadCell, object?])
      : ['', shown as ReadCell]
    return [address, { ...positionOf(address), formula, value, calls: [], ...more }]
  })
  return { names, sheets: [{ name: 'Season', cells: new Map(all) }] }
}
