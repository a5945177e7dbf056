import { FluentProvider, Tab, TabList, tokens } from '@fluentui/react-components'
import { lazy, useEffect, useId, useState, type CSSProperties } from 'react'
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
}

// The frame has its styles at the elements, because what makes classes of styles comes with the sections.
const root: CSSProperties = { display: 'flex', flexDirection: 'column', height: '100%', backgroundColor: tokens.colorNeutralBackground1, overflowWrap: 'anywhere' }

const tabs: CSSProperties = { flexShrink: 0, flexWrap: 'wrap' }

/** Both hosts write the name above the pane already; a screen reader inside the pane still needs it. */
const title: CSSProperties = { position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clipPath: 'inset(50%)' }

/** Fetched at once, while the frame is drawn: most people see it first. */
const functionsSection = import('./FunctionsSection')

/** The frame is drawn and answers before any section is there. */
const FunctionsSection = lazy(async () => ({ default: (await functionsSection).FunctionsSection }))

const SeasonSection = lazy(async () => ({ default: (await import('./SeasonSection')).SeasonSection }))

const WorkingSection = lazy(async () => ({ default: (await import('./WorkingSection')).WorkingSection }))

const CheckSection = lazy(async () => ({ default: (await import('./CheckSection')).CheckSection }))

const CompareSection = lazy(async () => ({ default: (await import('./CompareSection')).CompareSection }))

const LibrarySection = lazy(async () => ({ default: (await import('./LibrarySection')).LibrarySection }))

const SettingsSection = lazy(async () => ({ default: (await import('./SettingsSection')).SettingsSection }))

export function Pane({ locale, ...props }: PaneProps) {
  return <SettingsProvider locale={locale}><Frame {...props} /></SettingsProvider>
}

/** The title, the sections to choose from, and the chosen one. */
function Frame({ port, theme, onLanguage }: Omit<PaneProps, 'locale'>) {
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
  useEffect(() => port.setDecimalMark?.(decimalMark), [port, decimalMark])
  useEffect(() => { onLanguage?.(language) }, [onLanguage, language])
  // Who opens the pane beside an empty workbook has nothing yet to use a function on.
  const section = chosen ?? (isEmpty ? 'Season' : 'Functions')
  const panel = (name: Section) => ({ section: name, tabId: `${tabsId}-${name}`, shown: section === name })
  return (
    <FluentProvider theme={themes[theme]} style={root} lang={language}>
      <h1 style={title}>Sticksheet</h1>
      <TabList style={tabs} size="small" selectedValue={section} onTabSelect={(_event, { value }) => {
        if (section === 'Season') setSeasonLeft(true)
        setChosen(value as Section)
      }}>
        {sections.map((name) => <Tab key={name} id={`${tabsId}-${name}`} value={name}>{frame.sections[name]}</Tab>)}
      </TabList>
      {/* Stays while another section shows, so that what was searched and typed is still there afterwards. */}
      <SectionPanel {...panel('Functions')}><FunctionsSection port={port} cell={cell} asked={asked} /></SectionPanel>
      {(section === 'Season' || seasonLeft) && <SectionPanel {...panel('Season')}><SeasonSection port={port} /></SectionPanel>}
      {section === 'Working' && <SectionPanel {...panel('Working')}><WorkingSection port={port} cell={cell} /></SectionPanel>}
      {section === 'Check' && <SectionPanel {...panel('Check')}><CheckSection port={port} /></SectionPanel>}
      {section === 'Compare' && <SectionPanel {...panel('Compare')}><CompareSection port={port} /></SectionPanel>}
      {section === 'Library' && (
        <SectionPanel {...panel('Library')}>
          <LibrarySection port={port} onOpenFunction={(id) => { setAsked({ id }); setChosen('Functions') }} />
        </SectionPanel>
      )}
      {section === 'Settings' && <SectionPanel {...panel('Settings')}><SettingsSection port={port} /></SectionPanel>}
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
