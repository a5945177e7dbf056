import type { NamedSheet } from '../cells'
import { figureOf, stateOf, type FigureOf, type Figures } from '../table/figures'
import { figuresSheet } from '../table/figuresSheet'
import { rowsOf } from '../table/rowsSheet'
import { all, countReady, notComplete, type Table } from '../table/table'
import {
  cheapest,
  compareMethods,
  mixing,
  monday,
  overview,
  quoting,
  reuse,
  risk,
  surplus,
  timing,
} from '../tables/answers'
import { batches } from '../tables/batches'
import { blends } from '../tables/blends'
import { breaks } from '../tables/breaks'
import { calendar } from '../tables/calendar'
import { components } from '../tables/components'
import { containers } from '../tables/containers'
import { doubts } from '../tables/doubts'
import { media } from '../tables/media'
import { methods } from '../tables/methods'
import { offers } from '../tables/offers'
import { orders } from '../tables/orders'
import { past } from '../tables/past'
import { periods } from '../tables/periods'
import { review } from '../tables/review'
import { setup } from '../tables/setup'
import { stockPlants } from '../tables/stockPlants'

const at = (key: FigureOf<typeof overview>) => figureOf(overview, key)

/** In the order of the work: what the figures of the season rest on. */
const needed: readonly Table[] = [containers, media, blends, components, methods, orders, batches, past, stockPlants]
const alsoTyped: readonly Table[] = [breaks, offers, periods, review]
const answers: readonly Figures[] = [monday, mixing, compareMethods, reuse, risk, quoting, surplus, cheapest, timing]

/** The first thing that is not complete, causes first. */
function completeness(): string {
  const tables = [...needed, ...alsoTyped].map((table): readonly [string, string] => [
    `${notComplete(table)}>0`,
    `"Not complete: "&${notComplete(table)}&" on ${table.sheet}"`,
  ])
  const checks: readonly (readonly [string, string])[] = [
    [`${stateOf(setup)}<>"ready"`, `"Not complete: Setup. "&${stateOf(setup)}`],
    ...tables,
    [`${countReady(orders)}=0`, '"Nothing ordered yet: type the first line on Orders"'],
    [
      `ISERROR(${[at('rooting'), at('buying'), at('expected'), at('fullWeeks')].join('+')})`,
      '"An error stands behind the totals: see Check in the pane"',
    ],
    ...answers.map(
      (figures) =>
        [
          `AND(LEN(${asked(figures)})>0,${stateOf(figures)}<>"ready")`,
          `"Not complete: ${figures.sheet}. "&${stateOf(figures)}`,
        ] as const,
    ),
    // Risk waits for the doubts, and they for its method.
    [
      `AND(LEN(${asked(risk)})>0,${notComplete(doubts)}>0)`,
      `"Not complete: "&${notComplete(doubts)}&" on ${doubts.sheet}"`,
    ],
  ]
  return checks.reduceRight((rest, [when, sentence]) => `IF(${when},${sentence},${rest})`, '"Every sheet is complete."')
}

/** What a sheet asks first: as long as it is blank, nobody asks, and the sheet answers with a dash. */
function asked(figures: Figures): string {
  return figureOf(figures, Object.keys(figures.typed)[0]!)
}

/** A figure that other sheets answer, once they are complete. */
function once(figures: Figures, figure: string): string {
  return `IF(${stateOf(figures)}="ready",${figure},"–")`
}

/** A figure over rows of tables that are all complete, else a word that no sum takes for a number. */
function sumOnce(tables: readonly Table[], figure: string): string {
  return `IF(${tables.map((table) => notComplete(table)).join('+')}>0,"not complete",${figure})`
}

/** The first or the last day on which something is stuck: of what is still to plan, and of the batches. */
function dayOf(least: 'MIN' | 'MAX'): string {
  const planned = `IF((${all(orders, 'state')}="ready")*(${all(orders, 'pieces')}<>0),${all(orders, 'stickDay')},"")`
  const days = `${planned},${all(batches, 'day')}`
  return `IF(COUNT(${days})=0,"–",${least}(${days}))`
}

/** Past batches say how much is stuck, and what goes into a blend what it costs. */
const ofOrders: readonly Table[] = [components, methods, orders, batches, past]
const whole = needed

export function overviewSheet(mark: string): NamedSheet {
  const sum = (table: Table, column: string) => `SUM(${all<Table>(table, column)})`
  return figuresSheet(
    overview,
    {
      title: 'One season of propagation',
      about: [
        'Type into the boxed cells of the sheets behind this one: every other number follows from them. Figures are without recoverable tax; costs here are no tax advice.',
      ],
      sections: {
        lines: 'What was promised, what it takes',
        media: 'What it costs',
        fullWeeks: 'What does not fit',
        winner: 'Which method wins',
        floor: 'What to ask for it',
        variance: 'Where the money went',
      },
      results: {
        complete: completeness(),
        lines: sumOnce([orders], countReady(orders)),
        liners: sumOnce([orders], sum(orders, 'liners')),
        cuttings: sumOnce(ofOrders, sum(orders, 'cuttings')),
        expected: sumOnce(ofOrders, sum(orders, 'expected')),
        firstDay: sumOnce(ofOrders, dayOf('MIN')),
        lastDay: sumOnce(ofOrders, dayOf('MAX')),
        media: sumOnce(whole, sum(media, 'cost')),
        containers: sumOnce(whole, sum(containers, 'cost')),
        buying: sumOnce(whole, `${at('media')}+${at('containers')}`),
        rooting: sumOnce(ofOrders, sum(orders, 'cost')),
        perLiner: sumOnce(ofOrders, `IF(${at('liners')}=0,"–",${at('rooting')}/${at('liners')})`),
        fullWeeks: sumOnce(ofOrders, `SUMPRODUCT(--(LEN(${rowsOf(calendar, 'note')})>0))`),
        firstFull: sumOnce(
          ofOrders,
          `IF(${at('fullWeeks')}=0,"every week fits",INDEX(${rowsOf(calendar, 'week')},MATCH(TRUE,INDEX(LEN(${rowsOf(calendar, 'note')})>0,0),0))&": "&INDEX(${rowsOf(calendar, 'note')},MATCH(TRUE,INDEX(LEN(${rowsOf(calendar, 'note')})>0,0),0)))`,
        ),
        outside: sumOnce(
          ofOrders,
          `${sum(orders, 'planned')}+${sum(batches, 'cuttings')}-SUM(${rowsOf(calendar, 'toStick')})`,
        ),
        undelivered: sumOnce(ofOrders, `${sum(orders, 'liners')}-SUM(${rowsOf(calendar, 'deliveries')})`),
        late: sumOnce(ofOrders, `${countReady(orders)}-COUNTIF(${all(orders, 'note')},"in time")`),
        heavy: sumOnce([methods], `COUNTIF(${all(methods, 'heavy')},"more*")`),
        short: sumOnce(ofOrders, sum(orders, 'short')),
        winner: once(compareMethods, figureOf(compareMethods, 'winner')),
        winnerCost: once(compareMethods, figureOf(compareMethods, 'perLiner')),
        next: once(compareMethods, figureOf(compareMethods, 'next')),
        ahead: once(compareMethods, figureOf(compareMethods, 'ahead')),
        pays: once(reuse, figureOf(reuse, 'pays')),
        atMost: once(risk, figureOf(risk, 'atMost')),
        widest: once(risk, figureOf(risk, 'widest')),
        floor: once(quoting, figureOf(quoting, 'floor')),
        price: once(quoting, figureOf(quoting, 'price')),
        answer: once(quoting, figureOf(quoting, 'answer')),
        variance: sumOnce([...whole, review], `IF(${countReady(review)}=0,"–",${sum(review, 'total')})`),
      },
    },
    mark,
    {},
  )
}
