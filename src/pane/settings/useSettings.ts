import { createContext, useContext } from 'react'
import { settingsFrom, type Chosen, type Settings } from './settings'

export interface SettingsInUse {
  readonly settings: Settings
  /** Takes what was changed, and keeps it. */
  readonly choose: (change: Chosen) => void
  /** Said where a choice could not be followed or kept. */
  readonly problem: 'languageMissing' | 'notKept' | undefined
}

const unchosen = settingsFrom({}, 'en')

export const SettingsContext = createContext<SettingsInUse>({
  settings: unchosen,
  choose: () => undefined,
  problem: undefined,
})

export function useSettings(): SettingsInUse {
  return useContext(SettingsContext)
}
