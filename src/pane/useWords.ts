import { createContext, useContext } from 'react'
import { english } from '../wording/en/words'
import type { Words } from '../wording/words'

/** The pane gives its sections the words of the chosen language; what stands by itself speaks English. */
export const WordsContext = createContext<Words>(english)

export function useWords(): Words {
  return useContext(WordsContext)
}
