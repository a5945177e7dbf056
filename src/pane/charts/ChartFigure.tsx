import { Button, makeStyles, tokens } from '@fluentui/react-components'
import { useId, useState, type ReactNode } from 'react'
import { ResultTable, type TableColumn } from '../ResultTable'
import { useWords } from '../useWords'
import { useWidth } from './useWidth'

export interface ChartTable {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly (number | string)[])[]
}

interface ChartFigureProps {
  readonly title: string
  /** What the chart says, in sentences. */
  readonly summary: string
  /** All numbers of the chart. */
  readonly table: ChartTable
  readonly legend?: readonly LegendLine[]
  readonly draw: (width: number) => ReactNode
}

export interface LegendLine {
  readonly sample: ReactNode
  readonly text: string
}

const useStyles = makeStyles({
  figure: { margin: 0 },
  title: {
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  summary: {
    margin: `${tokens.spacingVerticalXS} 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  legend: {
    listStyleType: 'none',
    margin: `${tokens.spacingVerticalXS} 0`,
    padding: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  legendLine: {
    display: 'flex',
    alignItems: 'center',
    columnGap: tokens.spacingHorizontalS,
    padding: `${tokens.spacingVerticalXXS} 0`,
  },
  chart: { maxWidth: '640px' },
})

/** A chart with its title, what it says, and the same numbers as a table for whoever prefers them. */
export function ChartFigure({ title, summary, table, legend = [], draw }: ChartFigureProps) {
  const styles = useStyles()
  const { compare: say } = useWords()
  const titleId = useId()
  const summaryId = useId()
  const [asTable, setAsTable] = useState(false)
  const [ref, width] = useWidth<HTMLDivElement>()
  return (
    <figure className={styles.figure} aria-labelledby={titleId}>
      <figcaption id={titleId} className={styles.title}>
        {title}
      </figcaption>
      <p id={summaryId} className={styles.summary}>
        {summary}
      </p>
      <div ref={ref} className={styles.chart}>
        {!asTable && width > 0 && (
          <div role="img" aria-labelledby={titleId} aria-describedby={summaryId}>
            {draw(width)}
          </div>
        )}
      </div>
      {!asTable && legend.length > 0 && (
        <ul className={styles.legend} aria-label={say.key}>
          {legend.map(({ sample, text }, index) => (
            <li key={index} className={styles.legendLine}>
              {sample}
              <span>{text}</span>
            </li>
          ))}
        </ul>
      )}
      {asTable && <ResultTable columns={table.columns} rows={table.rows} label={title} />}
      <Button size="small" aria-pressed={asTable} onClick={() => setAsTable(!asTable)}>
        {asTable ? say.asChart : say.asTable}
      </Button>
    </figure>
  )
}
