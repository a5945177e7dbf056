import { rangesRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import type { DefinedName } from '../book'
import type { CellPlace } from '../port'

/** The first cell of the last line of the order book; undefined where the workbook has none. */
export function lastOrderLine(names: readonly DefinedName[]): CellPlace | undefined {
  const lines = names.find(({ name }) => name.toLowerCase() === 'orderline')
  const [range] = lines === undefined ? [] : rangesRead(`=${lines.refersTo}`, '', new Map())
  return range === undefined || range.sheet === ''
    ? undefined
    : { sheet: range.sheet, address: addressOf(range.bottom, range.left) }
}
