import { Button, mergeClasses, Spinner } from '@fluentui/react-components'
import { useEffect, useRef, type RefObject } from 'react'
import type { Definition } from '../core/definition/definition'
import type { PlainPlan } from '../workbook/plain/plainPlan'
import type { WorkbookPort } from '../workbook/port'
import { PlainAnnouncement } from './PlainAnnouncement'
import { usePaneStyles } from './usePaneStyles'
import { turned, useTurnPlain } from './useTurnPlain'
import { useWords } from './useWords'

interface TurnPlainProps {
  readonly definitions: readonly Definition[]
  readonly port: WorkbookPort
}

/** Turns the selected cells, or a copy of the workbook, into plain formulas and values; it says first what will change. */
export function TurnPlain({ definitions, port }: TurnPlainProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const said = useRef<HTMLDivElement>(null)
  const { progress, announce, change, copy, beginAgain } = useTurnPlain(definitions, port)

  // The button that was pressed is gone by then, and the keyboard would be nowhere.
  useEffect(() => {
    if (progress.is === 'done' || progress.is === 'announced') said.current?.focus()
  }, [progress])

  const isBusy = progress.is === 'busy'
  return (
    <>
      <p className={pane.line}>{say.aboutTurning}</p>
      <div className={pane.buttons}>
        <Button size="small" disabledFocusable={isBusy} onClick={() => void announce('formulas', 'selection')}>
          {say.toFormulas}
        </Button>
        <Button size="small" disabledFocusable={isBusy} onClick={() => void announce('values', 'selection')}>
          {say.toValues}
        </Button>
      </div>
      <p className={pane.line}>{port.saveCopy === undefined ? say.aboutWorkbook : say.aboutCopy}</p>
      <Button
        size="small"
        disabledFocusable={isBusy}
        onClick={() => void (port.saveCopy === undefined ? announce('formulas', 'workbook') : copy())}
      >
        {port.saveCopy === undefined ? say.turnWorkbook : say.makeCopy}
      </Button>
      {progress.is === 'busy' && <Spinner size="tiny" label={progress.with} />}
      {progress.is === 'announced' && (
        <Announced
          said={said}
          plan={progress.plan}
          isAgain={progress.again}
          onChange={() => void change(progress.plan)}
          onDoNot={beginAgain}
        />
      )}
      {progress.is === 'done' && (
        <div ref={said} tabIndex={-1} role="status" className={pane.line}>
          {progress.sentence}
        </div>
      )}
      {progress.is === 'failed' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {progress.sentence}
        </p>
      )}
    </>
  )
}

interface AnnouncedProps {
  readonly said: RefObject<HTMLDivElement | null>
  readonly plan: PlainPlan
  /** Whether cells were changed since the plan was announced first. */
  readonly isAgain: boolean
  readonly onChange: () => void
  readonly onDoNot: () => void
}

/** What will change, and the choice to let it. */
function Announced({ said, plan, isAgain, onChange, onDoNot }: AnnouncedProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  return (
    <>
      <div ref={said} tabIndex={-1} role="status">
        {isAgain && <p className={pane.line}>{say.changedMeanwhile}</p>}
        <PlainAnnouncement plan={plan} />
      </div>
      <div className={pane.buttons}>
        {turned(plan) > 0 && (
          <Button size="small" appearance="primary" onClick={onChange}>
            {say.change(turned(plan))}
          </Button>
        )}
        <Button size="small" onClick={onDoNot}>
          {say.doNotChange}
        </Button>
      </div>
    </>
  )
}
