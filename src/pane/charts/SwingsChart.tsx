import { makeStyles, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { useId, type ReactNode } from 'react'
import type { Words } from '../../wording/words'
import type { Swing, Swings } from '../../workbook/compare/swings'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { BottomAxis } from './Axis'
import { ChartFigure, type ChartTable } from './ChartFigure'
import { domainOf } from './domainOf'
import { markOf } from './marks'
import { PatternFill } from './PatternFill'
import { argumentText, swingsSummary } from './summaries'

const useStyles = makeStyles({
  label: {
    display: 'flex',
    flexWrap: 'wrap',
    justifyContent: 'space-between',
    columnGap: tokens.spacingHorizontalM,
    marginTop: tokens.spacingVerticalXS,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  ends: { fontVariantNumeric: 'tabular-nums' },
  drawing: { display: 'block' },
  sample: { flexShrink: 0 },
  likely: { stroke: tokens.colorNeutralForeground1, strokeWidth: '2px' },
})

const [barHeight, axisHeight, edge] = [16, 26, 1]
/** The two ends of an argument differ in pattern and colour. */
const ends = [
  { key: 'atHigh', mark: markOf(0), text: 'atItsHigh' },
  { key: 'atLow', mark: markOf(1), text: 'atItsLow' },
] as const

/** A bar for each argument, the widest first, from its result at the low to that at the high. */
export function SwingsChart({ swings }: { readonly swings: Swings }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { swings: say } = useWords().compare
  const id = useId()
  return (
    <ChartFigure
      title={say.chart(swings.of)}
      summary={swingsSummary(swings, say, numbers)}
      table={tableOf(swings, say)}
      legend={[
        ...ends.map((end, index) => ({
          text: say[end.text],
          sample: (
            <Sample>
              {index === 0 && <Fills id={id} />}
              <rect x={edge} y={edge} width={18} height={12} {...boxOf(end, id)} />
            </Sample>
          ),
        })),
        {
          text: say.allAtLikely,
          sample: (
            <Sample>
              <line x1={10} x2={10} y1={0} y2={14} className={styles.likely} />
            </Sample>
          ),
        },
      ]}
      draw={(width) => <Drawing swings={swings} width={width} id={id} />}
    />
  )
}

interface DrawingProps {
  readonly swings: Swings
  readonly width: number
  /** Of the fills that stand in the key. */
  readonly id: string
}

function Drawing({ swings, width, id }: DrawingProps) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { fromTo } = useWords().compare
  const { unit, likely, bars } = swings
  const domain = domainOf(bars.flatMap(({ atLow, atHigh }) => [atLow, atHigh, likely]))
  const scale = scaleLinear(domain, [edge, width - edge]).nice(4)
  return (
    <>
      {bars.map((bar) => (
        <div key={bar.argument}>
          <div className={styles.label}>
            <span>
              {argumentText(bar)}, {fromTo(numbers.label(bar.low), numbers.label(bar.high))}
            </span>
            <span className={styles.ends}>
              {fromTo(numbers.label(bar.atLow, unit), numbers.label(bar.atHigh, unit))}
            </span>
          </div>
          <svg width={width} height={barHeight} className={styles.drawing}>
            {longerFirst(bar, likely).map((end) => {
              const [from, to] = [scale(likely), scale(bar[end.key])]
              return (
                from !== to && (
                  <rect
                    key={end.key}
                    x={Math.min(from, to)}
                    y={edge}
                    width={Math.abs(to - from)}
                    height={barHeight - 2 * edge}
                    {...boxOf(end, id)}
                  />
                )
              )
            })}
            <line x1={scale(likely)} x2={scale(likely)} y1={0} y2={barHeight} className={styles.likely} />
          </svg>
        </div>
      ))}
      <svg width={width} height={axisHeight} className={styles.drawing}>
        <BottomAxis scale={scale} ticks={4} at={edge} gridTo={edge} />
      </svg>
      <div className={styles.label}>{numbers.unit(unit)}</div>
    </>
  )
}

function Sample({ children }: { readonly children: ReactNode }) {
  const styles = useStyles()
  return (
    <svg width={20} height={14} aria-hidden="true" className={styles.sample}>
      {children}
    </svg>
  )
}

function Fills({ id }: { readonly id: string }) {
  return (
    <defs>
      {ends.map(({ key, mark }) => (
        <PatternFill key={key} id={`${id}${key}`} mark={mark} />
      ))}
    </defs>
  )
}

/** How the bar of an end looks. */
function boxOf({ key, mark }: (typeof ends)[number], id: string) {
  return { fill: `url(#${id}${key})`, style: { stroke: mark.colour } }
}

/** Where both ends lie on one side, the shorter one must not be hidden. */
function longerFirst(bar: Swing, likely: number) {
  return [...ends].sort((a, b) => Math.abs(bar[b.key] - likely) - Math.abs(bar[a.key] - likely))
}

function tableOf({ unit, likely, bars }: Swings, say: Words['compare']['swings']): ChartTable {
  return {
    columns: [
      { heading: say.columns.argument, unit: 'text' },
      { heading: say.columns.low, unit: 'in the unit of the argument' },
      { heading: say.columns.high, unit: 'in the unit of the argument' },
      { heading: say.columns.atLow, unit },
      { heading: say.columns.allLikely, unit },
      { heading: say.columns.atHigh, unit },
      { heading: say.columns.swing, unit },
    ],
    rows: bars.map((bar) => [argumentText(bar), bar.low, bar.high, bar.atLow, likely, bar.atHigh, bar.swing]),
  }
}
