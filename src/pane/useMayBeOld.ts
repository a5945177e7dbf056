import { useEffect, useState } from 'react'
import type { WorkbookPort } from '../workbook/port'

/** Whether cells may have changed since `read` became another one: a host tells of changes as of selected cells. */
export function useMayBeOld(port: WorkbookPort, read: unknown): boolean {
  const [last, setLast] = useState(read)
  const [isOld, setIsOld] = useState(false)
  if (last !== read) {
    setLast(read)
    setIsOld(false)
  }
  useEffect(() => {
    const stop = port.onSelectionChange(() => setIsOld(true))
    return () => stop()
  }, [port])
  return isOld
}
