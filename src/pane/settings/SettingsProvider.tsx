import { useEffect, useMemo, useState, type ReactNode } from 'react'
import { english } from '../../wording/en/words'
import { wordsIn } from '../../wording/languages'
import type { Words } from '../../wording/words'
import { WordsContext } from '../useWords'
import { keepSettings, keptSettings } from './keptSettings'
import { settingsFrom, type Chosen } from './settings'
import { SettingsContext, type SettingsInUse } from './useSettings'

interface SettingsProviderProps {
  /** What the host speaks, as "de-AT"; without one the browser says it. */
  readonly locale: string
  readonly children: ReactNode
}

/** Gives what is within it the settings of this person, and the words and numbers that follow from them. */
export function SettingsProvider({ locale, children }: SettingsProviderProps) {
  const [chosen, setChosen] = useState(keptSettings)
  const [words, setWords] = useState<Words>(english)
  const [problem, setProblem] = useState<SettingsInUse['problem']>()
  const settings = useMemo(() => settingsFrom(chosen, locale), [chosen, locale])
  const { language } = settings

  useEffect(() => {
    let isCurrent = true
    wordsIn(language).then(
      (loaded) => isCurrent && setWords(loaded),
      () => isCurrent && setProblem('languageMissing'),
    )
    return () => {
      isCurrent = false
    }
  }, [language])

  const inUse = useMemo(
    (): SettingsInUse => ({
      settings,
      choose(change: Chosen) {
        const changed = { ...chosen, ...change }
        setChosen(changed)
        setProblem(keepSettings(changed) ? undefined : 'notKept')
      },
      problem,
    }),
    [settings, chosen, problem],
  )

  return (
    <WordsContext value={words}>
      <SettingsContext value={inUse}>{children}</SettingsContext>
    </WordsContext>
  )
}
