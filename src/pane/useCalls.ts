import { useEffect, useState } from 'react'
import type { CallInCell } from '../workbook/openBook'
import type { SelectedCell, WorkbookPort } from '../workbook/port'

/** The calls that the selected cell's formula made; 'unknown' where the host has not seen its calculation. */
export function useCalls(port: WorkbookPort, cell: SelectedCell | undefined): readonly CallInCell[] | 'unknown' {
  const [calls, setCalls] = useState<readonly CallInCell[] | 'unknown'>([])
  useEffect(() => {
    let isCurrent = true
    const show = (answer: readonly CallInCell[] | undefined) => {
      if (isCurrent) setCalls(answer ?? 'unknown')
    }
    port.callsOfSelectedCell().then(show, () => show(undefined))
    return () => {
      isCurrent = false
    }
    // A cell is read anew whenever it or its content changes, and is another object then.
  }, [port, cell])
  return calls
}
