import { useEffect, useState } from 'react'
import type { WorkbookPort } from '../workbook/port'

interface MayBeOld {
  /** Whether cells may have changed since what is shown was read: a host tells of changes as of selected cells. */
  readonly isOld: boolean
  /** To be called before each reading: what changes while it goes on may not be in it. */
  readonly beginReading: () => void
}

export function useMayBeOld(port: WorkbookPort): MayBeOld {
  const [isOld, setIsOld] = useState(false)
  useEffect(() => {
    const stop = port.onSelectionChange(() => setIsOld(true))
    return () => stop()
  }, [port])
  return { isOld, beginReading: () => setIsOld(false) }
}
