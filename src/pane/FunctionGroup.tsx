import { makeStyles, tokens } from '@fluentui/react-components'
import type { Definition } from '../core/definition/definition'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { FunctionEntry } from './FunctionEntry'

const useStyles = makeStyles({
  subject: {
    margin: 0,
    padding: `${tokens.spacingVerticalM} ${tokens.spacingHorizontalM} ${tokens.spacingVerticalXS}`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  entries: { listStyleType: 'none', margin: 0, padding: 0 },
})

interface FunctionGroupProps {
  /** Of the catalogue, or 'found'. */
  readonly group: { readonly subject: string; readonly name: string; readonly definitions: readonly Definition[] }
  /** Of the section's heading: that of the group is made of it. */
  readonly headingId: string
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
  readonly used: readonly Definition[]
  readonly openId: string | undefined
  readonly onOpen: (id: string | undefined) => void
}

/** The functions of one subject, or those that were found. */
export function FunctionGroup({ group, headingId, port, cell, used, openId, onOpen }: FunctionGroupProps) {
  const styles = useStyles()
  const id = `${headingId}-${group.subject}`
  return (
    <section aria-labelledby={id}>
      <h3 id={id} className={styles.subject}>
        {group.name}
      </h3>
      <ul className={styles.entries}>
        {group.definitions.map((definition) => (
          <FunctionEntry
            key={definition.id}
            definition={definition}
            port={port}
            cell={cell}
            open={definition.id === openId}
            usedBySelectedCell={used.includes(definition)}
            onToggle={() => onOpen(definition.id === openId ? undefined : definition.id)}
          />
        ))}
      </ul>
    </section>
  )
}
