import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { lazy, Suspense, useEffect, useId, useMemo, useRef, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { plainCell } from '../derived/plainCell'
import { workingOf } from '../derived/working'
import type { Words } from '../wording/words'
import type { CellPlace, SelectedCell, WorkbookPort } from '../workbook/port'
import { callsOfFormula } from './callsOfFormula'
import { CellsReadList } from './CellsReadList'
import { functionsUsed } from './functionsUsed'
import { useNumberText } from './settings/useNumberText'
import { useCalls } from './useCalls'
import { useCellsRead } from './useCellsRead'
import { useDefinitions } from './useDefinitions'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useProblemSentence } from './useProblemSentence'
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
  const calls = useCalls(port, cell)
  const formula = cell?.formula ?? ''
  const uses = functionsUsed(formula, definitions).length > 0
  const portSentence = usePortSentence()
  const problemSentence = useProblemSentence()
  const shown = useMemo(
    () =>
      calls === 'unknown'
        ? []
        : callsOfFormula(formula, calls, definitions).map((call) => ({
            ...call,
            working: workingOf(call.definition, call.args, problemSentence),
          })),
    [calls, formula, definitions, problemSentence],
  )
  const read = useCellsRead(port, cell)
  const { working: say } = useWords()
  const numbers = useNumberText()
  /** The cells from which one went on to a cell that they read, the last one at the end. */
  const [trail, setTrail] = useState<readonly CellPlace[]>([])
  const back = useRef<HTMLSpanElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const [written, setWritten] = useState('')
  const [failure, setFailure] = useState('')

  async function calculate() {
    setFailure('')
    await port.calculate().catch((error: unknown) => setFailure(portSentence(error)))
  }

  async function go(place: CellPlace, nextTrail: readonly CellPlace[], said = '') {
    setFailure('')
    setWritten(said)
    try {
      await port.select(place)
      setTrail(nextTrail)
    } catch (error) {
      setFailure(portSentence(error))
    }
  }

  // The button that was pressed belongs to the cell before, and is gone by then.
  const trailBefore = useRef(trail)
  useEffect(() => {
    if (trail !== trailBefore.current) (back.current?.querySelector('button') ?? heading.current)?.focus()
    trailBefore.current = trail
  }, [trail])

  const from = trail.at(-1)
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      {from !== undefined && (
        <span ref={back}>
          <Button size="small" onClick={() => void go(from, trail.slice(0, -1))}>
            {say.backTo(from)}
          </Button>
        </span>
      )}
      {written !== '' && (
        <p role="status" className={pane.line}>
          {written}
        </p>
      )}
      <h2 id={headingId} ref={heading} tabIndex={-1} className={pane.heading}>
        {say.heading(cell)}
      </h2>
      {uses ? <code className={pane.formula}>{formula}</code> : <p className={pane.line}>{emptyText(cell, say)}</p>}
      {cell !== undefined && formula === '' && cell.value !== null && cell.value !== '' && (
        <p className={pane.line}>
          {say.holdsValue(typeof cell.value === 'number' ? numbers.plain(cell.value, 'exact') : String(cell.value))}
        </p>
      )}
      {failure !== '' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {failure}
        </p>
      )}
      {uses && calls === 'unknown' && (
        <>
          <p className={pane.line}>{say.unseen}</p>
          <Button size="small" onClick={() => void calculate()}>
            {say.calculate}
          </Button>
        </>
      )}
      {uses && calls !== 'unknown' && shown.length === 0 && <p className={pane.line}>{say.notReached}</p>}
      {shown.map((call, index) => (
        <WorkingOfCall key={index} id={call.definition.id} summary={call.definition.summary} working={call.working} />
      ))}
      {cell !== undefined && formula !== '' && read !== undefined && (
        <>
          <h3 className={styles.subheading}>{say.cellsItReads}</h3>
          {read.length === 0 ? (
            <p className={pane.line}>{say.readsNone}</p>
          ) : (
            <CellsReadList
              cells={read}
              onGo={(place) => void go(place, [...trail, { sheet: cell.sheet, address: cell.address }])}
            />
          )}
        </>
      )}
      <Suspense fallback={null}>
        {cell !== undefined && calls !== 'unknown' && shown.length > 0 && (
          <div className={styles.action}>
            <WriteWorking
              port={port}
              cell={cell}
              calls={calls}
              onWritten={(sheet) =>
                void go(
                  { sheet, address: 'A1' },
                  [...trail, { sheet: cell.sheet, address: cell.address }],
                  say.written(sheet),
                )
              }
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

function emptyText(cell: SelectedCell | undefined, say: Words['working']): string {
  if (cell === undefined) return say.selectCell
  return cell.formula === '' ? say.noFormula : say.noneOfOurs
}

function PlainPart({
  formula,
  definitions,
}: {
  readonly formula: string
  readonly definitions: readonly Definition[]
}) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const plain = plainCell(formula, definitions)
  if ('formula' in plain) return <code className={pane.formula}>{plain.formula}</code>
  return plain.without.map(({ id, reason, check }) => (
    <div key={id}>
      <p className={pane.line}>
        {say.because({ kind: 'function', id, ...(reason !== undefined && { reason }) })}
        {check !== undefined && ` ${say.checkFollows}`}
      </p>
      {check !== undefined && <code className={pane.formula}>{check}</code>}
    </div>
  ))
}
