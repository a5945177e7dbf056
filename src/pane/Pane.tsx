import { FluentProvider, makeStyles, tokens } from '@fluentui/react-components'
import type { Definition } from '../core/definition/definition'
import type { WorkbookPort } from '../workbook/port'
import { FunctionsSection } from './FunctionsSection'
import { themes, type ThemeName } from './theme'
import { useSelectedCell } from './useSelectedCell'

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
  // Both hosts write the name above the pane already; a screen reader inside the pane still needs it.
  title: { position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clipPath: 'inset(50%)' },
})

/** The frame: the title, and one section below the other. */
export function Pane({ definitions, port, theme }: PaneProps) {
  const styles = useStyles()
  const cell = useSelectedCell(port)
  return (
    <FluentProvider theme={themes[theme]} className={styles.root}>
      <h1 className={styles.title}>Sticksheet</h1>
      <FunctionsSection definitions={definitions} port={port} cell={cell} />
    </FluentProvider>
  )
}
