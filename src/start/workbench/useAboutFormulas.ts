import { useRef } from 'react'
import type { AskAboutFormulas } from '../../workbench/grid/lostFormulas'
import type { Words } from '../../wording/words'
import type { Question } from './QuestionDialog'
import { beforeReplacing } from './questions'

/** For the grid, which keeps it while the language may change. */
export function useAboutFormulas(words: Words, ask: (question: Question) => void): AskAboutFormulas {
  const now = useRef<AskAboutFormulas>(undefined)
  now.current = (lost) => new Promise((answer) => ask(beforeReplacing(words, lost, answer)))
  return (lost) => now.current!(lost)
}
