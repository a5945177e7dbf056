import { useCallback } from 'react'
import { portSentence } from './portSentence'
import { useWords } from './useWords'

/** What a workbook could not do, in the language of the pane. */
export function usePortSentence(): (error: unknown, doing?: 'reading' | 'writing') => string {
  const { port } = useWords()
  return useCallback((error, doing = 'writing') => portSentence(error, doing, port), [port])
}
