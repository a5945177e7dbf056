/** The tables of a season that grow by rows, and where a row goes in. */
import { addressOf } from '../../formula/address'
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import type { DefinedName } from '../book'
import type { CellPlace } from '../cellPlace'
import { all, type Table } from './table/table'
import { batches } from './tables/batches'
import { blends } from './tables/blends'
import { breaks } from './tables/breaks'
import { components } from './tables/components'
import { containers } from './tables/containers'
import { media } from './tables/media'
import { methods } from './tables/methods'
import { offers } from './tables/offers'
import { orders } from './tables/orders'
import { past } from './tables/past'
import { periods } from './tables/periods'
import { review } from './tables/review'
import { stockPlants } from './tables/stockPlants'

/** In the order of the work; orders grow most often. */
export const growing: readonly Table[] = [
  orders,
  batches,
  containers,
  media,
  blends,
  components,
  methods,
  past,
  stockPlants,
  breaks,
  offers,
  periods,
  review,
]

/**
 * The first cell that is typed of a table's last row: a row above it lies within all ranges that read the table.
 * Undefined where the workbook has no such table.
 */
export function lastRowOf(table: Table, names: readonly DefinedName[]): CellPlace | undefined {
  const [range] = rangesRead(`=${all<Table>(table, 'state')}`, '', namedRanges(names))
  return range === undefined || range.sheet === ''
    ? undefined
    : { sheet: range.sheet, address: addressOf(range.bottom, range.left + 1) }
}
