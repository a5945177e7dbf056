import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useId, useState } from 'react'
import type { WorkbookPort } from '../workbook/port'
import type { TriedHost } from '../workbook/trial/tryHost'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

type Progress =
  | { readonly is: 'ready' | 'trying' }
  | { readonly is: 'tried'; readonly outcome: TriedHost }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
  report: {
    boxSizing: 'border-box',
    width: '100%',
    maxWidth: '420px',
    minHeight: '120px',
    resize: 'vertical',
    padding: tokens.spacingVerticalS,
    border: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStrokeAccessible}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
  },
})

/** Tries whether this Excel, or this browser, calculates as the examples say, and gives a report to copy. */
export function TryHost({ port }: { readonly port: WorkbookPort }) {
  const pane = usePaneStyles()
  const { settings: say } = useWords()
  const portSentence = usePortSentence()
  const headingId = useId()
  const [progress, setProgress] = useState<Progress>({ is: 'ready' })

  async function start() {
    setProgress({ is: 'trying' })
    try {
      const { tryHost } = await import('../workbook/trial/tryHost')
      setProgress({ is: 'tried', outcome: await tryHost(port) })
    } catch (error) {
      setProgress({ is: 'failed', sentence: portSentence(error) })
    }
  }

  return (
    <section aria-labelledby={headingId}>
      <h3 id={headingId} className={pane.heading}>
        {say.try[port.host]}
      </h3>
      <p className={pane.line}>{say.tryAbout}</p>
      {/* It stays while cells are tried: the keyboard is on it. */}
      <Button size="small" disabledFocusable={progress.is === 'trying'} onClick={() => void start()}>
        {say.try[port.host]}
      </Button>
      {progress.is === 'trying' && <Spinner size="tiny" label={say.trying} />}
      {progress.is === 'failed' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {progress.sentence}
        </p>
      )}
      {progress.is === 'tried' && <Report {...progress.outcome} />}
    </section>
  )
}

function Report({ cases, wrong, report }: TriedHost) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { settings: say } = useWords()
  const [copied, setCopied] = useState<boolean>()
  return (
    <>
      <p role="status" className={mergeClasses(pane.line, wrong.length > 0 && pane.error)}>
        {wrong.length === 0 ? say.allHold(cases) : say.someWrong(wrong.length, cases)}
      </p>
      <textarea readOnly className={styles.report} aria-label={say.report} value={report} rows={8} />
      <div>
        <Button
          size="small"
          onClick={() =>
            void copy(report).then(
              () => setCopied(true),
              () => setCopied(false),
            )
          }
        >
          {say.copyReport}
        </Button>
      </div>
      {copied !== undefined && (
        <p role="status" className={pane.line}>
          {copied ? say.copied : say.notCopied}
        </p>
      )}
    </>
  )
}

/** Some versions of Excel give an add-in no clipboard. */
async function copy(text: string): Promise<void> {
  await navigator.clipboard.writeText(text)
}
