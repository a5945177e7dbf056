import { useMemo } from 'react'
import type { Definition } from '../core/definition/definition'
import { definitionIn } from '../derived/definitionIn'
import { catalogue } from '../functions/catalogue'
import { useWords } from './useWords'

/** All functions, in the language of the pane. Only sections use it: the frame opens without the catalogue. */
export function useDefinitions(): readonly Definition[] {
  const words = useWords()
  return useMemo(() => catalogue.map((definition) => definitionIn(definition, words)), [words])
}
