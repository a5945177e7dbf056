import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import type { Finding } from '../workbook/check/finding'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface FindingListProps {
  readonly findings: readonly Finding[]
  readonly onGo: (finding: Finding) => void
}

const useStyles = makeStyles({
  list: { listStyleType: 'none', margin: `${tokens.spacingVerticalS} 0`, padding: 0 },
  finding: {
    padding: `${tokens.spacingVerticalXS} 0`,
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  warning: { color: tokens.colorStatusWarningForeground1 },
  kind: { fontWeight: tokens.fontWeightSemibold },
})

/** What was found, each with a way to its cell. */
export function FindingList({ findings, onGo }: FindingListProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { check: say, frame } = useWords()
  return (
    <ul className={styles.list}>
      {findings.map((finding, index) => (
        <li key={index} className={styles.finding}>
          <Button size="small" onClick={() => onGo(finding)}>
            {frame.place(finding)}
          </Button>{' '}
          <span className={mergeClasses(styles.kind, finding.kind === 'error' ? pane.error : styles.warning)}>
            {say.kinds[finding.kind]}
          </span>
          <div>{finding.sentence}</div>
        </li>
      ))}
    </ul>
  )
}
