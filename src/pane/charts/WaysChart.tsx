import { makeStyles, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import { stack, stackOffsetDiverging } from 'd3-shape'
import { useId } from 'react'
import { costParts, type CostPart } from '../../workbook/compare/rooted'
import type { WayCost } from '../../workbook/compare/ways'
import { amountText } from './amountText'
import { BottomAxis } from './Axis'
import { ChartFigure } from './ChartFigure'
import { markOf } from './marks'
import { PatternFill } from './PatternFill'
import { waysSummary } from './summaries'

const useStyles = makeStyles({
  label: { display: 'flex', justifyContent: 'space-between', columnGap: tokens.spacingHorizontalM, marginTop: tokens.spacingVerticalXS, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  total: { fontWeight: tokens.fontWeightSemibold, fontVariantNumeric: 'tabular-nums' },
  drawing: { display: 'block' },
})

const unit = 'money per saleable liner'
const [barHeight, axisHeight, edge] = [18, 26, 1]

/** A bar for each way of rooting, stacked from its parts. */
export function WaysChart({ ways }: { readonly ways: readonly WayCost[] }) {
  const styles = useStyles()
  const id = useId()
  const stacked = stack<unknown, WayCost, CostPart>().keys(costParts.map(({ key }) => key)).value(({ parts }, key) => parts[key]).offset(stackOffsetDiverging)(ways)
  const ends = stacked.flatMap((part) => part.flatMap(([start, end]) => [start, end]))
  const fillOf = (part: number) => `${id}${part}`
  const fills = <defs>{costParts.map(({ key }, part) => <PatternFill key={key} id={fillOf(part)} mark={markOf(part)} />)}</defs>
  const box = (part: number) => ({ fill: `url(#${fillOf(part)})`, style: { stroke: markOf(part).colour } })
  return (
    <ChartFigure
      title="Cost of a saleable liner, part by part"
      summary={waysSummary(ways)}
      table={{
        columns: [
          { heading: 'way', text: 'the way of rooting', unit: 'text' },
          ...costParts.map(({ name, text }) => ({ heading: name.toLowerCase(), text, unit })),
          { heading: 'per saleable liner', text: 'the parts together', unit },
        ],
        rows: ways.map(({ name, parts, perLiner }) => [name, ...costParts.map(({ key }) => parts[key]), perLiner]),
      }}
      legend={costParts.map(({ name, text }, part) => ({
        text: `${name}: ${text}`,
        sample: <svg width={20} height={14} aria-hidden="true" className={styles.drawing} style={{ flexShrink: 0 }}>{part === 0 && fills}<rect x={edge} y={edge} width={18} height={12} {...box(part)} /></svg>,
      }))}
      draw={(width) => {
        const scale = scaleLinear([Math.min(0, ...ends), Math.max(0, ...ends)], [edge, width - edge]).nice(4)
        return (
          <>
            {ways.map(({ name, perLiner }, way) => (
              <div key={way}>
                <div className={styles.label}><span>{name}</span><span className={styles.total}>{amountText(perLiner)}</span></div>
                <svg width={width} height={barHeight} className={styles.drawing}>
                  {stacked.map((part, index) => {
                    const [start, end] = part[way]!
                    return start !== end && <rect key={index} x={scale(start)} y={edge} width={scale(end) - scale(start)} height={barHeight - 2 * edge} {...box(index)} />
                  })}
                </svg>
              </div>
            ))}
            <svg width={width} height={axisHeight} className={styles.drawing}><BottomAxis scale={scale} ticks={4} at={edge} gridTo={edge} /></svg>
            <div className={styles.label}>{unit}</div>
          </>
        )
      }}
    />
  )
}
