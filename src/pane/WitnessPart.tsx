import { makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useState } from 'react'
import { isCellError } from '../core/definition/problem'
import type { Finding } from '../workbook/check/finding'
import type { NotJudged, NoTestimony, Testimony } from '../workbook/check/testimony'
import type { OpenBook, ReadCell } from '../workbook/openBook'
import type { WorkbookPort } from '../workbook/port'
import { FindingList } from './FindingList'
import { useNumberText } from './settings/useNumberText'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface WitnessPartProps {
  readonly witness: NonNullable<WorkbookPort['witness']>
  /** What the witness is asked about. */
  readonly book: OpenBook
  readonly onGo: (finding: Finding) => void
}

const useStyles = makeStyles({
  reasons: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalL },
})

/** What a second engine makes of the formulas, once it has come to an end. */
export function WitnessPart({ witness, book, onGo }: WitnessPartProps) {
  const pane = usePaneStyles()
  const say = useWords().check.witness
  const headingId = useId()
  const said = useTestimony(witness, book)
  return (
    <section aria-labelledby={headingId}>
      <h3 id={headingId} className={pane.heading}>
        {say.heading}
      </h3>
      {said === undefined && <Spinner size="tiny" label={say.asking} />}
      <div role="status">
        {typeof said === 'string' && <p className={mergeClasses(pane.line, pane.error)}>{say[said]}</p>}
        {typeof said === 'object' && <p className={pane.line}>{say.said(said.disagreements.length, said.judged)}</p>}
      </div>
      {typeof said === 'object' && <Said testimony={said} onGo={onGo} />}
    </section>
  )
}

/** Undefined until it is there. */
function useTestimony(witness: WitnessPartProps['witness'], book: OpenBook): Testimony | NoTestimony | undefined {
  const [said, setSaid] = useState<Testimony | NoTestimony>()
  useEffect(() => {
    let isAsked = true
    setSaid(undefined)
    void witness(book).then((testimony) => {
      if (isAsked) setSaid(testimony)
    })
    return () => {
      isAsked = false
    }
  }, [witness, book])
  return said
}

function Said({ testimony, onGo }: { readonly testimony: Testimony; readonly onGo: (finding: Finding) => void }) {
  const pane = usePaneStyles()
  const say = useWords().check.witness
  const styles = useStyles()
  const valueText = useValueText()
  const findings = testimony.disagreements.map(({ sheet, address, first, second }): Finding => {
    return { sheet, address, kind: 'warning', sentence: say.differ(valueText(first), valueText(second)) }
  })
  const reasons = Object.entries(testimony.notJudged) as [NotJudged, number][]
  const count = reasons.reduce((sum, [, some]) => sum + some, 0)
  return (
    <>
      {findings.length > 0 && <FindingList findings={findings} onGo={onGo} />}
      {count > 0 && (
        <div className={pane.small}>
          {say.notJudged(count)}
          <ul className={styles.reasons}>
            {reasons.map(([why, some]) => (
              <li key={why}>
                {some}: {say.reasons[why]}
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  )
}

function useValueText(): (value: ReadCell) => string {
  const numbers = useNumberText()
  const say = useWords().check.witness
  return (value) => {
    if (value === null) return say.blank
    if (isCellError(value)) return value.code
    if (typeof value === 'boolean') return String(value).toUpperCase()
    return typeof value === 'number' ? numbers.plain(value, 'short') : `“${value}”`
  }
}
