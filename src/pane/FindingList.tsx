import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useMemo } from 'react'
import type { Finding } from '../workbook/check/finding'
import { shownFindings } from '../workbook/check/shownFindings'
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

/** What was found, each with a way to its cell; where there is very much, what is not listed. */
export function FindingList({ findings, onGo }: FindingListProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { check: say, frame } = useWords()
  const { shown, left } = useMemo(() => shownFindings(findings), [findings])
  return (
    <ul className={styles.list}>
      {shown.map((finding, index) => (
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
      {left.map(({ sheet, kind, count }) => (
        <li key={`${kind} ${sheet}`} className={styles.finding}>
          {say.left(count, kind, sheet)}
        </li>
      ))}
    </ul>
  )
}
