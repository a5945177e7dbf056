import { useState } from 'react'
import type { Grid } from '../../workbench/grid/grid'
import type { Words } from '../../wording/words'
import { download, openEmpty, openFile, type OpenFile, saveFile } from './files'
import type { Question } from './QuestionDialog'
import { beforeNew, beforeOpening, beforeSaving, isOpen, notRead, notSaved } from './questions'

interface FilesOfPage {
  readonly words: Words
  readonly ask: (question: Question) => void
  /** Once an empty workbook is open. */
  readonly onEmpty: () => void
  /** Once a file is open that the grid holds as a whole. */
  readonly onOpen: () => void
}

interface Files {
  readonly askForNew: () => void
  /** Asks before it lets go of what was typed, then lets the user choose. */
  readonly askForFile: (choose: () => void) => void
  readonly open: (file: File) => Promise<void>
  readonly save: () => void
  /** A copy for people without the add-in. */
  readonly giveCopy: (bytes: Uint8Array) => void
}

/** Opens and saves workbooks, and asks where something would be lost. */
export function useFiles(grid: Grid | undefined, { words, ask, onEmpty, onOpen }: FilesOfPage): Files {
  const [file, setFile] = useState<OpenFile>({ name: 'season.xlsx', lost: [] })

  async function begin() {
    setFile(await openEmpty(grid!))
    onEmpty()
  }

  async function open(chosen: File) {
    try {
      const opened = await openFile(grid!, chosen)
      setFile(opened)
      if (opened.lost.length === 0) onOpen()
      else ask(isOpen(words, opened))
    } catch (error) {
      ask(notRead(words, chosen.name, error))
    }
  }

  async function save() {
    try {
      await saveFile(grid!, file.name)
    } catch (error) {
      ask(notSaved(words, file.name, error))
    }
  }

  function askWhereLost(act: () => Promise<void>) {
    if (file.lost.length === 0) void act()
    else ask(beforeSaving(words, file.lost, act))
  }

  const nameOfCopy = file.name.replace(/(\.xlsx)?$/i, '-without-add-in.xlsx')
  return {
    askForNew: () => ask(beforeNew(words, begin)),
    askForFile: (choose) => (grid!.hasUnsaved() ? ask(beforeOpening(words, choose)) : choose()),
    open,
    save: () => askWhereLost(save),
    giveCopy: (bytes) => askWhereLost(async () => download(bytes, nameOfCopy)),
  }
}
