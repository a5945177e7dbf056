import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import type { ReactNode } from 'react'
import type { Odds, Percentile } from '../../workbook/compare/odds'
import type { Words } from '../../wording/words'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { BottomAxis, LeftAxis } from './Axis'
import { ChartFigure, type ChartTable } from './ChartFigure'
import { domainOf } from './domainOf'
import { markOf } from './marks'
import { oddsSummary } from './summaries'

const useStyles = makeStyles({
  drawing: { display: 'block' },
  sample: { flexShrink: 0 },
  axisName: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  resultName: { textAlign: 'end' },
  likely: { stroke: tokens.colorNeutralForeground1, strokeWidth: '2px', strokeDasharray: '5 3' },
  mean: { stroke: tokens.colorNeutralForeground1, strokeWidth: '2px', strokeDasharray: '1 3' },
})

const height = 240
const margin = { left: 44, right: 12, top: 12, bottom: 26 }
const [sampleWidth, sampleHeight, pointRadius] = [34, 16, 4]
const { colour } = markOf(0)

/** For each result, the share of the draws that lie at or below it. */
export function OddsChart({ odds }: { readonly odds: Odds }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { odds: say } = useWords().compare
  const { of, unit, mean, likely } = odds
  const [middle, centre] = [sampleWidth / 2, sampleHeight / 2]
  const upright = (className: string) => <line x1={middle} x2={middle} y1={0} y2={sampleHeight} className={className} />
  return (
    <ChartFigure
      title={say.chart(of)}
      summary={oddsSummary(odds, say, numbers)}
      table={tableOf(odds, say)}
      legend={[
        {
          text: say.atOrBelow,
          sample: (
            <Sample>
              <line x1={0} x2={sampleWidth} y1={centre} y2={centre} style={{ stroke: colour, strokeWidth: 2 }} />
              <circle cx={middle} cy={centre} r={pointRadius} style={{ fill: colour }} />
            </Sample>
          ),
        },
        { text: say.likelyLine(numbers.label(likely, unit)), sample: <Sample>{upright(styles.likely)}</Sample> },
        { text: say.meanLine(numbers.label(mean, unit)), sample: <Sample>{upright(styles.mean)}</Sample> },
      ]}
      draw={(width) => <Drawing odds={odds} width={width} />}
    />
  )
}

function Drawing({ odds, width }: { readonly odds: Odds; readonly width: number }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { odds: say } = useWords().compare
  const { unit, percentiles, mean, likely } = odds
  const x = scaleLinear(domainOf([...percentiles.map(({ result }) => result), likely]), [
    margin.left,
    width - margin.right,
  ]).nice(4)
  const y = scaleLinear([0, 1], [height - margin.bottom, margin.top])
  const path = line<Percentile>(
    ({ result }) => x(result),
    ({ share }) => y(share),
  )
  return (
    <>
      <div className={styles.axisName}>{say.shareOfDraws}</div>
      <svg width={width} height={height} className={styles.drawing}>
        <BottomAxis scale={x} ticks={4} at={height - margin.bottom} gridTo={margin.top} />
        <LeftAxis scale={y} ticks={5} at={margin.left} gridTo={width - margin.right} text={numbers.percent} />
        <line x1={x(likely)} x2={x(likely)} y1={margin.top} y2={height - margin.bottom} className={styles.likely} />
        <line x1={x(mean)} x2={x(mean)} y1={margin.top} y2={height - margin.bottom} className={styles.mean} />
        <path d={path(percentiles) ?? ''} fill="none" style={{ stroke: colour, strokeWidth: 2 }} />
        {percentiles.map(({ share, result }) => (
          <circle key={share} cx={x(result)} cy={y(share)} r={pointRadius} style={{ fill: colour }} />
        ))}
      </svg>
      <div className={mergeClasses(styles.axisName, styles.resultName)}>{numbers.unit(unit)}</div>
    </>
  )
}

function Sample({ children }: { readonly children: ReactNode }) {
  const styles = useStyles()
  return (
    <svg width={sampleWidth} height={sampleHeight} aria-hidden="true" className={styles.sample}>
      {children}
    </svg>
  )
}

function tableOf(
  { unit, percentiles, mean, likely, drawsWithoutAnswer }: Odds,
  say: Words['compare']['odds'],
): ChartTable {
  return {
    columns: [
      { heading: say.columns.share, unit: 'share' },
      { heading: say.columns.result, unit },
    ],
    rows: [
      ...percentiles.map(({ share, result }) => [share, result]),
      [say.rows.mean, mean],
      [say.rows.likely, likely],
      [say.rows.withoutAnswer, drawsWithoutAnswer],
    ],
  }
}
