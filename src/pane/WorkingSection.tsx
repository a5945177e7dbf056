import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useId, useMemo, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { plainCell } from '../derived/plainCell'
import { workingOf } from '../derived/working'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { callsOfFormula } from './callsOfFormula'
import { placeText } from './cellText'
import { functionsUsed } from './functionsUsed'
import { portSentence } from './portSentence'
import { useCalls } from './useCalls'
import { usePaneStyles } from './usePaneStyles'
import { WorkingOfCall } from './WorkingOfCall'

interface WorkingSectionProps {
  readonly definitions: readonly Definition[]
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

const useStyles = makeStyles({
  subheading: { margin: `${tokens.spacingVerticalL} 0 ${tokens.spacingVerticalXXS}`, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold },
})

/** How the number in the selected cell came about: each call of ours step by step, and the formula without the add-in. */
export function WorkingSection({ definitions, port, cell }: WorkingSectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const headingId = useId()
  const calls = useCalls(port, cell)
  const formula = cell?.formula ?? ''
  const uses = functionsUsed(formula, definitions).length > 0
  const shown = useMemo(() => (calls === 'unknown' ? [] : callsOfFormula(formula, calls, definitions)), [calls, formula, definitions])
  const [failure, setFailure] = useState('')

  async function calculate() {
    setFailure('')
    await port.calculate().catch((error: unknown) => setFailure(portSentence(error)))
  }

  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>Working{cell === undefined ? '' : ` of ${placeText(cell)}`}</h2>
      {uses ? <code className={pane.formula}>{formula}</code> : <p className={pane.line}>{emptyText(cell)}</p>}
      {uses && calls === 'unknown' && (
        <>
          <p className={pane.line}>Its functions have not been called since the workbook was opened or its rows moved.</p>
          <Button size="small" onClick={() => void calculate()}>Calculate the workbook</Button>
          {failure !== '' && <p role="alert" className={mergeClasses(pane.line, pane.error)}>{failure}</p>}
        </>
      )}
      {uses && calls !== 'unknown' && shown.length === 0 && <p className={pane.line}>No function of ours was called here: the formula did not come to it.</p>}
      {shown.map(({ definition, args }, index) => <WorkingOfCall key={index} id={definition.id} summary={definition.summary} working={workingOf(definition, args)} />)}
      {uses && (
        <>
          <h3 className={styles.subheading}>Without the add-in</h3>
          <PlainPart formula={formula} definitions={definitions} />
        </>
      )}
    </section>
  )
}

function emptyText(cell: SelectedCell | undefined): string {
  if (cell === undefined) return 'Select a cell in the sheet.'
  return cell.formula === '' ? 'This cell holds no formula. Select one that uses a STICK function.' : 'This formula uses no STICK function.'
}

function PlainPart({ formula, definitions }: { readonly formula: string; readonly definitions: readonly Definition[] }) {
  const pane = usePaneStyles()
  const plain = plainCell(formula, definitions)
  if ('formula' in plain) return <code className={pane.formula}>{plain.formula}</code>
  return plain.without.map(({ id, reason, check }) => (
    <div key={id}>
      <p className={pane.line}>{id}: {reason}{check === undefined ? '' : ' This formula checks the answer:'}</p>
      {check !== undefined && <code className={pane.formula}>{check}</code>}
    </div>
  ))
}
