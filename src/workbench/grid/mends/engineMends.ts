import { spellNumbers } from './numberTexts'
import { findSameValues } from './sameValues'
import { mindSizes } from './sizes'
import { findFilledCells } from './blankCriteria'
import { guardBlockedSpills } from './blockedSpills'
import { countBlankResults } from './blankResults'
import { takeBranches } from './branches'
import { guardFormulaCaches } from './cacheGuard'
import { calculateInTurn } from './calculationsInTurn'
import { countChances } from './chances'
import { compareCells } from './comparison'
import { keepDependencies } from './dependencies'
import { keepEmptyTexts } from './emptyTexts'
import { catchFaults } from './faults'
import type { EngineMend } from './mend'
import { giveZeroForNoMatch } from './noMatch'
import { giveOwnArguments } from './ownArguments'
import { readQuickly } from './quickReads'
import { indexSearchedRows } from './searchedRows'
import { settleSpills } from './settleSpills'
import { readSigns } from './signs'
import { truncateBelowZero } from './truncation'
import { goOnFromChanges } from './unchangedResults'
import { countWeeks } from './weeks'

/** What the formula engine needs wherever it calculates. */
export const engineMends: readonly EngineMend[] = [
  catchFaults,
  guardFormulaCaches,
  compareCells,
  guardBlockedSpills,
  countBlankResults,
  giveOwnArguments,
  // Before keepEmptyTexts, which looks at what it reads.
  readQuickly,
  keepEmptyTexts,
  readSigns,
  takeBranches,
  countWeeks,
  truncateBelowZero,
  countChances,
  giveZeroForNoMatch,
  findFilledCells,
  mindSizes,
  findSameValues,
  spellNumbers,
  calculateInTurn,
  settleSpills,
  keepDependencies,
  goOnFromChanges,
  indexSearchedRows,
]
