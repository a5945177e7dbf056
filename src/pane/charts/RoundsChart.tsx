import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { line, symbol } from 'd3-shape'
import type { ReactNode } from 'react'
import type { Rounds, RoundsLine, RoundsPoint, SingleUse } from '../../workbook/compare/rounds'
import type { Words } from '../../wording/words'
import type { NumberText } from '../settings/numberText'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { BottomAxis, LeftAxis, type Scale } from './Axis'
import { ChartFigure, type ChartTable } from './ChartFigure'
import { domainOf } from './domainOf'
import { markOf, type Mark } from './marks'
import { roundsSummary } from './summaries'

const useStyles = makeStyles({
  drawing: { display: 'block' },
  sample: { flexShrink: 0 },
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
const [sampleWidth, sampleHeight] = [34, 16]
/** In square pixels, as symbols are measured. */
const shapeArea = 56
const ringRadius = 9
/** What a marked round needs beside it, so that its words do not lie on the axis. */
const halfLabel = 40
type RoundsWords = Words['compare']['rounds']

/** In a cell of the table: it does not serve so many rounds. */
const none = '–'

/** A line for each thing used again, over the rounds it serves, beside that of single use. */
export function RoundsChart({ rounds }: { readonly rounds: Rounds }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { rounds: say } = useWords().compare
  const { lines, singleUse } = rounds
  const centre = sampleHeight / 2
  return (
    <ChartFigure
      title={say.chart}
      summary={roundsSummary(rounds, say, numbers)}
      table={tableOf(rounds, say, numbers)}
      legend={[
        ...lines.map((one, series) => ({
          text: legendText(one, say, numbers),
          sample: (
            <Sample>
              <line x1={0} x2={sampleWidth} y1={centre} y2={centre} style={strokeOf(markOf(series))} />
              <Shape mark={markOf(series)} x={sampleWidth / 2} y={centre} />
            </Sample>
          ),
        })),
        ...singlesOf(rounds).map((single) => ({
          text: singleUseText(single, say),
          sample: (
            <Sample>
              <line x1={0} x2={sampleWidth} y1={centre} y2={centre} className={styles.single} />
            </Sample>
          ),
        })),
        ...(lines.some(({ breakEven }) => breakEven !== undefined)
          ? [
              {
                text: say.tie(singleUse?.name ?? say.anySingleUse),
                sample: (
                  <Sample height={2 * ringRadius + 2}>
                    <circle cx={sampleWidth / 2} cy={ringRadius + 1} r={ringRadius - 1} className={styles.ring} />
                  </Sample>
                ),
              },
            ]
          : []),
      ]}
      draw={(width) => <Drawing rounds={rounds} width={width} />}
    />
  )
}

function Drawing({ rounds, width }: { readonly rounds: Rounds; readonly width: number }) {
  const styles = useStyles()
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
  const styles = useStyles()
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

function Sample({ height = sampleHeight, children }: { readonly height?: number; readonly children: ReactNode }) {
  const styles = useStyles()
  return (
    <svg width={sampleWidth} height={height} aria-hidden="true" className={styles.sample}>
      {children}
    </svg>
  )
}

function Shape({ mark, x, y }: { readonly mark: Mark; readonly x: number; readonly y: number }) {
  return (
    <path d={symbol(mark.shape, shapeArea)() ?? ''} transform={`translate(${x} ${y})`} style={{ fill: mark.colour }} />
  )
}

function strokeOf({ colour, dash }: Mark) {
  return { stroke: colour, strokeWidth: 2, strokeDasharray: dash }
}

function singlesOf({ singleUse }: Rounds): readonly SingleUse[] {
  return singleUse === undefined ? [] : [singleUse]
}

/** A row for each round, a column for each line, and single use beside them. */
function tableOf(rounds: Rounds, say: RoundsWords, { label }: NumberText): ChartTable {
  const { unit, lines } = rounds
  const singles = singlesOf(rounds)
  const costs = lines.map(({ points }) => new Map(points.map(({ round, cost }) => [round, cost])))
  const all = [...new Set(costs.flatMap((ofLine) => [...ofLine.keys()]))].sort((a, b) => a - b)
  const verdicts = lines.map(
    ({ breakEven, neverIn }) => breakEven?.round ?? (neverIn === undefined ? none : say.notIn(label(neverIn))),
  )
  return {
    columns: [
      { heading: say.rounds, unit: 'rounds' },
      ...lines.map(({ name }) => ({ heading: name ?? say.usedAgain, unit })),
      ...singles.map(({ name }) => ({ heading: name === undefined ? say.singleUse : say.singleUseColumn(name), unit })),
    ],
    rows: [
      ...all.map((round) => [
        round,
        ...costs.map((ofLine) => ofLine.get(round) ?? none),
        ...singles.map(({ cost }) => cost),
      ]),
      ...singles.map(() => [say.noDearerFrom, ...verdicts, none]),
    ],
  }
}

/** As the key and a choice have it. */
export function singleUseText({ name, isCheapest }: SingleUse, say: RoundsWords): string {
  if (name === undefined) return say.singleUse
  return isCheapest ? say.cheapestSingleUse(name) : say.usedOnce(name)
}

function legendText(line: RoundsLine, say: RoundsWords, { label }: NumberText): string {
  const { name = say.usedAgain, breakEven, neverIn } = line
  if (breakEven !== undefined) return say.fromRound(name, label(breakEven.round))
  return neverIn === undefined ? name : `${name}: ${say.notIn(label(neverIn))}`
}
