/** The workbook of a season: the same sheets over what any nursery typed. */
import { referencesIn } from '../../formula/rangesRead'
import type { Book } from '../book'
import type { NamedSheet } from './cells'
import { figureOf } from './table/figures'
import { rowsOf } from './table/rowsSheet'
import { all } from './table/table'
import { spilledColumn } from './table/spilled'
import { monday, overview, standing, toStick } from './tables/answers'
import { calendar } from './tables/calendar'
import type { TypedFigures } from './table/figuresSheet'
import type { Typed } from './table/tableSheet'
import { batchesSheet } from './sheets/batchesSheet'
import { blendsSheet } from './sheets/blendsSheet'
import { calendarSheet } from './sheets/calendarSheet'
import { componentsSheet } from './sheets/componentsSheet'
import { containersSheet } from './sheets/containersSheet'
import { listsSheet } from './sheets/listsSheet'
import { mediaSheet } from './sheets/mediaSheet'
import { methodsSheet } from './sheets/methodsSheet'
import { ordersSheet } from './sheets/ordersSheet'
import { setupSheet } from './sheets/setupSheet'
import type { past } from './tables/past'
import type { stockPlants } from './tables/stockPlants'
import type { breaks } from './tables/breaks'
import type { offers } from './tables/offers'
import type { periods } from './tables/periods'
import { doubtful, type doubts } from './tables/doubts'
import { reviewed, type review } from './tables/review'
import type { cheapest, compareMethods, mixing, quoting, reuse, risk, surplus, timing } from './tables/answers'
import { breaksSheet } from './sheets/breaksSheet'
import { cheapestSheet } from './sheets/cheapestSheet'
import { compareSheet } from './sheets/compareSheet'
import { doubtsSheet } from './sheets/doubtsSheet'
import { mondaySheet } from './sheets/mondaySheet'
import { mixingSheet } from './sheets/mixingSheet'
import { offersSheet } from './sheets/offersSheet'
import { overviewSheet } from './sheets/overviewSheet'
import { pastSheet } from './sheets/pastSheet'
import { periodsSheet } from './sheets/periodsSheet'
import { quoteSheet } from './sheets/quoteSheet'
import { reuseSheet } from './sheets/reuseSheet'
import { reviewSheet } from './sheets/reviewSheet'
import { riskSheet } from './sheets/riskSheet'
import { stockSheet } from './sheets/stockSheet'
import { surplusSheet } from './sheets/surplusSheet'
import { timingSheet } from './sheets/timingSheet'
import type { batches } from './tables/batches'
import type { blends } from './tables/blends'
import type { components } from './tables/components'
import { containerKinds, type containers } from './tables/containers'
import { packUnits, type media } from './tables/media'
import { methodKinds, standings, type methods } from './tables/methods'
import { orders } from './tables/orders'
import { setup } from './tables/setup'

/** What a nursery typed; the sheets calculate everything else. */
export interface SeasonData {
  /** Below the title of every sheet: whose figures they are, or what to do. */
  readonly mark: string
  readonly setup: TypedFigures<typeof setup>
  readonly containers: Typed<typeof containers>
  readonly media: Typed<typeof media>
  readonly blends: Typed<typeof blends>
  readonly components: Typed<typeof components>
  readonly methods: Typed<typeof methods>
  readonly orders: Typed<typeof orders>
  readonly batches: Typed<typeof batches>
  readonly past: Typed<typeof past>
  readonly stock: Typed<typeof stockPlants>
  readonly doubts: Typed<typeof doubts>
  readonly breaks: Typed<typeof breaks>
  readonly offers: Typed<typeof offers>
  readonly periods: Typed<typeof periods>
  readonly review: Typed<typeof review>
  readonly compare: TypedFigures<typeof compareMethods>
  readonly reuse: TypedFigures<typeof reuse>
  readonly monday: TypedFigures<typeof monday>
  readonly mixing: TypedFigures<typeof mixing>
  readonly risk: TypedFigures<typeof risk>
  readonly quote: TypedFigures<typeof quoting>
  readonly surplus: TypedFigures<typeof surplus>
  readonly cheapest: TypedFigures<typeof cheapest>
  readonly timing: TypedFigures<typeof timing>
  /** How many empty rows stand below those of each table. */
  readonly open: Readonly<Record<TableName, number>>
}

/** The pane reads these, whether or not a formula does. */
const readByPane = new Set([
  figureOf(setup, 'firstDay'),
  figureOf(setup, 'longestPriceAge'),
  figureOf(setup, 'currency'),
  all(orders, 'line'),
  ...Object.keys(calendar.columns).map((key) => rowsOf(calendar, key as keyof typeof calendar.columns)),
  figureOf(overview, 'complete'),
  ...Object.keys(monday.results).map((key) => figureOf(monday, key as keyof typeof monday.results)),
  ...[toStick, standing].flatMap(({ name, headings }) => [
    name,
    ...Object.keys(headings).map((key) => spilledColumn(name, key)),
  ]),
])

type TableName =
  | 'containers'
  | 'media'
  | 'blends'
  | 'components'
  | 'methods'
  | 'orders'
  | 'batches'
  | 'past'
  | 'stock'
  | 'doubts'
  | 'breaks'
  | 'offers'
  | 'periods'
  | 'review'

export function season({ mark, open, ...typed }: SeasonData): Book {
  const parts: readonly NamedSheet[] = [
    overviewSheet(mark),
    calendarSheet(mark),
    mondaySheet(mark, typed.monday),
    setupSheet(mark, typed.setup),
    containersSheet(mark, typed.containers, open.containers),
    mediaSheet(mark, typed.media, open.media),
    blendsSheet(mark, typed.blends, open.blends),
    componentsSheet(mark, typed.components, open.components),
    methodsSheet(mark, typed.methods, open.methods),
    ordersSheet(mark, typed.orders, open.orders),
    batchesSheet(mark, typed.batches, open.batches),
    pastSheet(mark, typed.past, open.past),
    stockSheet(mark, typed.stock, open.stock),
    mixingSheet(mark, typed.mixing),
    compareSheet(mark, typed.compare, typed.methods.length + open.methods),
    reuseSheet(mark, typed.reuse),
    doubtsSheet(mark, typed.doubts, open.doubts),
    riskSheet(mark, typed.risk, typed.doubts.length + open.doubts),
    breaksSheet(mark, typed.breaks, open.breaks),
    quoteSheet(mark, typed.quote, typed.breaks.length + open.breaks),
    surplusSheet(mark, typed.surplus),
    offersSheet(mark, typed.offers, open.offers),
    cheapestSheet(mark, typed.cheapest, typed.offers.length + open.offers),
    periodsSheet(mark, typed.periods, open.periods),
    timingSheet(mark, typed.timing, typed.periods.length + open.periods),
    reviewSheet(mark, typed.review, open.review),
    listsSheet([
      { heading: 'Kinds of containers', ...containerKinds },
      { heading: 'Kinds of methods', ...methodKinds },
      { heading: 'Stands on', ...standings },
      { heading: 'Units of packs', ...packUnits },
      { heading: 'Arguments', ...doubtful },
      { heading: 'Kinds of items', ...reviewed },
    ]),
  ]
  const sheets = parts.map(({ sheet }) => sheet)
  const read = new Set(
    sheets.flatMap(({ rows }) =>
      rows.flatMap((row) =>
        row.flatMap((cell) => [
          ...(cell?.formula === undefined ? [] : referencesIn(cell.formula)),
          ...(cell?.allowed !== undefined && 'list' in cell.allowed ? [cell.allowed.list] : []),
        ]),
      ),
    ),
  )
  const isRead = (name: string) => read.has(name) || readByPane.has(name) || name.endsWith('State')
  return { sheets, names: parts.flatMap(({ names }) => names.filter(({ name }) => isRead(name))) }
}
