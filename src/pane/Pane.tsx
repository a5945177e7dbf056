import { FluentProvider, makeStyles, mergeClasses, Spinner, Tab, TabList, tokens } from '@fluentui/react-components'
import { lazy, Suspense, useId, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import type { WorkbookPort } from '../workbook/port'
import { CheckSection } from './CheckSection'
import { FunctionsSection } from './FunctionsSection'
import { themes, type ThemeName } from './theme'
import { useSelectedCell } from './useSelectedCell'
import { WorkingSection } from './WorkingSection'

interface PaneProps {
  readonly definitions: readonly Definition[]
  readonly port: WorkbookPort
  readonly theme: ThemeName
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

const sections = ['Functions', 'Working', 'Check', 'Compare'] as const
type Section = (typeof sections)[number]

/** The frame: the title, the sections to choose from, and the chosen one. */
export function Pane({ definitions, port, theme }: PaneProps) {
  const styles = useStyles()
  const cell = useSelectedCell(port)
  const tabsId = useId()
  const [section, setSection] = useState<Section>('Functions')
  return (
    <FluentProvider theme={themes[theme]} className={styles.root}>
      <h1 className={styles.title}>Sticksheet</h1>
      <TabList className={styles.tabs} size="small" selectedValue={section} onTabSelect={(_event, { value }) => setSection(value as Section)}>
        {sections.map((name) => <Tab key={name} id={`${tabsId}-${name}`} value={name}>{name}</Tab>)}
      </TabList>
      {/* Stays while another section shows, so that what was searched and typed is still there afterwards. */}
      <div role="tabpanel" aria-labelledby={`${tabsId}-Functions`} className={mergeClasses(styles.panel, section !== 'Functions' && styles.hidden)}>
        <FunctionsSection definitions={definitions} port={port} cell={cell} />
      </div>
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
      {section === 'Compare' && (
        <div role="tabpanel" aria-labelledby={`${tabsId}-Compare`} className={styles.panel}>
          <Suspense fallback={<Spinner size="tiny" label="Getting the charts ready" />}>
            <CompareSection port={port} />
          </Suspense>
        </div>
      )}
    </FluentProvider>
  )
}
