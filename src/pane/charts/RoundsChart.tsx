import { makeStyles } from '@fluentui/react-components'
import type { ReactNode } from 'react'
import type { Rounds, RoundsLine, SingleUse } from '../../workbook/compare/rounds'
import type { Words } from '../../wording/words'
import type { NumberText } from '../settings/numberText'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { ChartFigure, type ChartTable } from './ChartFigure'
import { markOf } from './marks'
import { ringRadius, RoundsDrawing, Shape, singlesOf, strokeOf, useRoundsStyles } from './RoundsDrawing'
import { roundsSummary } from './summaries'

const useStyles = makeStyles({
  sample: { flexShrink: 0 },
})

const [sampleWidth, sampleHeight] = [34, 16]
type RoundsWords = Words['compare']['rounds']

/** In a cell of the table: it does not serve so many rounds. */
const none = '–'

/** A line for each thing used again, over the rounds it serves, beside that of single use. */
export function RoundsChart({ rounds }: { readonly rounds: Rounds }) {
  const styles = useRoundsStyles()
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
      draw={(width) => <RoundsDrawing rounds={rounds} width={width} />}
    />
  )
}

function Sample({ height = sampleHeight, children }: { readonly height?: number; readonly children: ReactNode }) {
  const styles = useStyles()
  return (
    <svg width={sampleWidth} height={height} aria-hidden="true" className={styles.sample}>
      {children}
    </svg>
  )
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
