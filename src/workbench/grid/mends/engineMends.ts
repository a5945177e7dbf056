import { readAlikeOnce } from './alikeFormulas'
import { spellNumbers } from './numberTexts'
import { findSameValues } from './sameValues'
import { mindSizes } from './sizes'
import { findFilledCells } from './blankCriteria'
import { guardBlockedSpills } from './blockedSpills'
import { countBlankResults } from './blankResults'
import { takeBlankTexts } from './blankTexts'
import { takeBranches } from './branches'
import { guardFormulaCaches } from './cacheGuard'
import { calculateInTurn } from './calculationsInTurn'
import { countChances } from './chances'
import { showCircles } from './circles'
import { compareCells } from './comparison'
import { countNoTexts } from './countedTexts'
import { convertByDefinition } from './conversions'
import { keepDependencies } from './dependencies'
import { countEmptyArguments } from './emptyArguments'
import { keepEmptyTexts } from './emptyTexts'
import { catchFaults } from './faults'
import type { EngineMend } from './mend'
import { fillFixedArrays } from './fixedArrays'
import { readNameTexts } from './nameTexts'
import { findNearest } from './nearestMatches'
import { giveZeroForNoMatch } from './noMatch'
import { giveOwnArguments } from './ownArguments'
import { rememberPlainTexts } from './plainTexts'
import { readQuickly } from './quickReads'
import { indexSearchedRows } from './searchedRows'
import { settleSpills } from './settleSpills'
import { findSheets } from './sheetNames'
import { readToSheetEdge } from './sheetEdge'
import { readSigns } from './signs'
import { takeTextNumbers } from './textNumbers'
import { needTwoNumbers } from './tooFew'
import { readTruths } from './truths'
import { truncateBelowZero } from './truncation'
import { goOnFromChanges } from './unchangedResults'
import { countWeeks } from './weeks'
import { findByWildcards } from './wildcards'

/** What the formula engine needs wherever it calculates. */
export const engineMends: readonly EngineMend[] = [
  catchFaults,
  guardFormulaCaches,
  compareCells,
  guardBlockedSpills,
  showCircles,
  fillFixedArrays,
  countBlankResults,
  giveOwnArguments,
  // Before keepEmptyTexts, which looks at what it reads.
  readQuickly,
  rememberPlainTexts,
  keepEmptyTexts,
  readSigns,
  readNameTexts,
  // After all that changes how a formula is read.
  readAlikeOnce,
  takeBranches,
  readTruths,
  countWeeks,
  truncateBelowZero,
  countChances,
  giveZeroForNoMatch,
  findFilledCells,
  findByWildcards,
  findNearest,
  convertByDefinition,
  mindSizes,
  readToSheetEdge,
  findSheets,
  findSameValues,
  spellNumbers,
  takeBlankTexts,
  countNoTexts,
  countEmptyArguments,
  needTwoNumbers,
  takeTextNumbers,
  calculateInTurn,
  settleSpills,
  keepDependencies,
  goOnFromChanges,
  indexSearchedRows,
]
