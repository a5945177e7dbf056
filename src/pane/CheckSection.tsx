import { Button, mergeClasses, Spinner } from '@fluentui/react-components'
import { useEffect, useId, useState } from 'react'
import { idsCalled } from '../formula/idsCalled'
import { checkBook } from '../workbook/check/checkBook'
import type { Finding } from '../workbook/check/finding'
import type { OpenBook } from '../workbook/openBook'
import type { WorkbookPort } from '../workbook/port'
import type { Words } from '../wording/words'
import { FindingList } from './FindingList'
import { useDefinitions } from './useDefinitions'
import { useMayBeOld } from './useMayBeOld'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'
import { WitnessPart } from './WitnessPart'

interface CheckSectionProps {
  readonly port: WorkbookPort
}

type Result =
  | { readonly is: 'reading' }
  | { readonly is: 'checked'; readonly book: OpenBook; readonly findings: readonly Finding[]; readonly unseen: boolean }
  | { readonly is: 'failed'; readonly sentence: string }

/** What was forgotten or looks wrong in the workbook, each with a way to its cell. */
export function CheckSection({ port }: CheckSectionProps) {
  const pane = usePaneStyles()
  const { check: say, frame } = useWords()
  const headingId = useId()
  const { result, isOld, sentence, check, go } = useCheck(port)
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
      {result.is === 'checked' && <FindingList findings={result.findings} onGo={(finding) => void go(finding)} />}
      {result.is === 'checked' && port.witness && hasFormulas(result.book) && (
        <WitnessPart witness={port.witness} book={result.book} onGo={(finding) => void go(finding)} />
      )}
      {result.is === 'checked' && isOld && <p className={pane.line}>{frame.mayBeOld}</p>}
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
  const { isOld, beginReading } = useMayBeOld(port)

  async function check({ calculateFirst = false } = {}) {
    setSentence('')
    setResult({ is: 'reading' })
    try {
      if (calculateFirst) await port.calculate()
      beginReading()
      const book = await port.read()
      const unseen = book.sheets.some(({ cells }) =>
        [...cells.values()].some(({ formula, calls }) => calls === undefined && idsCalled(formula).length > 0),
      )
      setResult({ is: 'checked', book, findings: checkBook(book, definitions, found), unseen })
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

  return { result, isOld, sentence, check, go }
}

function hasFormulas({ sheets }: OpenBook): boolean {
  return sheets.some(({ cells }) => [...cells.values()].some(({ formula }) => formula !== ''))
}

function countText(findings: readonly Finding[], say: Words['check']): string {
  const errors = findings.filter(({ kind }) => kind === 'error').length
  return findings.length === 0 ? say.nothing : say.count(errors, findings.length - errors)
}
