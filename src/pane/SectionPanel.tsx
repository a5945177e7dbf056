import { tokens } from '@fluentui/react-components'
import { Suspense, type CSSProperties, type ReactNode } from 'react'
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

const panel: CSSProperties = { flexDirection: 'column', flexGrow: 1, minHeight: 0 }

const said: CSSProperties = { margin: tokens.spacingHorizontalM, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 }

/** The place of one section, which says so while it is fetched, and what to do where it could not be. */
export function SectionPanel({ section, tabId, shown, children }: SectionPanelProps) {
  const { frame } = useWords()
  return (
    <div role="tabpanel" aria-labelledby={tabId} style={{ ...panel, display: shown ? 'flex' : 'none' }}>
      <SectionBoundary otherwise={<p role="alert" style={said}>{frame.sectionFailed}</p>}>
        <Suspense fallback={<p role="status" style={said}>{frame.gettingReady[section]}</p>}>{children}</Suspense>
      </SectionBoundary>
    </div>
  )
}
