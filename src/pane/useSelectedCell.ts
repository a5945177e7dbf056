import { useEffect, useState } from 'react'
import type { SelectedCell, WorkbookPort } from '../workbook/port'

/** The selected cell as it is now; undefined while there is none, or while the host cannot tell. */
export function useSelectedCell(port: WorkbookPort): SelectedCell | undefined {
  const [cell, setCell] = useState<SelectedCell>()
  useEffect(() => {
    // Answers may come back in another order than they were asked for; only the last question counts.
    let lastQuestion = 0
    const read = () => {
      lastQuestion += 1
      const question = lastQuestion
      const show = (answer: SelectedCell | undefined) => {
        if (question === lastQuestion) setCell(answer)
      }
      port.selectedCell().then(show, () => show(undefined))
    }
    read()
    const stop = port.onSelectionChange(read)
    return () => {
      lastQuestion = 0
      stop()
    }
  }, [port])
  return cell
}
