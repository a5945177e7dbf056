import type { Book } from '../book'
import { empty } from './data/empty'
import { season } from './season'

/** The season without anybody's figures: the same sheets and formulas, whose rows wait to be typed. */
export const emptySeason = (currency: string): Book => season(empty(currency))
