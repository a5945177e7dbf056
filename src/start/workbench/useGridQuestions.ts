import { useRef } from 'react'
import type { GridOptions } from '../../workbench/grid/grid'
import type { Words } from '../../wording/words'
import type { Question } from './QuestionDialog'
import { beforeReplacing, noPlace, notCalculated } from './questions'

type GridQuestions = Pick<GridOptions, 'aboutFormulas' | 'onNoPlace' | 'onNotCalculated'>

/** For the grid, which keeps them while the language may change. */
export function useGridQuestions(words: Words, ask: (question: Question) => void): GridQuestions {
  const now = useRef<GridQuestions>(undefined)
  now.current = {
    aboutFormulas: (lost) => new Promise((answer) => ask(beforeReplacing(words, lost, answer))),
    onNoPlace: (typed) => ask(noPlace(words, typed)),
    onNotCalculated: (problem) => ask(notCalculated(words, problem)),
  }
  return {
    aboutFormulas: (lost) => now.current!.aboutFormulas(lost),
    onNoPlace: (typed) => now.current!.onNoPlace(typed),
    onNotCalculated: (problem) => now.current!.onNotCalculated(problem),
  }
}
