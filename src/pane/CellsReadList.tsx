import { Button, makeStyles, tokens } from '@fluentui/react-components'
import { isCellError } from '../core/definition/problem'
import type { CellPlace } from '../workbook/cellPlace'
import { useNumberText } from './settings/useNumberText'
import type { ShownCells } from './useCellsRead'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface CellsReadListProps {
  readonly cells: readonly ShownCells[]
  readonly onGo: (place: CellPlace) => void
}

const useStyles = makeStyles({
  list: { listStyleType: 'none', margin: 0, padding: 0 },
  item: {
    padding: `${tokens.spacingVerticalXS} 0`,
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
  },
  row: {
    display: 'flex',
    flexWrap: 'wrap',
    alignItems: 'center',
    justifyContent: 'space-between',
    columnGap: tokens.spacingHorizontalM,
  },
  value: {
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontVariantNumeric: 'tabular-nums',
    marginLeft: 'auto',
    textAlign: 'end',
  },
})

/** The cells that a formula reads, each with a way there. */
export function CellsReadList({ cells, onGo }: CellsReadListProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { frame, working: say } = useWords()
  const numbers = useNumberText()
  return (
    <ul className={styles.list}>
      {cells.map(({ sheet, address, name, label, value, range }) => (
        <li key={`${sheet}!${address}`} className={styles.item}>
          <span className={styles.row}>
            <Button size="small" onClick={() => onGo({ sheet, address })}>
              {frame.place({ address, sheet })}
            </Button>
            <span className={styles.value}>
              {value === undefined
                ? say.rangeSize(range.bottom - range.top + 1, range.right - range.left + 1)
                : valueText(value)}
            </span>
          </span>
          {(label !== '' || name !== undefined) && (
            <span className={pane.small}>{[name, label].filter(Boolean).join(': ')}</span>
          )}
        </li>
      ))}
    </ul>
  )

  function valueText(value: ShownCells['value']): string {
    if (isCellError(value)) return value.code
    if (typeof value === 'number') return numbers.plain(value, 'short')
    return value === null || value === undefined || value === '' ? frame.blank : String(value)
  }
}
