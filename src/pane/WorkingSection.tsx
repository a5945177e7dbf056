import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { lazy, Suspense, useId, useMemo } from 'react'
import type { Definition } from '../core/definition/definition'
import { workingOf } from '../derived/working'
import type { Words } from '../wording/words'
import type { CallInCell, ReadCell } from '../workbook/openBook'
import type { CellPlace } from '../workbook/cellPlace'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { callsOfFormula } from './callsOfFormula'
import { CellsReadList } from './CellsReadList'
import { functionsUsed } from './functionsUsed'
import { PlainPart } from './PlainPart'
import { useNumberText } from './settings/useNumberText'
import { useCalls } from './useCalls'
import { useCellsRead } from './useCellsRead'
import { useDefinitions } from './useDefinitions'
import { usePaneStyles } from './usePaneStyles'
import { useProblemSentence } from './useProblemSentence'
import { useTrail } from './useTrail'
import { useWords } from './useWords'
import { WorkingOfCall } from './WorkingOfCall'

interface WorkingSectionProps {
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

const useStyles = makeStyles({
  subheading: {
    margin: `${tokens.spacingVerticalL} 0 ${tokens.spacingVerticalXXS}`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  action: { marginTop: tokens.spacingVerticalM },
})

/** What is done with a working comes when the section is opened, so that the pane opens without it. */
const WriteWorking = lazy(async () => ({ default: (await import('./WriteWorking')).WriteWorking }))

const TurnPlain = lazy(async () => ({ default: (await import('./TurnPlain')).TurnPlain }))

/** How the number in the selected cell came about: each call of ours step by step, and the formula without the add-in. */
export function WorkingSection({ port, cell }: WorkingSectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const definitions = useDefinitions()
  const headingId = useId()
  const { working: say } = useWords()
  const calls = useCalls(port, cell)
  const formula = cell?.formula ?? ''
  const uses = functionsUsed(formula, definitions).length > 0
  const read = useCellsRead(port, cell)
  const shown = useShownCalls(formula, calls, definitions)
  const { from, back, heading, said, failure, calculate, goBack, goOn } = useTrail(port)
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      {from !== undefined && (
        <span ref={back}>
          <Button size="small" onClick={() => goBack(from)}>
            {say.backTo(from)}
          </Button>
        </span>
      )}
      {said !== '' && (
        <p role="status" className={pane.line}>
          {said}
        </p>
      )}
      <h2 id={headingId} ref={heading} tabIndex={-1} className={pane.heading}>
        {say.heading(cell)}
      </h2>
      {uses ? <code className={pane.formula}>{formula}</code> : <p className={pane.line}>{emptyText(cell, say)}</p>}
      {cell !== undefined && formula === '' && <TypedValue value={cell.value} />}
      {failure !== '' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {failure}
        </p>
      )}
      <CallsOfCell uses={uses} isUnseen={calls === 'unknown'} shown={shown} onCalculate={() => void calculate()} />
      {cell !== undefined && formula !== '' && <ReadCells read={read} onGo={(place) => goOn(cell, place)} />}
      <Suspense fallback={null}>
        {cell !== undefined && calls !== 'unknown' && shown.length > 0 && (
          <div className={styles.action}>
            <WriteWorking
              port={port}
              cell={cell}
              calls={calls}
              onWritten={(sheet) => goOn(cell, { sheet, address: 'A1' }, say.written(sheet))}
            />
          </div>
        )}
        <h3 className={styles.subheading}>{say.withoutTheAddIn}</h3>
        {uses && <PlainPart formula={formula} definitions={definitions} />}
        <TurnPlain definitions={definitions} port={port} />
      </Suspense>
    </section>
  )
}

/** @param calls Of the formula; 'unknown' where the host has not seen its calculation. */
function useShownCalls(formula: string, calls: readonly CallInCell[] | 'unknown', definitions: readonly Definition[]) {
  const problemSentence = useProblemSentence()
  return useMemo(
    () =>
      calls === 'unknown'
        ? []
        : callsOfFormula(formula, calls, definitions).map((call) => ({
            ...call,
            working: workingOf(call.definition, call.args, problemSentence),
          })),
    [calls, formula, definitions, problemSentence],
  )
}

function TypedValue({ value }: { readonly value: ReadCell }) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const numbers = useNumberText()
  if (value === null || value === '') return null
  return (
    <p className={pane.line}>
      {say.holdsValue(typeof value === 'number' ? numbers.plain(value, 'exact') : String(value))}
    </p>
  )
}

interface CallsOfCellProps {
  /** Whether the formula calls functions of ours. */
  readonly uses: boolean
  readonly isUnseen: boolean
  readonly shown: ReturnType<typeof useShownCalls>
  readonly onCalculate: () => void
}

function CallsOfCell({ uses, isUnseen, shown, onCalculate }: CallsOfCellProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  return (
    <>
      {uses && isUnseen && (
        <>
          <p className={pane.line}>{say.unseen}</p>
          <Button size="small" onClick={onCalculate}>
            {say.calculate}
          </Button>
        </>
      )}
      {uses && !isUnseen && shown.length === 0 && <p className={pane.line}>{say.notReached}</p>}
      {shown.map((call, index) => (
        <WorkingOfCall key={index} id={call.definition.id} summary={call.definition.summary} working={call.working} />
      ))}
    </>
  )
}

interface ReadCellsProps {
  readonly read: ReturnType<typeof useCellsRead>
  readonly onGo: (place: CellPlace) => void
}

function ReadCells({ read, onGo }: ReadCellsProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { working: say } = useWords()
  if (read === undefined) return null
  return (
    <>
      <h3 className={styles.subheading}>{say.cellsItReads}</h3>
      {read.length === 0 ? <p className={pane.line}>{say.readsNone}</p> : <CellsReadList cells={read} onGo={onGo} />}
    </>
  )
}

function emptyText(cell: SelectedCell | undefined, say: Words['working']): string {
  if (cell === undefined) return say.selectCell
  return cell.formula === '' ? say.noFormula : say.noneOfOurs
}
