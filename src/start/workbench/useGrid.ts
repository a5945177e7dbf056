import { type RefObject, useEffect, useState } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { Grid } from '../../workbench/grid/grid'
import type { WorkbookPort } from '../../workbook/port'
import type { Words } from '../../wording/words'
import { gridToCome } from './gridToCome'
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

interface GridOfPage {
  /** With the demo season, once it is calculated. It lives as long as the page. */
  readonly grid: Grid | undefined
  /** There at once. */
  readonly port: WorkbookPort
  /** To be called once the rest of the page is drawn and answers, because the start of the grid holds all of it up. */
  readonly start: () => void
}

/** In milliseconds. */
const longestWait = 3000

export function useGrid(
  place: RefObject<HTMLElement | null>,
  { words, ask, onFailure, ...options }: UseGridOptions,
): GridOfPage {
  const [grid, setGrid] = useState<Grid>()
  const { dark, decimalMark } = options
  const questions = useGridQuestions(words, ask)
  const [{ port, start }] = useState(() => {
    let start = () => {}
    const coming = new Promise<void>((resolve) => (start = resolve)).then(begin)
    coming.then(setGrid, onFailure)
    return { port: gridToCome(coming), start }
  })

  async function begin(): Promise<Grid> {
    const { gridWithDemo } = await import(/* webpackChunkName: "grid" */ './gridWithDemo')
    return gridWithDemo(place.current!, { ...options, ...questions })
  }

  useEffect(() => {
    // Should nobody say so.
    const timer = setTimeout(start, longestWait)
    return () => clearTimeout(timer)
  }, [])

  useEffect(() => {
    grid?.setDark(dark)
  }, [grid, dark])
  useEffect(() => {
    grid?.setDecimalMark(decimalMark)
  }, [grid, decimalMark])
  return { grid, port, start }
}
