import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useRef } from 'react'
import type { WorkbookPort } from '../workbook/port'
import { AddRows } from './AddRows'
import { SeasonToday } from './SeasonToday'
import { usePaneStyles } from './usePaneStyles'
import { seasons, useSeason, type Progress, type Season } from './useSeason'
import { useWords } from './useWords'

interface SeasonSectionProps {
  readonly port: WorkbookPort
}

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
  const pane = usePaneStyles()
  const { season: say, frame } = useWords()
  const headingId = useId()
  const { currency, progress, added, sentence, announce, add, addRows, go, beginAgain } = useSeason(port)
  const isAdding = progress.is === 'adding'
  const today = <SeasonToday port={port} isAdding={isAdding} onGo={(sheet) => void go(sheet)} />
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Season}
      </h2>
      {/* What is looked at each day comes first, but for what was just asked for. */}
      {progress.is === 'choosing' && today}
      <p className={pane.line}>
        {say.about} {say.undo[port.host]}
      </p>
      {progress.is === 'added' ? (
        <AddedSheets sheets={progress.sheets} onGo={(sheet) => void go(sheet)} onAnother={beginAgain} />
      ) : (
        <SeasonChoice isAdding={isAdding} onChoose={announce} />
      )}
      {(progress.is === 'announced' || progress.is === 'adding') && (
        <Announcement
          progress={progress}
          currency={currency}
          onAdd={() => void add(progress.season, progress.book)}
          onDoNot={beginAgain}
        />
      )}
      {isAdding && <Spinner size="tiny" label={say.adding} />}
      {progress.is !== 'choosing' && today}
      <AddRows isBusy={isAdding || added === 'adding'} onAdd={(table, count) => void addRows(table, count)} />
      {added !== 'adding' && added !== undefined && (
        <p role="status" className={pane.line}>
          {say.rowsReady(frame.place(added))}
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

interface SeasonChoiceProps {
  readonly isAdding: boolean
  readonly onChoose: (season: Season) => void
}

function SeasonChoice({ isAdding, onChoose }: SeasonChoiceProps) {
  const pane = usePaneStyles()
  const { season: say } = useWords()
  return (
    <div className={pane.buttons}>
      {(Object.keys(seasons) as Season[]).map((season) => (
        <Button
          key={season}
          appearance={season === 'demo' ? 'primary' : 'secondary'}
          disabledFocusable={isAdding}
          onClick={() => onChoose(season)}
        >
          {say.build[season]}
        </Button>
      ))}
    </div>
  )
}

interface AnnouncementProps {
  readonly progress: Extract<Progress, { readonly is: 'announced' | 'adding' }>
  readonly currency: string
  readonly onAdd: () => void
  readonly onDoNot: () => void
}

/** What will be added, before it is. */
function Announcement({ progress: { is, season, book }, currency, onAdd, onDoNot }: AnnouncementProps) {
  const pane = usePaneStyles()
  const { season: say } = useWords()
  return (
    <>
      <div role="status">
        <p className={pane.line}>
          {say.announcement(
            book.sheets.map(({ name }) => name),
            book.names.length,
            book.names[0]?.name ?? '',
          )}
        </p>
        <p className={pane.line}>{say.aboutSeason[season]}</p>
        {season === 'empty' && <p className={pane.line}>{say.currency(currency)}</p>}
      </div>
      <div className={pane.buttons}>
        <Button appearance="primary" disabledFocusable={is === 'adding'} onClick={onAdd}>
          {say.addThese(book.sheets.length)}
        </Button>
        <Button disabledFocusable={is === 'adding'} onClick={onDoNot}>
          {say.doNotAdd}
        </Button>
      </div>
    </>
  )
}

interface AddedSheetsProps {
  readonly sheets: readonly string[]
  readonly onGo: (sheet: string) => void
  readonly onAnother: () => void
}

function AddedSheets({ sheets, onGo, onAnother }: AddedSheetsProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { season: say } = useWords()
  const outcome = useRef<HTMLParagraphElement>(null)

  // The button that was pressed is gone by then, and the keyboard would be nowhere.
  useEffect(() => {
    outcome.current?.focus()
  }, [])

  return (
    <>
      <p ref={outcome} tabIndex={-1} role="status" className={pane.line}>
        {say.added(sheets.length)}
      </p>
      <ul className={styles.list}>
        {sheets.map((sheet) => (
          <li key={sheet}>
            <Button size="small" onClick={() => onGo(sheet)}>
              {sheet}
            </Button>
          </li>
        ))}
      </ul>
      <Button size="small" onClick={onAnother}>
        {say.another}
      </Button>
    </>
  )
}
