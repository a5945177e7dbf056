import { FluentProvider, Tab, TabList, tokens } from '@fluentui/react-components'
import { useEffect, useId, useState, type CSSProperties } from 'react'
import type { WorkbookPort } from '../workbook/port'
import { SectionPanel } from './SectionPanel'
import { sections, type Section } from './sections'
import { SettingsProvider } from './settings/SettingsProvider'
import { useSettings } from './settings/useSettings'
import { themes, type ThemeName } from './theme'
import { useSelectedCell } from './useSelectedCell'
import { useWords } from './useWords'

interface PaneProps {
  readonly port: WorkbookPort
  readonly theme: ThemeName
  /** What the host speaks, as "de-AT". */
  readonly locale: string
  /** Told what the pane speaks, as the attribute lang has it. */
  readonly onLanguage: ((language: string) => void) | undefined
  /** Told once a section shows. */
  readonly onDrawn: (() => void) | undefined
}

// The frame has its styles at the elements, because what makes classes of styles comes with the sections.
const root: CSSProperties = {
  display: 'flex',
  flexDirection: 'column',
  height: '100%',
  backgroundColor: tokens.colorNeutralBackground1,
  overflowWrap: 'anywhere',
}

const tabs: CSSProperties = { flexShrink: 0, flexWrap: 'wrap' }

/** Both hosts write the name above the pane already; a screen reader inside the pane still needs it. */
const title: CSSProperties = {
  position: 'absolute',
  width: '1px',
  height: '1px',
  overflow: 'hidden',
  clipPath: 'inset(50%)',
}

const load = {
  Season: async () => (await import('./SeasonSection')).SeasonSection,
  Functions: async () => (await import('./FunctionsSection')).FunctionsSection,
  Working: async () => (await import('./WorkingSection')).WorkingSection,
  Check: async () => (await import('./CheckSection')).CheckSection,
  Compare: async () => (await import('./CompareSection')).CompareSection,
  Library: async () => (await import('./LibrarySection')).LibrarySection,
  Settings: async () => (await import('./SettingsSection')).SettingsSection,
}

// At once, while the frame is drawn and answers: most people see it first. Where it fails, the section itself says so.
load.Functions().catch(() => undefined)

export function Pane({ locale, ...props }: PaneProps) {
  return (
    <SettingsProvider locale={locale}>
      <Frame {...props} />
    </SettingsProvider>
  )
}

/** The title, the sections to choose from, and the chosen one. */
function Frame({ port, theme, onLanguage, onDrawn }: Omit<PaneProps, 'locale'>) {
  const { language, frame } = useWords()
  const { decimalMark } = useSettings().settings
  const cell = useSelectedCell(port)
  const tabsId = useId()
  const [chosen, setChosen] = useState<Section>()
  /** A function that another section asked to open; a new object each time, so that it opens again. */
  const [asked, setAsked] = useState<{ readonly id: string }>()
  /** It then stays as it was left, with a season that is still being built. */
  const [seasonLeft, setSeasonLeft] = useState(false)
  const isEmpty = useIsEmpty(port)
  useEffect(() => {
    port.setDecimalMark?.(decimalMark)
  }, [port, decimalMark])
  useEffect(() => {
    onLanguage?.(language)
  }, [onLanguage, language])
  // Who opens the pane beside an empty workbook has nothing yet to use a function on.
  const section = chosen ?? (isEmpty ? 'Season' : 'Functions')
  const openFunction = (id: string) => {
    setAsked({ id })
    setChosen('Functions')
  }
  const panel = (name: Section) => ({ section: name, tabId: `${tabsId}-${name}`, shown: section === name, onDrawn })
  return (
    <FluentProvider theme={themes[theme]} style={root} lang={language}>
      <h1 style={title}>Sticksheet</h1>
      <TabList
        style={tabs}
        size="small"
        selectedValue={section}
        onTabSelect={(_event, { value }) => {
          if (section === 'Season') setSeasonLeft(true)
          setChosen(value as Section)
        }}
      >
        {sections.map((name) => (
          <Tab key={name} id={`${tabsId}-${name}`} value={name}>
            {frame.sections[name]}
          </Tab>
        ))}
      </TabList>
      {/* Stays while another section shows, so that what was searched and typed is still there afterwards. */}
      <SectionPanel {...panel('Functions')} load={load.Functions} props={{ port, cell, asked }} />
      {(section === 'Season' || seasonLeft) && (
        <SectionPanel {...panel('Season')} load={load.Season} props={{ port }} />
      )}
      {section === 'Working' && <SectionPanel {...panel('Working')} load={load.Working} props={{ port, cell }} />}
      {section === 'Check' && <SectionPanel {...panel('Check')} load={load.Check} props={{ port }} />}
      {section === 'Compare' && <SectionPanel {...panel('Compare')} load={load.Compare} props={{ port }} />}
      {section === 'Library' && (
        <SectionPanel {...panel('Library')} load={load.Library} props={{ port, onOpenFunction: openFunction }} />
      )}
      {section === 'Settings' && <SectionPanel {...panel('Settings')} load={load.Settings} props={{ port }} />}
    </FluentProvider>
  )
}

/** Whether nothing stood in the workbook when the pane was opened. */
function useIsEmpty(port: WorkbookPort): boolean {
  const [isEmpty, setIsEmpty] = useState(false)
  useEffect(() => {
    // A host that cannot tell says why as soon as anything is asked of it.
    port.isEmpty().then(setIsEmpty, () => undefined)
  }, [port])
  return isEmpty
}
