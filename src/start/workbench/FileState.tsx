import { useEffect } from 'react'
import type { Words } from '../../wording/words'
import type { Files } from './useFiles'

interface FileStateProps {
  readonly words: Words['workbench']
  readonly files: Files
}

/** Says in the bar and in the title of the page which file is open, and whether it is saved. */
export function FileState({ words, files: { name, isUnsaved, isNotKept } }: FileStateProps) {
  const state = isUnsaved ? words.unsaved(name) : name
  useEffect(() => {
    document.title = `${state} – Sticksheet`
  }, [state])
  return (
    <>
      <span className="file" role="status" aria-label={words.openWorkbook}>
        {state}
      </span>
      {isNotKept && (
        <span className="file notice" role="status" aria-label={words.notice}>
          {words.notKept}
        </span>
      )}
    </>
  )
}
