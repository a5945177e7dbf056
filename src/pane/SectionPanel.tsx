import { makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { Suspense, type ReactNode } from 'react'
import { SectionBoundary } from './SectionBoundary'
import type { Section } from './sections'
import { useWords } from './useWords'

interface SectionPanelProps {
  readonly section: Section
  readonly tabId: string
  /** One that is not shown keeps what was typed into it. */
  readonly shown: boolean
  readonly children: ReactNode
}

const useStyles = makeStyles({
  panel: { display: 'flex', flexDirection: 'column', flexGrow: 1, minHeight: 0 },
  hidden: { display: 'none' },
  failure: { margin: tokens.spacingHorizontalM, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
})

/** The place of one section, which says so while it is fetched, and what to do where it could not be. */
export function SectionPanel({ section, tabId, shown, children }: SectionPanelProps) {
  const styles = useStyles()
  const { frame } = useWords()
  return (
    <div role="tabpanel" aria-labelledby={tabId} className={mergeClasses(styles.panel, !shown && styles.hidden)}>
      <SectionBoundary otherwise={<p role="alert" className={styles.failure}>{frame.sectionFailed}</p>}>
        <Suspense fallback={<Spinner size="tiny" label={frame.gettingReady[section]} />}>{children}</Suspense>
      </SectionBoundary>
    </div>
  )
}
