import { makeStyles, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { stack, stackOffsetDiverging } from 'd3-shape'
import { useId } from 'react'
import { costParts, type CostPart } from '../../workbook/compare/rooted'
import type { WayCost } from '../../workbook/compare/ways'
import type { Words } from '../../wording/words'
import { useWords } from '../useWords'
import { useNumberText } from '../settings/useNumberText'
import { BottomAxis } from './Axis'
import { ChartFigure, type ChartTable } from './ChartFigure'
import { markOf } from './marks'
import { PatternFill } from './PatternFill'
import { waysSummary } from './summaries'

const useStyles = makeStyles({
  label: {
    display: 'flex',
    justifyContent: 'space-between',
    columnGap: tokens.spacingHorizontalM,
    marginTop: tokens.spacingVerticalXS,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  total: { fontWeight: tokens.fontWeightSemibold, fontVariantNumeric: 'tabular-nums' },
  drawing: { display: 'block' },
})

const [barHeight, axisHeight, edge] = [18, 26, 1]

/** A bar for each rooting method, stacked from its parts. */
export function WaysChart({ ways }: { readonly ways: readonly WayCost[] }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const id = useId()
  const { compare } = useWords()
  const { ways: say } = compare
  // A part that no way tells apart is not drawn as if it cost nothing.
  const shown = costParts.filter((part) => ways.some(({ parts }) => parts[part] !== undefined))
  const untold = ways.filter(({ parts }) => parts.bench === undefined).map(({ name }) => name)
  return (
    <ChartFigure
      title={say.chart}
      summary={[waysSummary(ways, say, numbers), ...(untold.length === 0 ? [] : [say.oneNumber(untold)])].join(' ')}
      table={tableOf(ways, shown, compare)}
      legend={shown.map((part, index) => ({
        text: say.partFrom(part, headingsOf(ways, part)),
        sample: (
          <svg width={20} height={14} aria-hidden="true" className={styles.drawing} style={{ flexShrink: 0 }}>
            {index === 0 && <Fills parts={shown} id={id} />}
            <rect x={edge} y={edge} width={18} height={12} {...boxOf(part, id)} />
          </svg>
        ),
      }))}
      draw={(width) => <Drawing ways={ways} shown={shown} width={width} id={id} />}
    />
  )
}

interface DrawingProps {
  readonly ways: readonly WayCost[]
  /** The parts that are told apart. */
  readonly shown: readonly CostPart[]
  readonly width: number
  /** Of the fills that stand in the key. */
  readonly id: string
}

function Drawing({ ways, shown, width, id }: DrawingProps) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { perLiner: unit } = useWords().compare
  const stacked = stack<unknown, WayCost, CostPart>()
    .keys(shown)
    .value(({ parts }, key) => parts[key] ?? 0)
    .offset(stackOffsetDiverging)(ways)
  const ends = stacked.flatMap((part) => part.flatMap(([start, end]) => [start, end]))
  const scale = scaleLinear([Math.min(0, ...ends), Math.max(0, ...ends)], [edge, width - edge]).nice(4)
  return (
    <>
      {ways.map(({ name, perLiner }, way) => (
        <div key={way}>
          <div className={styles.label}>
            <span>{name}</span>
            <span className={styles.total}>{numbers.label(perLiner, unit)}</span>
          </div>
          <svg width={width} height={barHeight} className={styles.drawing}>
            {stacked.map((part, index) => {
              const [start, end] = part[way]!
              return (
                start !== end && (
                  <rect
                    key={index}
                    x={scale(start)}
                    y={edge}
                    width={scale(end) - scale(start)}
                    height={barHeight - 2 * edge}
                    {...boxOf(shown[index]!, id)}
                  />
                )
              )
            })}
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

function Fills({ parts, id }: { readonly parts: readonly CostPart[]; readonly id: string }) {
  return (
    <defs>
      {parts.map((part) => (
        <PatternFill key={part} id={`${id}${part}`} mark={markOfPart(part)} />
      ))}
    </defs>
  )
}

/** How the bar of a part looks. */
function boxOf(part: CostPart, id: string) {
  return { fill: `url(#${id}${part})`, style: { stroke: markOfPart(part).colour } }
}

function markOfPart(part: CostPart) {
  return markOf(costParts.indexOf(part))
}

function tableOf(
  ways: readonly WayCost[],
  shown: readonly CostPart[],
  { ways: say, perLiner: unit }: Words['compare'],
): ChartTable {
  return {
    columns: [
      { heading: say.way, unit: 'text' },
      ...shown.map((part) => ({ heading: say.partHeading(part), unit })),
      { heading: say.perLiner, unit },
    ],
    rows: ways.map(({ name, parts, perLiner }) => [name, ...shown.map((part) => parts[part] ?? '–'), perLiner]),
  }
}

function headingsOf(ways: readonly WayCost[], part: CostPart): readonly string[] {
  return [...new Set(ways.flatMap(({ calledIn }) => calledIn?.[part] ?? []))]
}
