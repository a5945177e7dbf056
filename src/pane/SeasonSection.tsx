import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useRef, useState } from 'react'
import type { Book } from '../workbook/book'
import type { CellPlace, WorkbookPort } from '../workbook/port'
import { blankSeason } from '../workbook/season/blankSeason'
import { demoSeason } from '../workbook/season/demoSeason'
import { lastOrderLine } from '../workbook/season/orderLine'
import { placeText } from './cellText'
import { portSentence } from './portSentence'
import { usePaneStyles } from './usePaneStyles'

interface SeasonSectionProps {
  readonly port: WorkbookPort
}

interface Season {
  readonly label: string
  readonly about: string
  readonly book: () => Book
}

const seasons: readonly Season[] = [
  { label: 'Build the demo season', about: 'All figures in it are invented, to show how the sheets work together.', book: demoSeason },
  { label: 'Build an empty season', about: 'The cells in boxes wait for your figures. What is read from them fills in as you type.', book: blankSeason },
]

type Stage =
  | { readonly is: 'choosing' }
  | { readonly is: 'announced' | 'adding'; readonly season: Season; readonly book: Book }
  | { readonly is: 'added'; readonly sheets: readonly string[] }

const useStyles = makeStyles({
  buttons: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalS, margin: `${tokens.spacingVerticalS} 0` },
  list: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalXS, listStyleType: 'none', margin: `${tokens.spacingVerticalS} 0`, padding: 0 },
})

/** Builds the workbook of a season into the open file. */
export function SeasonSection({ port }: SeasonSectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const headingId = useId()
  const outcome = useRef<HTMLParagraphElement>(null)
  const [stage, setStage] = useState<Stage>({ is: 'choosing' })
  const [line, setLine] = useState<CellPlace | 'adding'>()
  const [sentence, setSentence] = useState('')

  // The button that was pressed is gone by then, and the keyboard would be nowhere.
  useEffect(() => {
    if (stage.is === 'added') outcome.current?.focus()
  }, [stage.is])

  function announce(season: Season) {
    setSentence('')
    setStage({ is: 'announced', season, book: season.book() })
  }

  async function add(season: Season, book: Book) {
    setSentence('')
    setStage({ is: 'adding', season, book })
    try {
      await port.add(book)
      setStage({ is: 'added', sheets: book.sheets.map(({ name }) => name) })
    } catch (error) {
      setSentence(portSentence(error))
      setStage({ is: 'announced', season, book })
    }
  }

  async function addLine() {
    setSentence('')
    setLine('adding')
    try {
      const last = lastOrderLine((await port.read()).names)
      if (last === undefined) {
        setSentence('This workbook has no order book yet: build a season first.')
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
      <h2 id={headingId} className={pane.heading}>Season</h2>
      <p className={pane.line}>
        Builds a season into the open workbook: order book, ways of rooting, prices, buying list, cost per liner, quotes and review, each reading the others.
        {' '}Your own sheets stay as they are, and {port.host === 'workbench' ? 'one undo takes' : 'undo, or deleting the new sheets, takes'} the season away again.
      </p>
      {stage.is === 'added'
        ? (
          <>
            <p ref={outcome} tabIndex={-1} role="status" className={pane.line}>Added {stage.sheets.length} sheets. Type into the cells in boxes; all else follows.</p>
            <ul className={styles.list}>
              {stage.sheets.map((sheet) => <li key={sheet}><Button size="small" onClick={() => void go(sheet)}>{sheet}</Button></li>)}
            </ul>
            <Button size="small" onClick={() => setStage({ is: 'choosing' })}>Build another season</Button>
          </>
        )
        : (
          <div className={styles.buttons}>
            {seasons.map((season, index) => (
              <Button key={season.label} appearance={index === 0 ? 'primary' : 'secondary'} disabledFocusable={stage.is === 'adding'} onClick={() => announce(season)}>{season.label}</Button>
            ))}
          </div>
        )}
      {(stage.is === 'announced' || stage.is === 'adding') && (
        <>
          <div role="status">
            <p className={pane.line}>{announcement(stage.book)}</p>
            <p className={pane.line}>{stage.season.about}</p>
          </div>
          <div className={styles.buttons}>
            <Button appearance="primary" disabledFocusable={stage.is === 'adding'} onClick={() => void add(stage.season, stage.book)}>Add these {stage.book.sheets.length} sheets</Button>
            <Button disabledFocusable={stage.is === 'adding'} onClick={() => setStage({ is: 'choosing' })}>Do not add</Button>
          </div>
        </>
      )}
      {stage.is === 'adding' && <Spinner size="tiny" label="Adding the sheets" />}
      <h3 className={pane.heading}>Order book</h3>
      <p className={pane.line}>A further line goes above the last one, so that totals, names and all other sheets count it.</p>
      <div className={styles.buttons}>
        <Button disabledFocusable={stage.is === 'adding' || line === 'adding'} onClick={() => void addLine()}>Add an order line</Button>
      </div>
      {line !== 'adding' && line !== undefined && <p role="status" className={pane.line}>The line is ready at {placeText(line)}: type its species, liners, way of rooting, weeks and rates.</p>}
      {sentence !== '' && <p role="alert" className={mergeClasses(pane.line, pane.error)}>{sentence}</p>}
    </section>
  )
}

function announcement({ sheets, names }: Book): string {
  const called = sheets.map(({ name }) => name)
  return `This adds ${called.length} sheets after your own: ${called.slice(0, -1).join(', ')} and ${called.at(-1)}. They bring ${names.length} names for cells, such as ${names[0]?.name}.`
}
