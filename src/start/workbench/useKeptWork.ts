import { useEffect, useRef, useState } from 'react'
import type { Grid } from '../../workbench/grid/grid'
import type { Book } from '../../workbook/book'
import { bytesOf } from './bytesOf'
import type { OpenFile } from './files'
import { followEdits } from './followEdits'
import { forget, hold, keep, knowsTabs, newName } from './keptWork'

export interface KeptWorkOfTab {
  /** Whether the workbook holds what no file does. */
  readonly isUnsaved: boolean
  /** Whether the browser would not keep it. */
  readonly isNotKept: boolean
  /** What has just been opened was kept under this name, which the tab holds: from now on it is kept there. */
  readonly takeOver: (name: string) => void
  /** With what is still being typed. False where the browser would not keep it. */
  readonly keepNow: () => Promise<boolean>
  /** Loads the page anew once it is kept, and then without a question. False where the browser would not keep it. */
  readonly loadAgain: () => Promise<boolean>
}

/** Keeps what no file holds in this browser, a while after an edit and when the page is hidden. */
export function useKeptWork(grid: Grid | undefined, file: OpenFile): KeptWorkOfTab {
  const [isUnsaved, setUnsaved] = useState(false)
  const [isNotKept, setNotKept] = useState(false)
  const { begin, follow, takeOver } = useRecord(file, { setUnsaved, setNotKept })
  const leaveUnasked = useQuestionBeforeLeaving(grid)

  useEffect(() => {
    if (grid === undefined) return
    begin()
    return followEdits(grid, { onEdit: () => setUnsaved(true), keep: () => void follow(grid) })
  }, [grid])

  // Another one is open, or this one was saved.
  useEffect(() => {
    if (grid !== undefined) void follow(grid)
  }, [grid, file])

  async function keepNow(): Promise<boolean> {
    await grid!.endTyping()
    return follow(grid!)
  }

  return {
    isUnsaved,
    isNotKept,
    takeOver: (name) => {
      grid!.markUnsaved()
      setUnsaved(true)
      takeOver(name)
    },
    keepNow,
    loadAgain: async () => {
      const isKept = await keepNow()
      if (isKept) leaveUnasked(() => location.reload())
      return isKept
    },
  }
}

/** Has the browser ask, in its own words, before unsaved work goes with the page. Returns the way to leave without. */
function useQuestionBeforeLeaving(grid: Grid | undefined): (leave: () => void) => void {
  const isUnasked = useRef(false)
  useEffect(() => {
    const ask = (event: BeforeUnloadEvent) => {
      if (!isUnasked.current && grid?.hasUnsaved()) event.preventDefault()
    }
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [grid])
  return (leave) => {
    isUnasked.current = true
    leave()
  }
}

interface Told {
  readonly setUnsaved: (isUnsaved: boolean) => void
  readonly setNotKept: (isNotKept: boolean) => void
}

/** The tab's record of unsaved work. */
function useRecord(file: OpenFile, { setUnsaved, setNotKept }: Told) {
  const now = useRef(file)
  now.current = file
  const own = useRef({ name: '', isKept: false })
  /** One after the other: what is kept last is what stands. */
  const turn = useRef<Promise<unknown>>(Promise.resolve())

  async function bringUpToDate(open: Grid) {
    const { current: tab } = own
    const book = open.unsaved()
    setUnsaved(book !== undefined)
    if (book !== undefined) {
      const work = { file: now.current, title: titleOf(book), keptAt: Date.now(), bytes: await bytesOf(book) }
      tab.isKept = true
      await keep(tab.name, { version: 1, ...work })
    } else if (tab.isKept) {
      await forget(tab.name)
      tab.isKept = false
    }
  }

  return {
    begin() {
      const name = newName()
      own.current = { name, isKept: false }
      turn.current = hold(name).catch(() => undefined)
    },
    /** False where the browser would not keep it. */
    follow(open: Grid): Promise<boolean> {
      const kept = turn.current
        .then(() => bringUpToDate(open))
        .then(
          () => true,
          () => false,
        )
      turn.current = kept
      void kept.then((isKept) => setNotKept(!isKept))
      return kept
    },
    takeOver(name: string) {
      // What may be another tab's stays that.
      if (knowsTabs()) own.current = { name, isKept: true }
    },
  }
}

/** A season's first sheet begins with one. */
function titleOf({ sheets }: Book): string {
  const title = sheets[0]?.rows[0]?.[0]?.value
  return typeof title === 'string' ? title : ''
}
