import { Button, Link, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useId, useState } from 'react'
import { bibliography } from '../sources/bibliography'
import { cautionSentences } from '../wording/cautions'
import { freeName } from '../workbook/freeName'
import { materials, waysOfRooting, type Band, type LibraryEntry } from '../workbook/library/library'
import { startingRows } from '../workbook/library/startingRows'
import type { WorkbookPort } from '../workbook/port'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface LibrarySectionProps {
  readonly port: WorkbookPort
  /** Opens a function of the catalogue. */
  readonly onOpenFunction: (id: string) => void
}

const useStyles = makeStyles({
  group: {
    margin: `${tokens.spacingVerticalL} 0 0`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  name: {
    margin: `${tokens.spacingVerticalM} 0 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  text: {
    margin: `${tokens.spacingVerticalXXS} 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  bands: {
    margin: `${tokens.spacingVerticalXXS} 0`,
    paddingLeft: tokens.spacingHorizontalL,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  functions: {
    display: 'flex',
    flexWrap: 'wrap',
    columnGap: tokens.spacingHorizontalM,
    margin: `${tokens.spacingVerticalXXS} 0`,
  },
  link: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    textDecorationLine: 'underline',
  },
  caution: {
    margin: `${tokens.spacingVerticalXS} 0`,
    paddingLeft: tokens.spacingHorizontalS,
    borderLeft: `3px solid ${tokens.colorStatusWarningBorderActive}`,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
})

/** What to know of each way of rooting and each material before one types figures of one's own. */
export function LibrarySection({ port, onOpenFunction }: LibrarySectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const headingId = useId()
  const { library: say, frame } = useWords()
  const entry = (one: LibraryEntry) => <Entry key={one.name} entry={one} port={port} onOpenFunction={onOpenFunction} />
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Library}
      </h2>
      <p className={styles.text}>{say.about}</p>
      <h3 className={styles.group}>{say.sixWays}</h3>
      {waysOfRooting.map(entry)}
      <h3 className={styles.group}>{say.materials}</h3>
      {materials.map(entry)}
    </section>
  )
}

type Adding =
  | { readonly is: 'adding' }
  | { readonly is: 'added'; readonly sheet: string }
  | { readonly is: 'failed'; readonly sentence: string }

function Entry({ entry, port, onOpenFunction }: { readonly entry: LibraryEntry } & LibrarySectionProps) {
  const { bands, functions, cautions } = entry
  const styles = useStyles()
  const pane = usePaneStyles()
  const { library: say, frame, cautions: cautionWords } = useWords()
  const portSentence = usePortSentence()
  const name = say.ofEntry(entry.name)
  const [state, setState] = useState<Adding>()

  async function attempt(action: () => Promise<Adding | undefined>) {
    try {
      setState(await action())
    } catch (error) {
      setState({ is: 'failed', sentence: portSentence(error) })
    }
  }

  /** One sheet for each press, under a name that none has yet. */
  function add() {
    if (state?.is === 'adding') return
    setState({ is: 'adding' })
    void attempt(async () => {
      const sheet = freeName(
        entry.name,
        (await port.read()).sheets.map((one) => one.name),
      )
      await port.add(startingRows(entry, sheet))
      return { is: 'added', sheet }
    })
  }

  function go(sheet: string) {
    void attempt(async () => {
      await port.select({ sheet, address: 'A1' })
      return { is: 'added', sheet }
    })
  }

  return (
    <article>
      <h4 className={styles.name}>{name}</h4>
      <p className={styles.text}>{say.ofEntry(entry.text)}</p>
      {bands.length > 0 && (
        <ul className={styles.bands}>
          {bands.map((band) => (
            <li key={band.of}>
              {say.ofEntry(band.of)}: {say.ofEntry(band.range)}
              <span className={pane.small}>{sourceText(band, say.noSource)}</span>
            </li>
          ))}
        </ul>
      )}
      <p className={styles.functions}>
        {functions.map((id) => (
          <Link key={id} as="button" className={styles.link} onClick={() => onOpenFunction(id)}>
            {id}
          </Link>
        ))}
      </p>
      <Button size="small" disabledFocusable={state?.is === 'adding'} aria-label={say.putEntry(name)} onClick={add}>
        {say.putIntoASheet}
      </Button>
      {state?.is === 'adding' && <Spinner size="tiny" label={say.adding} />}
      <div role="status">
        {state?.is === 'added' && <p className={pane.line}>{say.added(state.sheet)}</p>}
        {state?.is === 'failed' && <p className={mergeClasses(pane.line, pane.error)}>{state.sentence}</p>}
      </div>
      {state?.is === 'added' && (
        <Button size="small" onClick={() => go(state.sheet)}>
          {say.goTo(state.sheet)}
        </Button>
      )}
      <p className={styles.caution}>
        <strong>{frame.caution}</strong> {cautionSentences(cautions, cautionWords).join(' ')}
      </p>
    </article>
  )
}

function sourceText({ source }: Band, noSource: string): string {
  return source === undefined ? noSource : `${bibliography[source].title}. ${bibliography[source].detail}.`
}
