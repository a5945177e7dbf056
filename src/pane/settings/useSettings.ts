import { createContext, useContext } from 'react'
import { english } from '../../wording/en/words'
import { numberText, type NumberText } from './numberText'
import { settingsFrom, type Chosen, type Settings } from './settings'

export interface SettingsInUse {
  readonly settings: Settings
  readonly numbers: NumberText
  /** Takes what was changed, and keeps it. */
  readonly choose: (change: Chosen) => void
  /** Said where a choice could not be followed or kept. */
  readonly problem: 'languageMissing' | 'notKept' | undefined
}

const unchosen = settingsFrom({}, 'en')

export const SettingsContext = createContext<SettingsInUse>({ settings: unchosen, numbers: numberText(unchosen, english), choose: () => undefined, problem: undefined })

export function useSettings(): SettingsInUse {
  return useContext(SettingsContext)
}

/** How numbers, measures and money are written now. */
export function useNumberText(): NumberText {
  return useSettings().numbers
}
