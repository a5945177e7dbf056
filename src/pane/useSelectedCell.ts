import { useEffect, useState } from 'react'
import type { SelectedCell, WorkbookPort } from '../workbook/port'

/** The selected cell as it is now; undefined while there is none, or while the host cannot tell. */
export function useSelectedCell(port: WorkbookPort): SelectedCell | undefined {
  const [cell, setCell] = useState<SelectedCell>()
  useEffect(() => {
    let stopped = false
    let isReading = false
    // Whoever holds an arrow key down selects cells faster than they are read: the last one counts.
    let isAnother = false
    const read = () => {
      isAnother = isReading
      if (isReading) return
      isReading = true
      const show = (answer: SelectedCell | undefined) => {
        isReading = false
        if (stopped) return
        if (isAnother) read()
        else setCell(answer)
      }
      port.selectedCell().then(show, () => show(undefined))
    }
    read()
    const stop = port.onSelectionChange(read)
    return () => {
      stopped = true
      stop()
    }
  }, [port])
  return cell
}
