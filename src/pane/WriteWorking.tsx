import { Button, mergeClasses, Spinner } from '@fluentui/react-components'
import { useEffect, useState } from 'react'
import { plainCell } from '../derived/plainCell'
import { workingOf } from '../derived/working'
import { catalogue } from '../functions/catalogue'
import { sheets } from '../wording/en/sheets'
import { freeName } from '../workbook/freeName'
import type { CallInCell } from '../workbook/openBook'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { cellsRead, filledCells } from '../workbook/working/cellsRead'
import { workingBook } from '../workbook/working/workingBook'
import { callsOfFormula } from './callsOfFormula'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface WriteWorkingProps {
  readonly port: WorkbookPort
  readonly cell: SelectedCell
  readonly calls: readonly CallInCell[]
  readonly onWritten: (sheet: string) => void
}

/** Of one range, so that the sheet stays one that somebody reads. */
const mostCellsListed = 200

type Progress = { readonly is: 'ready' | 'writing' } | { readonly is: 'failed'; readonly sentence: string }

/** Puts the working of the selected cell onto a sheet of its own, for an auditor. */
export function WriteWorking({ port, cell, calls, onWritten }: WriteWorkingProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const portSentence = usePortSentence()
  const [progress, setProgress] = useState<Progress>({ is: 'ready' })

  useEffect(() => {
    setProgress({ is: 'ready' })
  }, [cell.sheet, cell.address])

  async function write() {
    setProgress({ is: 'writing' })
    try {
      const open = await port.read()
      const name = freeName(
        sheets.working.called(cell.address),
        open.sheets.map((sheet) => sheet.name),
      )
      const spill = open.sheets.find((sheet) => sheet.name === cell.sheet)?.cells.get(cell.address)?.spill
      const read = filledCells(cellsRead(cell.formula, cell.sheet, open.names), open, mostCellsListed)
      // In English, as all that the pane writes into a workbook.
      const worked = callsOfFormula(cell.formula, calls, catalogue).map((call) => ({
        ...call,
        working: workingOf(call.definition, call.args),
      }))
      await port.add(
        workingBook(name, {
          ...cell,
          ...(spill !== undefined && { spill }),
          calls: worked,
          read,
          plain: plainCell(cell.formula, catalogue),
        }),
      )
      setProgress({ is: 'ready' })
      onWritten(name)
    } catch (error) {
      setProgress({ is: 'failed', sentence: portSentence(error) })
    }
  }

  return (
    <>
      <Button size="small" disabledFocusable={progress.is === 'writing'} onClick={() => void write()}>
        {say.write}
      </Button>
      {progress.is === 'writing' && <Spinner size="tiny" label={say.writing} />}
      {progress.is === 'failed' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {progress.sentence}
        </p>
      )}
    </>
  )
}
