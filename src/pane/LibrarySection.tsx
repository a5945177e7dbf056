import { makeStyles, tokens } from '@fluentui/react-components'
import { useId } from 'react'
import { materials, waysOfRooting, type LibraryEntry } from '../workbook/library/library'
import type { WorkbookPort } from '../workbook/port'
import { LibraryArticle } from './LibraryArticle'
import { usePaneStyles } from './usePaneStyles'
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
  text: {
    margin: `${tokens.spacingVerticalXXS} 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
})

/** What to know of each rooting method and each material before one types figures of one's own. */
export function LibrarySection({ port, onOpenFunction }: LibrarySectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const headingId = useId()
  const { library: say, frame } = useWords()
  const article = (entry: LibraryEntry) => (
    <LibraryArticle key={entry.name} entry={entry} port={port} onOpenFunction={onOpenFunction} />
  )
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Library}
      </h2>
      <p className={styles.text}>{say.about}</p>
      <h3 className={styles.group}>{say.sixWays}</h3>
      {waysOfRooting.map(article)}
      <h3 className={styles.group}>{say.materials}</h3>
      {materials.map(article)}
    </section>
  )
}
