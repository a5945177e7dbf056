import { makeStyles, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { useId } from 'react'
import type { Swing, Swings } from '../../workbook/compare/swings'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { BottomAxis } from './Axis'
import { ChartFigure } from './ChartFigure'
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
  const { swings: say, fromTo } = useWords().compare
  const id = useId()
  const { of, unit, likely, bars } = swings
  const domain = domainOf(bars.flatMap(({ atLow, atHigh }) => [atLow, atHigh, likely]))
  /** Where both ends lie on one side, the shorter one must not be hidden. */
  const longerFirst = (bar: Swing) =>
    [...ends].sort((a, b) => Math.abs(bar[b.key] - likely) - Math.abs(bar[a.key] - likely))
  const fills = (
    <defs>
      {ends.map(({ key, mark }) => (
        <PatternFill key={key} id={`${id}${key}`} mark={mark} />
      ))}
    </defs>
  )
  const box = ({ key, mark }: (typeof ends)[number]) => ({ fill: `url(#${id}${key})`, style: { stroke: mark.colour } })
  return (
    <ChartFigure
      title={say.chart(of)}
      summary={swingsSummary(swings, say, numbers)}
      table={{
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
      }}
      legend={[
        ...ends.map((end, index) => ({
          text: say[end.text],
          sample: (
            <svg width={20} height={14} aria-hidden="true" className={styles.sample}>
              {index === 0 && fills}
              <rect x={edge} y={edge} width={18} height={12} {...box(end)} />
            </svg>
          ),
        })),
        {
          text: say.allAtLikely,
          sample: (
            <svg width={20} height={14} aria-hidden="true" className={styles.sample}>
              <line x1={10} x2={10} y1={0} y2={14} className={styles.likely} />
            </svg>
          ),
        },
      ]}
      draw={(width) => {
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
                  {longerFirst(bar).map((end) => {
                    const [from, to] = [scale(likely), scale(bar[end.key])]
                    return (
                      from !== to && (
                        <rect
                          key={end.key}
                          x={Math.min(from, to)}
                          y={edge}
                          width={Math.abs(to - from)}
                          height={barHeight - 2 * edge}
                          {...box(end)}
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
      }}
    />
  )
}
