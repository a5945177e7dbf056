import type { Book } from '../book'
import { blendsSheet } from './blendsSheet'
import { buyingSheet } from './buyingSheet'
import { ordersSheet } from './ordersSheet'
import { pricesSheet } from './pricesSheet'
import { reuseSheet } from './reuseSheet'
import { seasonSheet } from './seasonSheet'
import { waysSheet } from './waysSheet'

/** An invented nursery's season from the order book to the buying list. Only inputs are typed; all else is calculated. */
export function demoSeason(): Book {
  const parts = [seasonSheet(), ordersSheet(), waysSheet(), blendsSheet(), reuseSheet(), pricesSheet(), buyingSheet()]
  return { sheets: parts.map(({ sheet }) => sheet), names: parts.flatMap(({ names }) => names) }
}
