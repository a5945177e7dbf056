import { useState } from 'react'
import type { Grid } from '../../workbench/grid/grid'
import type { Words } from '../../wording/words'
import { canPick, pickToOpen } from './diskFiles'
import { download, firstFile, openEmpty, openFile } from './files'
import type { Question } from './QuestionDialog'
import { beforeNew, beforeOpening, beforeSaving, isOpen, notRead } from './questions'
import { type KeptWorkOfTab, useKeptWork } from './useKeptWork'
import { useLeftWork } from './useLeftWork'
import { useSaving } from './useSaving'

interface FilesOfPage {
  readonly words: Words
  readonly ask: (question: Question) => void
  /** Once an empty workbook is open. */
  readonly onEmpty: () => void
  /** Once a file is open that the grid holds as a whole. */
  readonly onOpen: () => void
}

export interface Files extends Omit<KeptWorkOfTab, 'takeOver'> {
  readonly name: string
  readonly askForNew: () => void
  /** Asks before it lets go of what was typed, then lets the user choose: by the given way where there is no picker. */
  readonly askForFile: (choose: () => void) => void
  readonly open: (file: File) => Promise<void>
  readonly save: () => void
  /** Absent where saving asks for a place anyway. */
  readonly saveAs?: () => void
  /** A copy for people without the add-in. */
  readonly giveCopy: (bytes: Uint8Array) => void
}

/** Opens and saves workbooks, and asks where something would be lost. */
export function useFiles(grid: Grid | undefined, { words, ask, onEmpty, onOpen }: FilesOfPage): Files {
  const [file, setFile] = useState(firstFile)
  const { takeOver, ...kept } = useKeptWork(grid, file)
  useLeftWork(grid, {
    ask,
    takeOver,
    onOpen: (left) => {
      setFile(left)
      onOpen()
    },
  })
  const { save, saveAs } = useSaving(grid, file, { words, ask, setFile })

  async function begin() {
    setFile(await openEmpty(grid!))
    onEmpty()
  }

  async function open(chosen: File, handle?: FileSystemFileHandle) {
    try {
      const opened = await openFile(grid!, chosen, handle)
      setFile(opened)
      if (opened.lost.length === 0) onOpen()
      else ask(isOpen(words, opened))
    } catch (error) {
      ask(notRead(words, chosen.name, error))
    }
  }

  async function pick() {
    const handle = await pickToOpen()
    if (handle !== undefined) await open(await handle.getFile(), handle)
  }

  function askForFile(choose: () => void) {
    // Where the browser has pickers but was forbidden to show them.
    const act = canPick() ? () => pick().catch(choose) : choose
    if (grid!.hasUnsaved()) ask(beforeOpening(words, act))
    else void act()
  }

  function askWhereLost(act: () => Promise<void>) {
    if (file.lost.length === 0) void act()
    else ask(beforeSaving(words, file.lost, act))
  }

  const nameOfCopy = file.name.replace(/(\.xlsx)?$/i, '-without-add-in.xlsx')
  return {
    name: file.name,
    ...kept,
    askForNew: () => ask(beforeNew(words, begin)),
    askForFile,
    open,
    save: () => askWhereLost(save),
    ...(file.disk && { saveAs: () => void saveAs() }),
    giveCopy: (bytes) => askWhereLost(async () => download(bytes, nameOfCopy)),
  }
}
