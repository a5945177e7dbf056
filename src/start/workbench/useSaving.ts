import type { Grid } from '../../workbench/grid/grid'
import type { Words } from '../../wording/words'
import { canPick, isChanged, mayWrite, pickToSave } from './diskFiles'
import { type OpenFile, saveFile } from './files'
import type { Question } from './QuestionDialog'
import { beforeReplacingFile, notAllowed, notSaved } from './questions'

interface SavingOfPage {
  readonly words: Words
  readonly ask: (question: Question) => void
  readonly setFile: (file: OpenFile) => void
}

interface Saving {
  /** In place where that can be; else as a download, or where the user chooses. */
  readonly save: () => Promise<void>
  readonly saveAs: () => Promise<void>
}

/** Saves the open workbook, and asks before it writes over what it has not read. */
export function useSaving(grid: Grid | undefined, file: OpenFile, { words, ask, setFile }: SavingOfPage): Saving {
  async function write(handle?: FileSystemFileHandle) {
    try {
      setFile(await saveFile(grid!, file, handle))
    } catch (error) {
      ask(notSaved(words, file.name, error))
    }
  }

  async function saveAs() {
    if (!canPick()) return write()
    try {
      const handle = await pickToSave(file.name)
      if (handle !== undefined) await write(handle)
    } catch {
      // Whoever looks after the browser may have forbidden it; a download is there always.
      await write()
    }
  }

  async function save() {
    const { disk } = file
    if (disk === undefined) return saveAs()
    if (!(await mayWrite(disk))) return ask(notAllowed(words, file.name, saveAs))
    const replace = () => write(disk.handle)
    if (await isChanged(disk)) return ask(beforeReplacingFile(words, file.name, { replace, saveAs }))
    return replace()
  }

  return { save, saveAs }
}
