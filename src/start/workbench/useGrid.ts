import { type RefObject, useEffect, useState } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { catalogue } from '../../functions/catalogue'
import { startGrid, type Grid } from '../../workbench/grid/grid'
import { demoSeason } from '../../workbook/season/demoSeason'
import type { Words } from '../../wording/words'
import { hearWitness } from './hearWitness'
import type { Question } from './QuestionDialog'
import { useGridQuestions } from './useGridQuestions'

interface UseGridOptions {
  readonly dark: boolean
  readonly decimalMark: DecimalMark
  readonly giveFile: (bytes: Uint8Array) => void
  readonly words: Words
  readonly ask: (question: Question) => void
  /** The sheet will not come any more. */
  readonly onFailure: (error: unknown) => void
}

/** The grid with the demo season, once it is calculated. It lives as long as the page. */
export function useGrid(
  place: RefObject<HTMLElement | null>,
  { words, ask, onFailure, ...options }: UseGridOptions,
): Grid | undefined {
  const [grid, setGrid] = useState<Grid>()
  const { dark, decimalMark } = options
  const questions = useGridQuestions(words, ask)

  useEffect(() => {
    startGrid(place.current!, catalogue, demoSeason(), { ...options, ...questions, witness: hearWitness }).then(
      setGrid,
      onFailure,
    )
  }, [])

  useEffect(() => {
    // Closed or loaded anew, the page would lose it; the browser asks in its own words.
    const askBeforeLeaving = (event: BeforeUnloadEvent) => {
      if (grid?.hasUnsaved()) event.preventDefault()
    }
    window.addEventListener('beforeunload', askBeforeLeaving)
    return () => window.removeEventListener('beforeunload', askBeforeLeaving)
  }, [grid])

  useEffect(() => {
    grid?.setDark(dark)
  }, [grid, dark])
  useEffect(() => {
    grid?.setDecimalMark(decimalMark)
  }, [grid, decimalMark])
  return grid
}
