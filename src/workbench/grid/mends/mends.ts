import { nameBars } from './barNames'
import { takeEmptiedCells } from './emptiedCells'
import { endTypedFormulas } from './endTypedFormulas'
import { engineMends } from './engineMends'
import { fillFormulas } from './filledFormulas'
import { scrollBesideFrozen } from './frozenScrolls'
import { keepTextsBesideFrozen } from './frozenTexts'
import { keepTyping } from './keepTyping'
import type { Mend } from './mend'
import { mendNameBox } from './nameBox'
import { placeNotes } from './notePlaces'
import { giveOwnFormulas } from './ownFormulas'
import { calculatePromptly } from './promptCalculation'
import { readTypedFormulas } from './typedFormulas'

/** All that is repaired at the start of the grid; the other files of this folder are called where they are needed. */
export const allMends: readonly Mend[] = [
  ...engineMends,
  calculatePromptly,
  giveOwnFormulas,
  keepTyping,
  readTypedFormulas,
  fillFormulas,
  takeEmptiedCells,
  endTypedFormulas,
  mendNameBox,
  scrollBesideFrozen,
  keepTextsBesideFrozen,
  placeNotes,
  nameBars,
]
