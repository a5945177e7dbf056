import { guardFormulaCaches } from './cacheGuard'
import { compareCells } from './comparison'
import { keepDependencies } from './dependencies'
import type { EngineMend } from './mend'
import { settleSpills } from './settleSpills'
import { calculateInTurn } from './calculationsInTurn'
import { goOnFromChanges } from './unchangedResults'

/** What the formula engine needs wherever it calculates. */
export const engineMends: readonly EngineMend[] = [
  guardFormulaCaches,
  compareCells,
  calculateInTurn,
  settleSpills,
  keepDependencies,
  goOnFromChanges,
]
