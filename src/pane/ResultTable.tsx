import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import type { DescribedColumn } from '../core/definition/definition'
import { useNumberText } from './settings/useNumberText'
import { useWords } from './useWords'

export type TableColumn = Pick<DescribedColumn, 'heading' | 'unit'>

interface ResultTableProps {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly (number | string)[])[]
  /** What the table is of, for who cannot see what it stands beside. */
  readonly label?: string
}

const useStyles = makeStyles({
  wide: { overflowX: 'auto' },
  table: { borderCollapse: 'collapse', fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  cell: {
    padding: `${tokens.spacingVerticalXXS} ${tokens.spacingHorizontalS} ${tokens.spacingVerticalXXS} 0`,
    textAlign: 'left',
    // The pane breaks long words anywhere, and a table scrolls instead.
    overflowWrap: 'normal',
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
  },
  unit: { display: 'block', fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  number: { whiteSpace: 'nowrap', textAlign: 'right', fontVariantNumeric: 'tabular-nums' },
})

/** A table as it will stand in the sheet. */
export function ResultTable({ columns, rows, label }: ResultTableProps) {
  const styles = useStyles()
  const { functions: say } = useWords()
  const numbers = useNumberText()
  return (
    <div className={styles.wide} tabIndex={0} role="region" aria-label={label ?? say.table}>
      <table className={styles.table}>
        <thead>
          <tr>
            {columns.map(({ heading, unit }, column) => (
              <th key={column} scope="col" className={styles.cell}>
                {heading}
                {unit !== 'text' && unit !== heading && <span className={styles.unit}>{numbers.unit(unit)}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {row.map((value, column) => (
                <td key={column} className={mergeClasses(styles.cell, typeof value === 'number' && styles.number)}>
                  {numbers.inColumn(value, columns[column]?.unit ?? '', 'short')}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
