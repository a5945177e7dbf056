import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useState } from 'react'
import { idsCalled } from '../formula/idsCalled'
import { checkBook } from '../workbook/check/checkBook'
import type { Finding } from '../workbook/check/finding'
import type { WorkbookPort } from '../workbook/port'
import type { Words } from '../wording/words'
import { useDefinitions } from './useDefinitions'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface CheckSectionProps {
  readonly port: WorkbookPort
}

type Result =
  | { readonly is: 'reading' }
  | { readonly is: 'checked'; readonly findings: readonly Finding[]; readonly unseen: boolean }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
  list: { listStyleType: 'none', margin: `${tokens.spacingVerticalS} 0`, padding: 0 },
  finding: {
    padding: `${tokens.spacingVerticalXS} 0`,
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  warning: { color: tokens.colorStatusWarningForeground1 },
  kind: { fontWeight: tokens.fontWeightSemibold },
})

/** What was forgotten or looks wrong in the workbook, each with a way to its cell. */
export function CheckSection({ port }: CheckSectionProps) {
  const pane = usePaneStyles()
  const { check: say, frame } = useWords()
  const headingId = useId()
  const { result, sentence, check, go } = useCheck(port)
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Check}
      </h2>
      {result.is === 'reading' && <Spinner size="tiny" label={frame.readingTheWorkbook} />}
      {result.is === 'failed' && <p className={mergeClasses(pane.line, pane.error)}>{result.sentence}</p>}
      {result.is === 'checked' && (
        <p role="status" className={pane.line}>
          {countText(result.findings, say)}
        </p>
      )}
      {result.is === 'checked' && result.unseen && (
        <>
          <p className={pane.line}>{say.unseen}</p>
          <Button size="small" onClick={() => void check({ calculateFirst: true })}>
            {say.calculateAndCheck}
          </Button>
        </>
      )}
      {result.is === 'checked' && <Findings findings={result.findings} onGo={(finding) => void go(finding)} />}
      {sentence !== '' && (
        <p role="status" className={mergeClasses(pane.line, pane.error)}>
          {sentence}
        </p>
      )}
      {/* It stays while the workbook is read: the keyboard is on it. */}
      <Button size="small" disabledFocusable={result.is === 'reading'} onClick={() => void check()}>
        {say.again}
      </Button>
    </section>
  )
}

/** What was found in the workbook when it was last read, and why a cell could not be shown. */
function useCheck(port: WorkbookPort) {
  const definitions = useDefinitions()
  const { found } = useWords()
  const portSentence = usePortSentence()
  const [result, setResult] = useState<Result>({ is: 'reading' })
  const [sentence, setSentence] = useState('')

  async function check({ calculateFirst = false } = {}) {
    setSentence('')
    setResult({ is: 'reading' })
    try {
      if (calculateFirst) await port.calculate()
      const book = await port.read()
      const unseen = book.sheets.some(({ cells }) =>
        [...cells.values()].some(({ formula, calls }) => calls === undefined && idsCalled(formula).length > 0),
      )
      setResult({ is: 'checked', findings: checkBook(book, definitions, found), unseen })
    } catch (error) {
      setResult({ is: 'failed', sentence: portSentence(error, 'reading') })
    }
  }

  useEffect(() => {
    void check()
    // Once when the section is opened; afterwards on demand, since a large workbook takes a while.
  }, [port])

  async function go(finding: Finding) {
    setSentence('')
    await port.select(finding).catch((error: unknown) => setSentence(portSentence(error)))
  }

  return { result, sentence, check, go }
}

interface FindingsProps {
  readonly findings: readonly Finding[]
  readonly onGo: (finding: Finding) => void
}

function Findings({ findings, onGo }: FindingsProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { check: say, frame } = useWords()
  return (
    <ul className={styles.list}>
      {findings.map((finding, index) => (
        <li key={index} className={styles.finding}>
          <Button size="small" onClick={() => onGo(finding)}>
            {frame.place(finding)}
          </Button>{' '}
          <span className={mergeClasses(styles.kind, finding.kind === 'error' ? pane.error : styles.warning)}>
            {say.kinds[finding.kind]}
          </span>
          <div>{finding.sentence}</div>
        </li>
      ))}
    </ul>
  )
}

function countText(findings: readonly Finding[], say: Words['check']): string {
  const errors = findings.filter(({ kind }) => kind === 'error').length
  return findings.length === 0 ? say.nothing : say.count(errors, findings.length - errors)
}
