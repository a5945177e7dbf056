import { useMemo } from 'react'
import { useWords } from '../useWords'
import { numberText, type NumberText } from './numberText'
import { useSettings } from './useSettings'

/** How numbers, measures and money are written now. Only sections use it: the frame opens without decimal arithmetic. */
export function useNumberText(): NumberText {
  const { settings } = useSettings()
  const words = useWords()
  return useMemo(() => numberText(settings, words), [settings, words])
}
