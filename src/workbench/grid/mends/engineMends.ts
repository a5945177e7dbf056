import { guardFormulaCaches } from './cacheGuard'
import { compareCells } from './comparison'
import { keepDependencies } from './dependencies'
import type { EngineMend } from './mend'
import { settleSpills } from './settleSpills'
import { mindStops } from './stoppedCalculation'

/** What the formula engine needs wherever it calculates. */
export const engineMends: readonly EngineMend[] = [
  guardFormulaCaches,
  compareCells,
  mindStops,
  settleSpills,
  keepDependencies,
]
