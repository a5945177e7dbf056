import { makeStyles, tokens } from '@fluentui/react-components'
import type { ScaleLinear } from 'd3-scale'
import { useNumberText } from '../settings/useNumberText'

const useStyles = makeStyles({
  line: { stroke: tokens.colorNeutralStrokeAccessible, strokeWidth: '1px' },
  grid: { stroke: tokens.colorNeutralStroke2, strokeWidth: '1px' },
  text: { fill: tokens.colorNeutralForeground1, fontSize: tokens.fontSizeBase200, fontFamily: tokens.fontFamilyBase },
})

export type Scale = ScaleLinear<number, number>

interface AxisProps {
  readonly scale: Scale
  readonly ticks: number
  /** Where the axis lies across its own direction, and how far its grid reaches from there. */
  readonly at: number
  readonly gridTo: number
  readonly text?: (value: number) => string
}

const [tick, textGap] = [4, 3]

/** Under a chart. Labels at the very ends are kept inside. */
export function BottomAxis({ scale, ticks, at, gridTo, text }: AxisProps) {
  const styles = useStyles()
  const shown = useTickText(scale, ticks, text)
  const [start, end] = scale.range() as [number, number]
  const nearEnd = 16
  const anchor = (x: number) => (x < start + nearEnd ? 'start' : x > end - nearEnd ? 'end' : 'middle')
  return (
    <g>
      {scale.ticks(ticks).map((value) => {
        const x = scale(value)
        return (
          <g key={value}>
            <line className={styles.grid} x1={x} x2={x} y1={at} y2={gridTo} />
            <line className={styles.line} x1={x} x2={x} y1={at} y2={at + tick} />
            <text
              className={styles.text}
              x={x}
              y={at + tick + textGap}
              dominantBaseline="hanging"
              textAnchor={anchor(x)}
            >
              {shown(value)}
            </text>
          </g>
        )
      })}
      <line className={styles.line} x1={start} x2={end} y1={at} y2={at} />
    </g>
  )
}

/** Left of a chart. */
export function LeftAxis({ scale, ticks, at, gridTo, text }: AxisProps) {
  const styles = useStyles()
  const shown = useTickText(scale, ticks, text)
  return (
    <g>
      {scale.ticks(ticks).map((value) => {
        const y = scale(value)
        return (
          <g key={value}>
            <line className={styles.grid} x1={at} x2={gridTo} y1={y} y2={y} />
            <text className={styles.text} x={at - tick} y={y} dominantBaseline="middle" textAnchor="end">
              {shown(value)}
            </text>
          </g>
        )
      })}
      <line className={styles.line} x1={at} x2={at} y1={scale.range()[0]} y2={scale.range()[1]} />
    </g>
  )
}

/** All labels of an axis have the decimals that its steps need. */
function useTickText(scale: Scale, ticks: number, text: AxisProps['text']): (value: number) => string {
  const { fixed } = useNumberText()
  const decimals = Math.max(
    0,
    ...scale.ticks(ticks).map((value) => String(Number(value.toPrecision(12))).split('.')[1]?.length ?? 0),
  )
  return text ?? ((value) => fixed(value, decimals))
}
