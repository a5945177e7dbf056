import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { line, symbol } from 'd3-shape'
import type { Rounds, RoundsPoint, SingleUse } from '../../workbook/compare/rounds'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { BottomAxis, LeftAxis, type Scale } from './Axis'
import { domainOf } from './domainOf'
import { markOf, type Mark } from './marks'

export const useRoundsStyles = makeStyles({
  drawing: { display: 'block' },
  axisName: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  roundsName: { textAlign: 'end' },
  single: { stroke: tokens.colorNeutralForeground1, strokeWidth: '3px' },
  ring: { fill: 'none', stroke: tokens.colorNeutralForeground1, strokeWidth: '2px' },
  // Its ground parts it from the lines that it lies on.
  text: {
    paintOrder: 'stroke',
    stroke: tokens.colorNeutralBackground1,
    strokeWidth: '4px',
    fill: tokens.colorNeutralForeground1,
    fontSize: tokens.fontSizeBase200,
    fontFamily: tokens.fontFamilyBase,
    fontWeight: tokens.fontWeightSemibold,
  },
})

const height = 240
const margin = { left: 44, right: 12, top: 22, bottom: 26 }
/** In square pixels, as symbols are measured. */
const shapeArea = 56
export const ringRadius = 9
/** What a marked round needs beside it, so that its words do not lie on the axis. */
const halfLabel = 40

/** The lines and points at a width, with the rounds from which something is no dearer. */
export function RoundsDrawing({ rounds, width }: { readonly rounds: Rounds; readonly width: number }) {
  const styles = useRoundsStyles()
  const numbers = useNumberText()
  const { rounds: say } = useWords().compare
  const { unit, lines } = rounds
  const singles = singlesOf(rounds)
  const points = lines.flatMap((one) => one.points)
  const x = scaleLinear(domainOf([1, ...points.map(({ round }) => round)]), [margin.left, width - margin.right])
  const y = scaleLinear(domainOf([...points.map(({ cost }) => cost), ...singles.map(({ cost }) => cost)]), [
    height - margin.bottom,
    margin.top,
  ]).nice(5)
  const path = line<RoundsPoint>(
    ({ round }) => x(round),
    ({ cost }) => y(cost),
  )
  return (
    <>
      <div className={styles.axisName}>{numbers.unit(unit)}</div>
      <svg width={width} height={height} className={styles.drawing}>
        <BottomAxis
          scale={x}
          ticks={6}
          at={height - margin.bottom}
          gridTo={margin.top}
          text={(round) => (Number.isInteger(round) ? numbers.label(round) : '')}
        />
        <LeftAxis scale={y} ticks={5} at={margin.left} gridTo={width - margin.right} />
        {singles.map(({ cost }) => (
          <line
            key={cost}
            x1={margin.left}
            x2={width - margin.right}
            y1={y(cost)}
            y2={y(cost)}
            className={styles.single}
          />
        ))}
        {lines.map(({ points: own }, series) => {
          const last = own.at(-1)!
          return (
            <g key={series}>
              <path d={path(own) ?? ''} fill="none" style={strokeOf(markOf(series))} />
              <Shape mark={markOf(series)} x={x(last.round)} y={y(last.cost)} />
            </g>
          )
        })}
        {/* After all lines, so that none runs through the words. */}
        <BreakEvens rounds={rounds} x={x} y={y} />
      </svg>
      <div className={mergeClasses(styles.axisName, styles.roundsName)}>{say.roundsServed}</div>
    </>
  )
}

interface BreakEvensProps {
  readonly rounds: Rounds
  readonly x: Scale
  readonly y: Scale
}

/** A ring around each point from which something used again is no dearer. */
function BreakEvens({ rounds, x, y }: BreakEvensProps) {
  const styles = useRoundsStyles()
  const numbers = useNumberText()
  const { rounds: say } = useWords().compare
  const marked = rounds.lines.flatMap(({ breakEven }) => breakEven ?? [])
  // The words for several rounds would lie on each other; the key has them all.
  const markText = (round: string) => (marked.length === 1 ? say.round(round) : round)
  return marked.map(({ round, cost }, place) => (
    <g key={place}>
      <circle cx={x(round)} cy={y(cost)} r={ringRadius} className={styles.ring} />
      <text
        x={marked.length === 1 ? Math.max(x(round), margin.left + halfLabel) : x(round)}
        y={y(cost) - ringRadius - 4}
        textAnchor="middle"
        className={styles.text}
      >
        {markText(numbers.label(round))}
      </text>
    </g>
  ))
}

export function Shape({ mark, x, y }: { readonly mark: Mark; readonly x: number; readonly y: number }) {
  return (
    <path d={symbol(mark.shape, shapeArea)() ?? ''} transform={`translate(${x} ${y})`} style={{ fill: mark.colour }} />
  )
}

export function strokeOf({ colour, dash }: Mark) {
  return { stroke: colour, strokeWidth: 2, strokeDasharray: dash }
}

export function singlesOf({ singleUse }: Rounds): readonly SingleUse[] {
  return singleUse === undefined ? [] : [singleUse]
}
