import { Button, makeStyles, tokens } from '@fluentui/react-components'
import { useId } from 'react'
import { monday, workedBy } from '../workbook/season/tables/answers'
import type { NoWork, WeekWork } from '../workbook/season/weekWork'
import { cautionsFor } from '../wording/cautions'
import { useNumberText } from './settings/useNumberText'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface WorkOfWeekProps {
  readonly work: WeekWork | NoWork
  readonly onGo: (sheet: string) => void
}

const useStyles = makeStyles({
  title: { margin: `${tokens.spacingVerticalS} 0 0`, fontSize: tokens.fontSizeBase300 },
  list: { margin: 0, paddingInlineStart: tokens.spacingHorizontalL },
  item: { margin: `${tokens.spacingVerticalXS} 0` },
})

/** What is to be done this week, for a hand that holds a phone: the sheet Monday, read down instead of across. */
export function WorkOfWeek({ work, onGo }: WorkOfWeekProps) {
  const pane = usePaneStyles()
  const { work: say } = useWords().season
  const headingId = useId()
  return (
    <section aria-labelledby={headingId}>
      <h3 id={headingId} className={pane.heading}>
        {'lacks' in work ? say.noWork : say.heading(work.week)}
      </h3>
      {'lacks' in work ? <p className={pane.line}>{say.lacks(work.lacks)}</p> : <Work work={work} />}
      <div className={pane.buttons}>
        <Button size="small" onClick={() => onGo(monday.sheet)}>
          {say.another}
        </Button>
      </div>
    </section>
  )
}

function Work({ work }: { readonly work: WeekWork }) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const numbers = useNumberText()
  const { season, cautions } = useWords()
  const say = season.work
  const count = (value: number) => numbers.plain(value, 'short')
  return (
    <>
      <Listed
        title={say.sticking}
        items={work.sticking.map(({ line, species, cuttings, pieces, container, medium }) => ({
          what: `${line} ${species}`,
          more: [
            `${count(cuttings)} ${say.cuttings}`,
            say.into(count(pieces), container),
            ...(medium === '' ? [] : [say.filledWith(medium)]),
          ],
        }))}
      />
      <p className={pane.line}>
        {say.summary(numbers.label(work.litres), numbers.label(work.hours), count(work.deliver))}
      </p>
      <p className={pane.line}>{work.note}</p>
      <Listed
        title={say.standing}
        items={work.standing.map(({ line, species, pieces, container, until }) => ({
          what: `${line} ${species}`,
          more: [`${count(pieces)} × ${container}`, say.until(until)],
        }))}
      />
      {work.mayGoOn && <p className={pane.line}>{say.mayGoOn}</p>}
      <details>
        <summary className={pane.line}>{say.cautions}</summary>
        <ul className={styles.list}>
          {cautionsFor(workedBy, cautions).map((sentence) => (
            <li key={sentence} className={styles.item}>
              {sentence}
            </li>
          ))}
        </ul>
      </details>
    </>
  )
}

interface ListedProps {
  readonly title: string
  readonly items: readonly { readonly what: string; readonly more: readonly string[] }[]
}

function Listed({ title, items }: ListedProps) {
  const styles = useStyles()
  const { season } = useWords()
  return (
    <>
      <h4 className={styles.title}>{title}</h4>
      {items.length === 0 && <p>{season.work.nothing}</p>}
      <ul className={styles.list}>
        {items.map(({ what, more }, place) => (
          <li key={place} className={styles.item}>
            <strong>{what}</strong>: {more.join(', ')}
          </li>
        ))}
      </ul>
    </>
  )
}
