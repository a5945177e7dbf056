import { tokens } from '@fluentui/react-components'
import { lazy, Suspense, useEffect, useRef, useState, type ComponentType, type CSSProperties } from 'react'
import { SectionBoundary } from './SectionBoundary'
import type { Section } from './sections'
import { useWords } from './useWords'

interface SectionPanelProps<Props> {
  readonly section: Section
  readonly tabId: string
  /** One that is not shown keeps what was typed into it. */
  readonly shown: boolean
  readonly load: () => Promise<ComponentType<Props>>
  readonly props: Props
  /** Told once it shows what was fetched. */
  readonly onDrawn: (() => void) | undefined
}

// The frame has its styles at the elements, because what makes classes of styles comes with the sections.
const panel: CSSProperties = { flexDirection: 'column', flexGrow: 1, minHeight: 0 }

const said: CSSProperties = {
  margin: tokens.spacingHorizontalM,
  fontSize: tokens.fontSizeBase300,
  lineHeight: tokens.lineHeightBase300,
}

const button: CSSProperties = {
  alignSelf: 'start',
  margin: `0 ${tokens.spacingHorizontalM}`,
  padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalM}`,
  border: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke1}`,
  borderRadius: tokens.borderRadiusMedium,
  background: tokens.colorNeutralBackground1,
  color: 'inherit',
  font: 'inherit',
  cursor: 'pointer',
}

/** The place of one section, which says so while it is fetched. Where it failed it says what to do, and shows it again. */
export function SectionPanel<Props extends object>({
  section,
  tabId,
  shown,
  load,
  props,
  onDrawn,
}: SectionPanelProps<Props>) {
  const { frame } = useWords()
  const place = useRef<HTMLDivElement>(null)
  const fetched = () => lazy(async () => ({ default: await load() }))
  // A lazy component keeps its failure for ever, so each try has its own.
  const [{ trial, Content }, setTrial] = useState(() => ({ trial: 1, Content: fetched() }))

  function showAgain() {
    setTrial({ trial: trial + 1, Content: fetched() })
    // The button goes, and the keyboard would go with it.
    place.current!.focus()
  }

  const failed = (
    <>
      <p role="alert" style={said}>
        {frame.sectionFailed}
      </p>
      <button type="button" style={button} onClick={showAgain}>
        {frame.showAgain}
      </button>
    </>
  )
  return (
    <div
      ref={place}
      role="tabpanel"
      aria-labelledby={tabId}
      tabIndex={-1}
      style={{ ...panel, display: shown ? 'flex' : 'none' }}
    >
      <SectionBoundary key={trial} otherwise={failed}>
        <Suspense
          fallback={
            <p role="status" style={said}>
              {frame.gettingReady[section]}
            </p>
          }
        >
          <Content {...props} />
          <Drawn tell={onDrawn} />
        </Suspense>
      </SectionBoundary>
    </div>
  )
}

/** Draws nothing, and tells once all that comes with it is drawn. */
function Drawn({ tell }: { readonly tell: (() => void) | undefined }) {
  useEffect(() => {
    tell?.()
  }, [])
  return null
}
