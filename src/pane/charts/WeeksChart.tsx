import { makeStyles, tokens } from '@fluentui/react-components'
import { scaleLinear } from 'd3-scale'
import type { Weeks } from '../../workbook/season/weeks'
import { useNumberText } from '../settings/useNumberText'
import { useWords } from '../useWords'
import { LeftAxis } from './Axis'
import { ChartFigure } from './ChartFigure'

const useStyles = makeStyles({
  drawing: { display: 'block' },
  fits: { fill: tokens.colorBrandForeground1 },
  // Told apart by its outline too, for those who see no difference of colour.
  tooMuch: {
    fill: tokens.colorPaletteDarkOrangeForeground1,
    stroke: tokens.colorNeutralForeground1,
    strokeWidth: '1.5px',
  },
  limit: { stroke: tokens.colorNeutralForeground1, strokeWidth: '2px', strokeDasharray: '6 3' },
  text: { fill: tokens.colorNeutralForeground1, fontSize: tokens.fontSizeBase200, fontFamily: tokens.fontFamilyBase },
})

const height = 170
const margin = { left: 44, right: 8, top: 12, bottom: 24 }
/** The words of a week take so much room below the chart. */
const roomOfWeek = 70

/** A bar a week of what is taken, and a line of what there is. */
export function WeeksChart({ weeks }: { readonly weeks: Weeks }) {
  const styles = useStyles()
  const numbers = useNumberText()
  const { weeks: say } = useWords().season
  const tooMuch = weeks.weeks.filter(({ taken }) => taken > weeks.thereIs)
  const most = weeks.weeks.reduce((fullest, week) => (week.taken > fullest.taken ? week : fullest))
  const unit = say.units[weeks.of]
  return (
    <ChartFigure
      title={say.titles[weeks.of]}
      summary={[
        say.most(numbers.label(most.taken), unit, most.week, numbers.label(weeks.thereIs)),
        tooMuch.length === 0 ? say.fits : say.doesNotFit(tooMuch.length, tooMuch[0]!.week),
      ].join(' ')}
      table={{
        columns: [
          { heading: say.week, unit: '' },
          { heading: say.taken, unit },
          { heading: say.left, unit },
        ],
        rows: weeks.weeks.map(({ week, taken }) => [week, taken, weeks.thereIs - taken]),
      }}
      legend={[
        { text: say.taken, sample: <Swatch className={styles.fits} /> },
        ...(tooMuch.length === 0 ? [] : [{ text: say.tooMuch, sample: <Swatch className={styles.tooMuch} /> }]),
        {
          text: say.thereIs(numbers.label(weeks.thereIs), unit),
          sample: (
            <svg width={24} height={12} aria-hidden="true">
              <line x1={0} x2={24} y1={6} y2={6} className={styles.limit} />
            </svg>
          ),
        },
      ]}
      draw={(width) => <Drawing weeks={weeks} width={width} />}
    />
  )
}

function Swatch({ className }: { readonly className: string }) {
  return (
    <svg width={24} height={12} aria-hidden="true">
      <rect x={2} y={1} width={20} height={10} className={className} />
    </svg>
  )
}

function Drawing({ weeks: { weeks, thereIs }, width }: { readonly weeks: Weeks; readonly width: number }) {
  const styles = useStyles()
  const y = scaleLinear(
    [0, Math.max(thereIs, ...weeks.map(({ taken }) => taken))],
    [height - margin.bottom, margin.top],
  ).nice(4)
  const step = (width - margin.left - margin.right) / weeks.length
  const every = Math.max(1, Math.ceil(roomOfWeek / step))
  return (
    <svg width={width} height={height} className={styles.drawing}>
      <LeftAxis scale={y} ticks={4} at={margin.left} gridTo={width - margin.right} />
      {weeks.map(({ week, taken }, index) => (
        <rect
          key={week}
          x={margin.left + index * step + step * 0.1}
          width={step * 0.8}
          y={y(taken)}
          height={y(0) - y(taken)}
          className={taken > thereIs ? styles.tooMuch : styles.fits}
        />
      ))}
      <line x1={margin.left} x2={width - margin.right} y1={y(thereIs)} y2={y(thereIs)} className={styles.limit} />
      {weeks.map(({ week }, index) =>
        index % every === 0 && margin.left + index * step + roomOfWeek < width ? (
          <text key={week} x={margin.left + index * step} y={height - 6} className={styles.text}>
            {week}
          </text>
        ) : null,
      )}
    </svg>
  )
}
