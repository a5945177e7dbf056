import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useRef, useState } from 'react'
import type { Book } from '../workbook/book'
import type { CellPlace, WorkbookPort } from '../workbook/port'
import { blankSeason } from '../workbook/season/blankSeason'
import { demoSeason } from '../workbook/season/demoSeason'
import { lastOrderLine } from '../workbook/season/orderLine'
import { demoCurrency, inCurrency } from '../workbook/season/currency'
import { useSettings } from './settings/useSettings'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface SeasonSectionProps {
  readonly port: WorkbookPort
}

/** The demo's invented figures are in its own currency; an empty season takes that of the settings. */
const seasons = {
  demo: () => demoSeason(),
  empty: (currency: string) => inCurrency(blankSeason(), currency),
} as const

type Season = keyof typeof seasons

type Progress =
  | { readonly is: 'choosing' }
  | { readonly is: 'announced' | 'adding'; readonly season: Season; readonly book: Book }
  | { readonly is: 'added'; readonly sheets: readonly string[] }

const useStyles = makeStyles({
  list: {
    display: 'flex',
    flexWrap: 'wrap',
    gap: tokens.spacingHorizontalXS,
    listStyleType: 'none',
    margin: `${tokens.spacingVerticalS} 0`,
    padding: 0,
  },
})

/** Builds the workbook of a season into the open file. */
export function SeasonSection({ port }: SeasonSectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { season: say, frame } = useWords()
  const portSentence = usePortSentence()
  const { settings } = useSettings()
  const currency = settings.currency || demoCurrency
  const headingId = useId()
  const outcome = useRef<HTMLParagraphElement>(null)
  const [progress, setProgress] = useState<Progress>({ is: 'choosing' })
  const [line, setLine] = useState<CellPlace | 'adding'>()
  const [sentence, setSentence] = useState('')

  // The button that was pressed is gone by then, and the keyboard would be nowhere.
  useEffect(() => {
    if (progress.is === 'added') outcome.current?.focus()
  }, [progress.is])

  function announce(season: Season) {
    setSentence('')
    setProgress({ is: 'announced', season, book: seasons[season](currency) })
  }

  async function add(season: Season, book: Book) {
    setSentence('')
    setProgress({ is: 'adding', season, book })
    try {
      await port.add(book)
      setProgress({ is: 'added', sheets: book.sheets.map(({ name }) => name) })
    } catch (error) {
      setSentence(portSentence(error))
      setProgress({ is: 'announced', season, book })
    }
  }

  async function addLine() {
    setSentence('')
    setLine('adding')
    try {
      const last = lastOrderLine((await port.read()).names)
      if (last === undefined) {
        setSentence(say.noOrderBook)
        setLine(undefined)
        return
      }
      await port.insertRow(last)
      await port.select(last)
      setLine(last)
    } catch (error) {
      setSentence(portSentence(error))
      setLine(undefined)
    }
  }

  async function go(sheet: string) {
    setSentence('')
    await port.select({ sheet, address: 'A1' }).catch((error: unknown) => setSentence(portSentence(error)))
  }

  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Season}
      </h2>
      <p className={pane.line}>
        {say.about} {say.undo[port.host]}
      </p>
      {progress.is === 'added' ? (
        <>
          <p ref={outcome} tabIndex={-1} role="status" className={pane.line}>
            {say.added(progress.sheets.length)}
          </p>
          <ul className={styles.list}>
            {progress.sheets.map((sheet) => (
              <li key={sheet}>
                <Button size="small" onClick={() => void go(sheet)}>
                  {sheet}
                </Button>
              </li>
            ))}
          </ul>
          <Button size="small" onClick={() => setProgress({ is: 'choosing' })}>
            {say.another}
          </Button>
        </>
      ) : (
        <div className={pane.buttons}>
          {(Object.keys(seasons) as Season[]).map((season) => (
            <Button
              key={season}
              appearance={season === 'demo' ? 'primary' : 'secondary'}
              disabledFocusable={progress.is === 'adding'}
              onClick={() => announce(season)}
            >
              {say.build[season]}
            </Button>
          ))}
        </div>
      )}
      {(progress.is === 'announced' || progress.is === 'adding') && (
        <>
          <div role="status">
            <p className={pane.line}>
              {say.announcement(
                progress.book.sheets.map(({ name }) => name),
                progress.book.names.length,
                progress.book.names[0]?.name ?? '',
              )}
            </p>
            <p className={pane.line}>{say.aboutSeason[progress.season]}</p>
            {progress.season === 'empty' && <p className={pane.line}>{say.currency(currency)}</p>}
          </div>
          <div className={pane.buttons}>
            <Button
              appearance="primary"
              disabledFocusable={progress.is === 'adding'}
              onClick={() => void add(progress.season, progress.book)}
            >
              {say.addThese(progress.book.sheets.length)}
            </Button>
            <Button disabledFocusable={progress.is === 'adding'} onClick={() => setProgress({ is: 'choosing' })}>
              {say.doNotAdd}
            </Button>
          </div>
        </>
      )}
      {progress.is === 'adding' && <Spinner size="tiny" label={say.adding} />}
      <h3 className={pane.heading}>{say.orderBook}</h3>
      <p className={pane.line}>{say.aboutLine}</p>
      <div className={pane.buttons}>
        <Button disabledFocusable={progress.is === 'adding' || line === 'adding'} onClick={() => void addLine()}>
          {say.addLine}
        </Button>
      </div>
      {line !== 'adding' && line !== undefined && (
        <p role="status" className={pane.line}>
          {say.lineReady(frame.place(line))}
        </p>
      )}
      {sentence !== '' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {sentence}
        </p>
      )}
    </section>
  )
}
