import type { Book } from '../book'
import { vellimoor } from './data/vellimoor'
import { season } from './season'

/** An invented nursery's season from the order book to the review of what was spent. Only inputs are typed; all else is calculated. */
export const demoSeason = (): Book => season(vellimoor)
