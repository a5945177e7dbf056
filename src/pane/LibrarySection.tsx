import { Link, makeStyles, tokens } from '@fluentui/react-components'
import { useId } from 'react'
import { bibliography } from '../sources/bibliography'
import { cautionSentences } from '../wording/cautions'
import { materials, waysOfRooting, type Band, type LibraryEntry } from '../workbook/library/library'
import { usePaneStyles } from './usePaneStyles'

interface LibrarySectionProps {
  /** Opens a function of the catalogue. */
  readonly onOpenFunction: (id: string) => void
}

const useStyles = makeStyles({
  group: { margin: `${tokens.spacingVerticalL} 0 0`, fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase400, fontWeight: tokens.fontWeightSemibold },
  name: { margin: `${tokens.spacingVerticalM} 0 0`, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold },
  text: { margin: `${tokens.spacingVerticalXXS} 0`, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  bands: { margin: `${tokens.spacingVerticalXXS} 0`, paddingLeft: tokens.spacingHorizontalL, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  small: { display: 'block', fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  functions: { display: 'flex', flexWrap: 'wrap', columnGap: tokens.spacingHorizontalM, margin: `${tokens.spacingVerticalXXS} 0` },
  link: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase300, textDecorationLine: 'underline' },
  caution: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalS, borderLeft: `3px solid ${tokens.colorStatusWarningBorderActive}`, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
})

/** What to know of each way of rooting and each material before one types figures of one's own. */
export function LibrarySection({ onOpenFunction }: LibrarySectionProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const headingId = useId()
  const entry = (one: LibraryEntry) => <Entry key={one.name} entry={one} onOpenFunction={onOpenFunction} />
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>Library</h2>
      <p className={styles.text}>For orientation only: measure your own, and take prices from your own invoices. There are none here.</p>
      <h3 className={styles.group}>Six ways of rooting</h3>
      {waysOfRooting.map(entry)}
      <h3 className={styles.group}>Materials</h3>
      {materials.map(entry)}
    </section>
  )
}

function Entry({ entry: { name, text, bands, functions, cautions }, onOpenFunction }: { readonly entry: LibraryEntry } & LibrarySectionProps) {
  const styles = useStyles()
  return (
    <article>
      <h4 className={styles.name}>{name}</h4>
      <p className={styles.text}>{text}</p>
      {bands.length > 0 && (
        <ul className={styles.bands}>
          {bands.map((band) => <li key={band.of}>{band.of}: {band.range}<span className={styles.small}>{sourceText(band)}</span></li>)}
        </ul>
      )}
      <p className={styles.functions}>
        {functions.map((id) => <Link key={id} as="button" className={styles.link} onClick={() => onOpenFunction(id)}>{id}</Link>)}
      </p>
      <p className={styles.caution}><strong>Caution.</strong> {cautionSentences(cautions).join(' ')}</p>
    </article>
  )
}

function sourceText({ source }: Band): string {
  return source === undefined ? 'Common practice, no source' : `${bibliography[source].title}. ${bibliography[source].detail}.`
}
