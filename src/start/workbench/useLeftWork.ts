import { useEffect } from 'react'
import { keptSettings } from '../../pane/settings/keptSettings'
import { settingsFrom } from '../../pane/settings/settings'
import type { Grid } from '../../workbench/grid/grid'
import { wordsIn } from '../../wording/languages'
import { openBytes, type OpenFile } from './files'
import { forget, type LeftWork, leftWork } from './keptWork'
import type { Question } from './QuestionDialog'
import { aboutLeftWork, type AboutLeftWork, notRead } from './questions'

interface LeftWorkOfPage {
  readonly ask: (question: Question) => void
  /** What has just been opened was kept under this name, which the tab holds. */
  readonly takeOver: (name: string) => void
  readonly onOpen: (file: OpenFile) => void
}

/** Offers what other tabs have left behind, one after the other, until one is opened. */
export function useLeftWork(grid: Grid | undefined, { ask, takeOver, onOpen }: LeftWorkOfPage): void {
  async function offer(open: Grid) {
    // The pane, which tells the language later, has not been asked yet.
    const words = await wordsIn(settingsFrom(keptSettings(), navigator.language).language)
    for await (const left of leftWork()) {
      // Whoever has begun to type is not disturbed; it is offered another time.
      if (open.hasUnsaved()) return left.letGo()
      const answer = await new Promise<AboutLeftWork>((resolve) => ask(aboutLeftWork(words, left.work, resolve)))
      if (answer === 'open') {
        return openLeft(open, left).catch((error: unknown) => {
          left.letGo()
          ask(notRead(words, left.work.file.name, error))
        })
      }
      if (answer === 'throwAway') await forget(left.name)
      left.letGo()
    }
  }

  async function openLeft(open: Grid, { name, work }: LeftWork) {
    await openBytes(open, work.bytes)
    takeOver(name)
    onOpen({ ...work.file })
  }

  useEffect(() => {
    // Where the browser keeps nothing there is nothing to offer; the first edit tells of that.
    if (grid !== undefined) offer(grid).catch(() => undefined)
  }, [grid])
}
