import { useCallback } from 'react'
import type { CellFunction } from '../core/definition/definition'
import type { Problem } from '../core/definition/problem'
import { useSettings } from './settings/useSettings'
import { useWords } from './useWords'

/** What is wrong with a call, in the language of the pane and with the decimal mark that its user types. */
export function useProblemSentence(): (problem: Problem, definition: CellFunction) => string {
  const { sentence } = useWords()
  const { decimalMark } = useSettings().settings
  return useCallback((problem, definition) => sentence(problem, definition, decimalMark), [sentence, decimalMark])
}
