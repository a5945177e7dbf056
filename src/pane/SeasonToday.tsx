import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useEffect, useId, useState } from 'react'
import type { WorkbookPort } from '../workbook/port'
import { type Answer, answerOf } from '../workbook/season/answer'
import { chartOfWeeks } from '../workbook/season/chartOfWeeks'
import { progressOf, type Progress, type SheetProgress } from '../workbook/season/progress'
import { weeksOf, type Weeks } from '../workbook/season/weeks'
import { weekWorkOf, type NoWork, type WeekWork } from '../workbook/season/weekWork'
import { WeeksChart } from './charts/WeeksChart'
import { useNumberText } from './settings/useNumberText'
import { useMayBeOld } from './useMayBeOld'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'
import { WorkOfWeek } from './WorkOfWeek'

interface SeasonTodayProps {
  readonly port: WorkbookPort
  /** True while a season is being added: what is read before would be half of it. */
  readonly isAdding: boolean
  readonly onGo: (sheet: string) => void
}

const useStyles = makeStyles({
  list: {
    display: 'grid',
    gridTemplateColumns: 'auto 1fr',
    alignItems: 'baseline',
    gap: `0 ${tokens.spacingHorizontalS}`,
    listStyleType: 'none',
    margin: `${tokens.spacingVerticalS} 0`,
    padding: 0,
  },
  line: { display: 'contents' },
  value: { margin: 0, fontWeight: tokens.fontWeightSemibold, whiteSpace: 'nowrap' },
  sheet: { justifyContent: 'start' },
})

/** What the season of the open workbook says now: how far it is typed, and what does not fit, week by week. */
export function SeasonToday({ port, isAdding, onGo }: SeasonTodayProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { season: say, compare, frame } = useWords()
  const headingId = useId()
  const { progress, answer, work, weeks, isOld, failure, read } = useToday(port, isAdding)
  const { said, put } = usePutChart(port)
  if (progress === undefined) return null
  return (
    <section aria-labelledby={headingId}>
      <h3 id={headingId} className={pane.heading}>
        {say.today}
      </h3>
      <p className={pane.line}>{progress.season}</p>
      {answer !== undefined && <AnswerList answer={answer} />}
      <ul className={styles.list}>
        {progress.sheets.map((one) => (
          <li key={one.sheet} className={styles.line}>
            <Button size="small" appearance="subtle" className={styles.sheet} onClick={() => onGo(one.sheet)}>
              {one.sheet}
            </Button>
            <span>{progressText(one, say)}</span>
          </li>
        ))}
      </ul>
      {work !== undefined && <WorkOfWeek work={work} onGo={onGo} />}
      {weeks.map((one) => (
        <div key={one.of}>
          <WeeksChart weeks={one} />
          {port.addChart !== undefined && (
            <Button
              size="small"
              onClick={() => put(one.of)}
              aria-label={say.weeks.putChartOf(say.weeks.titles[one.of])}
            >
              {compare.putChart}
            </Button>
          )}
        </div>
      ))}
      {said !== undefined && (
        <p role={said.failed ? 'alert' : 'status'} className={mergeClasses(pane.line, said.failed && pane.error)}>
          {said.sentence}
        </p>
      )}
      {isOld && <p className={pane.line}>{frame.mayBeOld}</p>}
      {failure !== '' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {failure}
        </p>
      )}
      <div className={pane.buttons}>
        <Button size="small" onClick={read}>
          {say.readAgain}
        </Button>
      </div>
    </section>
  )
}

function AnswerList({ answer }: { readonly answer: Answer }) {
  const styles = useStyles()
  const { season } = useWords()
  const numbers = useNumberText()
  const say = season.answer
  const count = (value: number) => numbers.plain(Math.round(value), 'short')
  const money = (value: number, decimals: number) => `${answer.currency} ${numbers.fixed(value, decimals)}`.trim()
  const lines = [
    [say.liners, count(answer.liners)],
    [say.expected, count(answer.expected)],
    [say.buying, money(answer.buying, 2)],
    [say.rooting, money(answer.rooting, 2)],
    ...(answer.liners > 0 ? [[say.perLiner, money(answer.rooting / answer.liners, 4)]] : []),
  ]
  return (
    <dl className={styles.list}>
      {lines.map(([what, value]) => (
        <div key={what} className={styles.line}>
          <dt>{what}</dt>
          <dd className={styles.value}>{value}</dd>
        </div>
      ))}
    </dl>
  )
}

/** Puts the chart of a measure into the calendar's sheet, where the host's sheets hold charts. */
function usePutChart(port: WorkbookPort) {
  const { compare } = useWords()
  const portSentence = usePortSentence()
  const [said, setSaid] = useState<{ readonly sentence: string; readonly failed: boolean }>()
  const put = (of: Weeks['of']) => {
    void port
      .names()
      .then(async (names) => {
        const chart = chartOfWeeks(of, names)
        if (chart === undefined) return
        await port.addChart?.(chart)
        setSaid({ sentence: compare.chartPut(chart.sheet, chart.free), failed: false })
      })
      .catch((error: unknown) => setSaid({ sentence: portSentence(error), failed: true }))
  }
  return { said, put }
}

/** Read when the section is shown, after a season was added, and when it is asked for; after a change it may be old. */
function useToday(port: WorkbookPort, isAdding: boolean) {
  const [progress, setProgress] = useState<Progress>()
  const [answer, setAnswer] = useState<Answer>()
  const [work, setWork] = useState<WeekWork | NoWork>()
  const [weeks, setWeeks] = useState<readonly Weeks[]>([])
  const [asked, setAsked] = useState(0)
  const [failure, setFailure] = useState('')
  const portSentence = usePortSentence()
  const { isOld, beginReading } = useMayBeOld(port)
  useEffect(() => {
    if (isAdding) return undefined
    let isWanted = true
    beginReading()
    Promise.all([progressOf(port), answerOf(port), weekWorkOf(port), weeksOf(port)]).then(
      ([found, comesTo, ofWeek, drawn]) => {
        if (!isWanted) return
        setProgress(found)
        setAnswer(comesTo)
        setWork(ofWeek)
        setWeeks(drawn ?? [])
        setFailure('')
      },
      (error: unknown) => {
        if (isWanted) setFailure(portSentence(error))
      },
    )
    return () => {
      isWanted = false
    }
  }, [port, isAdding, asked])
  return { progress, answer, work, weeks, isOld, failure, read: () => setAsked((times) => times + 1) }
}

function progressText({ rows, lacks }: SheetProgress, say: ReturnType<typeof useWords>['season']): string {
  if (rows === undefined) return lacks === '' ? say.complete : lacks
  if (rows.begun > 0) return say.rowsLack(rows.begun, lacks)
  return rows.ready === 0 ? say.noRows : say.rowsComplete(rows.ready)
}
