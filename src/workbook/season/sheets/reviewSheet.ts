import { variance } from '../../../functions/review/variance'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf } from '../table/figures'
import { lookUp, sumWhere, type RowOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { batches } from '../tables/batches'
import { containers } from '../tables/containers'
import { media } from '../tables/media'
import { methods } from '../tables/methods'
import { orders } from '../tables/orders'
import { review } from '../tables/review'
import { setup } from '../tables/setup'

type Item = RowOf<typeof review>

/** By the kind of the item. */
function byKind({ kind }: Item, medium: string, container: string, cuttings: string, work: string): string {
  return `IF(${kind}="medium",${medium},IF(${kind}="container",${container},IF(${kind}="cuttings",${cuttings},${work})))`
}

export function reviewSheet(mark: string, rows: Typed<typeof review>, open: number): NamedSheet {
  const table = (r: Item) =>
    call(variance, {
      standardQuantity: r.standardQuantity,
      standardPrice: r.standardPrice,
      actualQuantity: r.actualQuantity,
      actualPrice: r.actualPrice,
    })
  // Below the headings: price, usage, total; the amount is the second column, what it reads the third.
  const of = (r: Item, line: 2 | 3 | 4, column: 2 | 3) => `INDEX(${table(r)},${line},${column})`
  return tableSheet(
    review,
    {
      title: 'Review',
      about: [
        'At the end of the season: where more or less was spent than this workbook allows, because the price differed or because the usage did. Positive is adverse.',
      ],
      totals: ['standard', 'actual', 'price', 'usage', 'total'],
      needs: (r) => [
        [
          `ISNA(${byKind(r, lookUp(media, r.item, 'state'), lookUp(containers, r.item, 'state'), lookUp(orders, r.item, 'state'), lookUp(orders, r.item, 'state'))})`,
          '"Item: not on the sheet of its kind"',
        ],
      ],
      results: {
        standardQuantity: (r) =>
          byKind(
            r,
            `ROUNDUP(ROUND(${lookUp(media, r.item, 'withWaste')}/${lookUp(media, r.item, 'declared')}/IF(${lookUp(media, r.item, 'expansion')}=0,1,${lookUp(media, r.item, 'expansion')}),9),0)`,
            lookUp(containers, r.item, 'toBuy'),
            lookUp(orders, r.item, 'cuttings'),
            `${lookUp(orders, r.item, 'hours')}+${sumWhere(batches, 'hours', 'line', r.item)}`,
          ),
        standardPrice: (r) =>
          byKind(
            r,
            `${lookUp(media, r.item, 'price')}+${lookUp(media, r.item, 'delivery')}`,
            lookUp(containers, r.item, 'price'),
            lookUp(methods, lookUp(orders, r.item, 'method'), 'cutting'),
            figureOf(setup, 'hourCost'),
          ),
        standard: (r) => `${r.standardQuantity}*${r.standardPrice}`,
        actual: (r) => `${r.actualQuantity}*${r.actualPrice}`,
        price: (r) => of(r, 2, 2),
        usage: (r) => of(r, 3, 2),
        total: (r) => of(r, 4, 2),
        reads: (r) => of(r, 4, 3),
      },
    },
    mark,
    rows,
    open,
  )
}
