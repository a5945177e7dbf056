import { FluentProvider, makeStyles, mergeClasses, Spinner, Tab, TabList, tokens } from '@fluentui/react-components'
import { lazy, Suspense, useEffect, useId, useMemo, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { definitionIn } from '../derived/definitionIn'
import type { WorkbookPort } from '../workbook/port'
import { CheckSection } from './CheckSection'
import { FunctionsSection } from './FunctionsSection'
import { SettingsProvider } from './settings/SettingsProvider'
import { useSettings } from './settings/useSettings'
import { themes, type ThemeName } from './theme'
import { useSelectedCell } from './useSelectedCell'
import { useWords } from './useWords'
import { WorkingSection } from './WorkingSection'

interface PaneProps {
  readonly definitions: readonly Definition[]
  readonly port: WorkbookPort
  readonly theme: ThemeName
  /** What the host speaks, as "de-AT". */
  readonly locale: string
  /** Told what the pane speaks, as the attribute lang has it. */
  readonly onLanguage: ((language: string) => void) | undefined
}

const useStyles = makeStyles({
  root: {
    display: 'flex',
    flexDirection: 'column',
    height: '100%',
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: 'anywhere',
  },
  panel: { display: 'flex', flexDirection: 'column', flexGrow: 1, minHeight: 0 },
  hidden: { display: 'none' },
  tabs: { flexShrink: 0, flexWrap: 'wrap' },
  // Both hosts write the name above the pane already; a screen reader inside the pane still needs it.
  title: { position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clipPath: 'inset(50%)' },
})

/** The charts come when they are asked for, so that the pane opens without them. */
const CompareSection = lazy(async () => ({ default: (await import('./CompareSection')).CompareSection }))

const SeasonSection = lazy(async () => ({ default: (await import('./SeasonSection')).SeasonSection }))

const LibrarySection = lazy(async () => ({ default: (await import('./LibrarySection')).LibrarySection }))

const SettingsSection = lazy(async () => ({ default: (await import('./SettingsSection')).SettingsSection }))

const sections = ['Season', 'Functions', 'Working', 'Check', 'Compare', 'Library', 'Settings'] as const
type Section = (typeof sections)[number]

export function Pane({ locale, ...props }: PaneProps) {
  return <SettingsProvider locale={locale}><Frame {...props} /></SettingsProvider>
}

/** The title, the sections to choose from, and the chosen one. */
function Frame({ definitions: english, port, theme, onLanguage }: Omit<PaneProps, 'locale'>) {
  const styles = useStyles()
  const { language, frame, ofDefinition } = useWords()
  const { decimalMark } = useSettings().settings
  const definitions = useMemo(() => english.map((definition) => definitionIn(definition, ofDefinition)), [english, ofDefinition])
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
  return (
    <FluentProvider theme={themes[theme]} className={styles.root} lang={language}>
      <h1 className={styles.title}>Sticksheet</h1>
      <TabList className={styles.tabs} size="small" selectedValue={section} onTabSelect={(_event, { value }) => {
        if (section === 'Season') setSeasonLeft(true)
        setChosen(value as Section)
      }}>
        {sections.map((name) => <Tab key={name} id={`${tabsId}-${name}`} value={name}>{frame.sections[name]}</Tab>)}
      </TabList>
      {/* Stays while another section shows, so that what was searched and typed is still there afterwards. */}
      <div role="tabpanel" aria-labelledby={`${tabsId}-Functions`} className={mergeClasses(styles.panel, section !== 'Functions' && styles.hidden)}>
        <FunctionsSection definitions={definitions} port={port} cell={cell} asked={asked} />
      </div>
      {(section === 'Season' || seasonLeft) && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Season`} className={mergeClasses(styles.panel, section !== 'Season' && styles.hidden)}>
          <Suspense fallback={<Spinner size="tiny" label={frame.gettingReady.Season} />}>
            <SeasonSection port={port} />
          </Suspense>
        </div>
      )}
      {section === 'Working' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Working`} className={styles.panel}>
          <WorkingSection definitions={definitions} port={port} cell={cell} />
        </div>
      )}
      {section === 'Check' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Check`} className={styles.panel}>
          <CheckSection definitions={definitions} port={port} />
        </div>
      )}
      {section === 'Library' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Library`} className={styles.panel}>
          <Suspense fallback={<Spinner size="tiny" label={frame.gettingReady.Library} />}>
            <LibrarySection port={port} onOpenFunction={(id) => { setAsked({ id }); setChosen('Functions') }} />
          </Suspense>
        </div>
      )}
      {section === 'Settings' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Settings`} className={styles.panel}>
          <Suspense fallback={<Spinner size="tiny" label={frame.gettingReady.Settings} />}>
            <SettingsSection port={port} />
          </Suspense>
        </div>
      )}
      {section === 'Compare' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Compare`} className={styles.panel}>
          <Suspense fallback={<Spinner size="tiny" label={frame.gettingReady.Compare} />}>
            <CompareSection port={port} />
          </Suspense>
        </div>
      )}
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
