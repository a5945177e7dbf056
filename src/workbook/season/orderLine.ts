import { rangesRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import type { DefinedName } from '../book'
import type { CellPlace } from '../port'

/** The first cell of the last line of the order book; undefined where the workbook has none. */
export function lastOrderLine(names: readonly DefinedName[]): CellPlace | undefined {
  const species = names.find(({ name }) => name.toLowerCase() === 'orderspecies')
  const [range] = species === undefined ? [] : rangesRead(`=${species.refersTo}`, '', new Map())
  return range === undefined || range.sheet === ''
    ? undefined
    : { sheet: range.sheet, address: addressOf(range.bottom, range.left) }
}
