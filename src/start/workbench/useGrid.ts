import { type RefObject, useEffect, useState } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { endsWithin } from '../../workbench/grid/endsWithin'
import type { Grid } from '../../workbench/grid/grid'
import type { WorkbookPort } from '../../workbook/port'
import type { StoredResults } from '../../workbook/storedResults'
import type { Words } from '../../wording/words'
import { beginsEmpty, emptyResults } from './beginning'
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
  /** With what the page begins with, once that shows its results. It lives as long as the page. */
  readonly grid: Grid | undefined
  /** The same, once it is calculated: only then another workbook may take the place of the demo. */
  readonly calculated: Grid | undefined
  /** There at once. */
  readonly port: WorkbookPort
  /** To be called once the rest of the page is drawn and answers, because the start of the grid holds all of it up. */
  readonly start: () => void
}

/** Of the demo; the build writes it. */
const demoResults = 'demo-results.json'

/** In milliseconds. */
const longestWait = 3000
const longestCalculation = 60_000
const longestFrame = 100
const mostFrames = 20

export function useGrid(
  place: RefObject<HTMLElement | null>,
  { words, ask, onFailure, ...options }: UseGridOptions,
): GridOfPage {
  const [grid, setGrid] = useState<Grid>()
  const [calculated, setCalculated] = useState<Grid>()
  const { dark, decimalMark } = options
  const questions = useGridQuestions(words, ask)
  const [{ port, start }] = useState(() => {
    let start = () => {}
    const stored = new Promise<void>((resolve) => (start = resolve)).then(fetchResults)
    const shown = stored.then(show)
    const calculated = shown.then(async (grid) => {
      if ((await stored) !== undefined) {
        await drawn(grid)
        // One that failed is told, and then the workbook can be saved all the same.
        await endsWithin(longestCalculation, grid.calculate())
      }
      return grid
    })
    shown.then(setGrid, () => undefined)
    calculated.then(setCalculated, onFailure)
    return { port: gridToCome(shown, calculated), start }
  })

  async function show(stored: StoredResults | undefined): Promise<Grid> {
    const { firstGrid } = await fetchGrid()
    return firstGrid(place.current!, { ...options, ...questions }, stored)
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
  return { grid, calculated, port, start }
}

const fetchGrid = () => import(/* webpackChunkName: "grid" */ './firstGrid')

/** Without them the grid calculates before it shows anything. */
async function fetchResults(): Promise<StoredResults | undefined> {
  if (beginsEmpty()) return emptyResults
  try {
    const answer = await fetch(demoResults)
    return answer.ok ? ((await answer.json()) as StoredResults) : undefined
  } catch {
    return undefined
  }
}

/** Until a cell is selected, which the grid does once it is drawn, and the line below the sheet tells it. */
async function drawn(grid: Grid): Promise<void> {
  for (let frame = 0; frame < mostFrames && grid.shownCell() === undefined; frame++) await nextFrame()
  await nextFrame()
  await nextFrame()
}

/** A page that is hidden draws none. */
function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, longestFrame)
    requestAnimationFrame(() => setTimeout(resolve))
  })
}
