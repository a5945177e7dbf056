import { countBlankResults } from './blankResults'
import { guardFormulaCaches } from './cacheGuard'
import { calculateInTurn } from './calculationsInTurn'
import { compareCells } from './comparison'
import { keepDependencies } from './dependencies'
import { keepEmptyTexts } from './emptyTexts'
import { catchFaults } from './faults'
import type { EngineMend } from './mend'
import { giveOwnArguments } from './ownArguments'
import { settleSpills } from './settleSpills'
import { goOnFromChanges } from './unchangedResults'

/** What the formula engine needs wherever it calculates. */
export const engineMends: readonly EngineMend[] = [
  catchFaults,
  guardFormulaCaches,
  compareCells,
  countBlankResults,
  giveOwnArguments,
  keepEmptyTexts,
  calculateInTurn,
  settleSpills,
  keepDependencies,
  goOnFromChanges,
]
