/** Season: the totals of the other sheets, and what does not fit. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { overview } from '../../../../src/workbook/season/tables/answers'
import { fraction, greatest, sum, type Fraction } from '../fraction'
import { doesNotFit, isoWeekOf, type WeekRow } from './calendar'
import type { MethodCosts } from './methods'
import type { OrderRow, Sticking } from './orders'
import { mondayOf, typed, type FiguresOf } from './typed'

/** The figures that Season has of its own; the others are those of the sheets that it names. */
type Own =
  | 'lines'
  | 'liners'
  | 'cuttings'
  | 'expected'
  | 'firstDay'
  | 'lastDay'
  | 'media'
  | 'containers'
  | 'buying'
  | 'rooting'
  | 'perLiner'
  | 'fullWeeks'
  | 'outside'
  | 'late'
  | 'heavy'
  | 'short'
  | 'variance'

interface Sheets {
  readonly orders: readonly OrderRow[]
  readonly stuck: readonly Sticking[]
  readonly methods: readonly MethodCosts[]
  readonly calendar: readonly WeekRow[]
  readonly mediaCosts: readonly Fraction[]
  readonly containerCosts: readonly Fraction[]
  readonly variances: readonly Fraction[]
}

export function overviewOf(data: SeasonData, sheets: Sheets) {
  const { orders, calendar } = sheets
  const stuck = sheets.stuck.filter(({ cuttings }) => !cuttings.equals(0))
  const liners = sum(data.orders.map((order) => typed(order.liners)))
  const rooting = sum(orders.map(({ shown }) => shown.cost))
  const [media, containers] = [sum(sheets.mediaCosts), sum(sheets.containerCosts)]
  const full = calendar.filter(doesNotFit)
  return {
    lines: fraction(orders.length),
    liners,
    cuttings: sum(orders.map(({ shown }) => shown.cuttings)),
    expected: sum(orders.map(({ shown }) => shown.expected)),
    firstDay: stuck.map(({ day }) => day).reduce((first, day) => (day.isBelow(first) ? day : first)),
    lastDay: greatest(stuck.map(({ day }) => day)),
    media,
    containers,
    buying: media.plus(containers),
    rooting,
    perLiner: rooting.over(liners),
    fullWeeks: fraction(full.length),
    outside: sum(
      stuck
        .filter(({ day }) => !calendar.some(({ monday }) => mondayOf(day).equals(monday)))
        .map(({ cuttings }) => cuttings),
    ),
    late: fraction(orders.filter(({ isLate }) => isLate).length),
    heavy: fraction(sheets.methods.filter(({ shown }) => shown.heavy !== '').length),
    short: sum(orders.map(({ shown }) => shown.short)),
    variance: sheets.variances.length === 0 ? '–' : sum(sheets.variances),
  } satisfies Pick<FiguresOf<typeof overview>, Own>
}

/** The first week that does not fit begins with its name. */
export function firstFullOf(calendar: readonly WeekRow[]): string {
  const [first] = calendar.filter(doesNotFit)
  return first === undefined ? 'every week fits' : isoWeekOf(first.monday)
}
