import { useEffect, useState } from 'react'
import type { Words } from '../../wording/words'
import { keepOffline, type TakeOver } from './newerVersion'
import type { Files } from './useFiles'

interface NewerVersionProps {
  readonly words: Words['workbench']
  /** Nothing is fetched beside before the sheet is there. */
  readonly isReady: boolean
  readonly files: Files
}

/** Says in the bar that there is a newer version, and loads it once what is unsaved is kept. */
export function NewerVersion({ words: { notice, newerVersion: words }, isReady, files }: NewerVersionProps) {
  const [newer, setNewer] = useState<{ readonly takeOver: TakeOver }>()
  const [said, setSaid] = useState<'isThere' | 'notKept' | 'otherTabs'>('isThere')

  useEffect(() => {
    // Where the browser does not keep the page, it opens as before.
    if (isReady) keepOffline((takeOver) => setNewer({ takeOver })).catch(() => undefined)
  }, [isReady])

  if (newer === undefined) return null
  async function load() {
    if (!(await files.keepNow())) return setSaid('notKept')
    if (!(await newer!.takeOver())) return setSaid('otherTabs')
    if (!(await files.loadAgain())) setSaid('notKept')
  }
  return (
    <>
      <span className="file" role="status" aria-label={notice}>
        {words[said]}
      </span>
      <button type="button" onClick={() => void load()}>
        {words.load}
      </button>
    </>
  )
}
