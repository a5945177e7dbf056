import type { Book } from '../book'
import { batchesSheet } from './batchesSheet'
import { blendsSheet } from './blendsSheet'
import { buyingSheet } from './buyingSheet'
import { compareSheet } from './compareSheet'
import { offersSheet } from './offersSheet'
import { ordersSheet } from './ordersSheet'
import { pricesSheet } from './pricesSheet'
import { quoteSheet } from './quoteSheet'
import { reuseSheet } from './reuseSheet'
import { reviewSheet } from './reviewSheet'
import { riskSheet } from './riskSheet'
import { seasonSheet } from './seasonSheet'
import { timingSheet } from './timingSheet'
import { waysSheet } from './waysSheet'

/** An invented nursery's season from the order book to the review of what was spent. Only inputs are typed; all else is calculated. */
export function demoSeason(): Book {
  const parts = [
    seasonSheet(),
    ordersSheet(),
    batchesSheet(),
    waysSheet(),
    compareSheet(),
    blendsSheet(),
    reuseSheet(),
    pricesSheet(),
    buyingSheet(),
    offersSheet(),
    timingSheet(),
    quoteSheet(),
    riskSheet(),
    reviewSheet(),
  ]
  return { sheets: parts.map(({ sheet }) => sheet), names: parts.flatMap(({ names }) => names) }
}
