import { useEffect, useState } from 'react'
import { english } from '../../wording/en/words'
import { wordsIn, type Language } from '../../wording/languages'
import type { Words } from '../../wording/words'

interface PaneLanguage {
  readonly words: Words
  /** For the pane to tell what it speaks. */
  readonly follow: (language: string) => void
}

/** What stands around the pane speaks as the pane does; until that has told, English. */
export function usePaneLanguage(): PaneLanguage {
  const [told, follow] = useState('en')
  const [words, setWords] = useState<Words>(english)
  useEffect(() => {
    let isCurrent = true
    // The pane speaks it, so that it is loaded already.
    void wordsIn(told as Language).then((loaded) => isCurrent && setWords(loaded))
    return () => {
      isCurrent = false
    }
  }, [told])
  return { words, follow }
}
