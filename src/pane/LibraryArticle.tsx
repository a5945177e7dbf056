import { Button, Link, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useState } from 'react'
import { bibliography } from '../sources/bibliography'
import { cautionSentences } from '../wording/cautions'
import { freeName } from '../workbook/freeName'
import type { Band, LibraryEntry } from '../workbook/library/library'
import { startingRows } from '../workbook/library/startingRows'
import type { WorkbookPort } from '../workbook/port'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface LibraryArticleProps {
  readonly entry: LibraryEntry
  readonly port: WorkbookPort
  /** Opens a function of the catalogue. */
  readonly onOpenFunction: (id: string) => void
}

type Adding =
  | { readonly is: 'adding' }
  | { readonly is: 'added'; readonly sheet: string }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
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

/** What to know of one rooting method or material, and its rows for a sheet. */
export function LibraryArticle({ entry, port, onOpenFunction }: LibraryArticleProps) {
  const styles = useStyles()
  const { library: say, frame, cautions: cautionWords } = useWords()
  return (
    <article>
      <h4 className={styles.name}>{say.ofEntry(entry.name)}</h4>
      <p className={styles.text}>{say.ofEntry(entry.text)}</p>
      {entry.bands.length > 0 && <Bands bands={entry.bands} />}
      <p className={styles.functions}>
        {entry.functions.map((id) => (
          <Link key={id} as="button" className={styles.link} onClick={() => onOpenFunction(id)}>
            {id}
          </Link>
        ))}
      </p>
      <StartingRows entry={entry} port={port} />
      <p className={styles.caution}>
        <strong>{frame.caution}</strong> {cautionSentences(entry.cautions, cautionWords).join(' ')}
      </p>
    </article>
  )
}

/** Between which figures something lies, each with its source. */
function Bands({ bands }: { readonly bands: readonly Band[] }) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { library: say } = useWords()
  return (
    <ul className={styles.bands}>
      {bands.map((band) => (
        <li key={band.of}>
          {say.ofEntry(band.of)}: {say.ofEntry(band.range)}
          <span className={pane.small}>{sourceText(band, say.noSource)}</span>
        </li>
      ))}
    </ul>
  )
}

/** Puts the rows of an entry into a sheet of their own, and leads to it. */
function StartingRows({ entry, port }: { readonly entry: LibraryEntry; readonly port: WorkbookPort }) {
  const pane = usePaneStyles()
  const { library: say } = useWords()
  const { state, add, go } = useStartingRows(entry, port)
  return (
    <>
      <Button
        size="small"
        disabledFocusable={state?.is === 'adding'}
        aria-label={say.putEntry(say.ofEntry(entry.name))}
        onClick={add}
      >
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
    </>
  )
}

function useStartingRows(entry: LibraryEntry, port: WorkbookPort) {
  const portSentence = usePortSentence()
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

  return { state, add, go }
}

function sourceText({ sources }: Band, noSource: string): string {
  return sources?.map((key) => `${bibliography[key].title}. ${bibliography[key].detail}.`).join(' ') ?? noSource
}
