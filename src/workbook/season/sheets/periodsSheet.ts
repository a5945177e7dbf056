import type { NamedSheet } from '../cells'
import { figureOf, stateOf } from '../table/figures'
import { all, type ColumnOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { timing } from '../tables/answers'
import { batches } from '../tables/batches'
import { orders } from '../tables/orders'
import { periods } from '../tables/periods'

/** Containers of the method that are filled from one day until before another. */
function filled(from: string, until: string): string {
  const method = figureOf(timing, 'method')
  const ofOrders = (column: ColumnOf<typeof orders>) => all(orders, column)
  const ofBatches = (column: ColumnOf<typeof batches>) => all(batches, column)
  return (
    `SUMIFS(${ofOrders('pieces')},${ofOrders('method')},${method},${ofOrders('stickDay')},">="&${from},${ofOrders('stickDay')},"<"&${until})` +
    `+SUMIFS(${ofBatches('pieces')},${ofBatches('method')},${method},${ofBatches('day')},">="&${from},${ofBatches('day')},"<"&${until})`
  )
}

export function periodsSheet(mark: string, rows: Typed<typeof periods>, open: number): NamedSheet {
  const soFar = (until: string) => `SUMIF(${all(periods, 'until')},"<="&${until},${all(periods, 'containers')})`
  const packs = (containers: string) =>
    `ROUNDUP(ROUND(${containers}*${figureOf(timing, 'perContainer')}/${figureOf(timing, 'pack')},9),0)`
  return tableSheet(
    periods,
    {
      title: 'Periods',
      about: [
        'When the medium that Timing asks about is needed, and the price that is expected then: one row after the other in time.',
      ],
      needs: ({ from, until }) => [
        [`${stateOf(timing)}<>"ready"`, '"see Timing"'],
        [`${until}<=${from}`, '"Until before: later than From"'],
      ],
      results: {
        containers: (r) => filled(r.from, r.until),
        packsSoFar: (r) => packs(soFar(r.until)),
        packs: (r) => `${r.packsSoFar}-${packs(soFar(r.from))}`,
      },
    },
    mark,
    rows,
    open,
  )
}
