import { buyPlan } from '../../../functions/buying/buyPlan'
import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { money } from '../table/column'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { fromSpilled, spilled, spilledColumn } from '../table/spilled'
import { all, filtered, countOf, lookUp, notComplete, onlyWhere, type ColumnOf } from '../table/table'
import { cheapest } from '../tables/answers'
import { media } from '../tables/media'
import { offers } from '../tables/offers'

const table = 'CheapestTable'
const at = (key: FigureOf<typeof cheapest>) => figureOf(cheapest, key)
const ofMedium = (column: ColumnOf<typeof media>) => lookUp(media, at('medium'), column)
const offered = (column: ColumnOf<typeof offers>) => onlyWhere(offers, column, 'medium', at('medium'))

export function cheapestSheet(mark: string, typed: TypedFigures<typeof cheapest>, packs: number): NamedSheet {
  return figuresSheet(
    cheapest,
    {
      title: 'The cheapest order',
      about: [
        'Of one medium, out of the packs, price breaks and suppliers on Offers: what covers the need and costs least.',
      ],
      cautions: cautionRows(buyPlan),
      needs: [
        [`${notComplete(offers)}>0`, '"Offers are not complete"'],
        [`${countOf(offers, 'medium', at('medium'))}=0`, '"No offer of it on Offers"'],
      ],
      results: {
        needed: `MAX(${ofMedium('withWaste')}-${ofMedium('onHand')},0)`,
        listed: ofMedium('cost'),
        planned: fromSpilled(
          table,
          `INDEX(${spilledColumn(table, 'cost')},MATCH("total",${spilledColumn(table, 'pack')},0))`,
        ),
        saved: `${at('listed')}-${at('planned')}`,
      },
      tables: [
        spilled(buyPlan, {
          name: table,
          formula: whenReady(
            cheapest,
            call(buyPlan, {
              neededL: at('needed'),
              packNames: offered('pack'),
              packLitres: offered('litres'),
              packPrices: offered('price'),
              breakQuantities: blankAsBlank('breakFrom'),
              breakPrices: blankAsBlank('breakPrice'),
              available: blankAsBlank('available'),
              orderMultiples: blankAsBlank('multiple'),
              supplierNames: offered('supplier'),
              deliveryPerOrder: offered('delivery'),
            }),
          ),
          formats: {
            pack: undefined,
            bags: formats.count,
            litres: formats.count,
            cost: formats.price,
            leftover: formats.count,
          },
          units: { pack: 'What to order', bags: 'packs', litres: 'L loose', cost: money(), leftover: 'L loose' },
          height: packs + 1,
          grows: true,
        }),
      ],
    },
    mark,
    typed,
  )
}

/** A blank cell stays blank, where FILTER would make 0 of it: a limit of none rather than no limit. */
function blankAsBlank(column: 'breakFrom' | 'breakPrice' | 'available' | 'multiple'): string {
  const cells = all(offers, column)
  return filtered(
    `IF(ISNUMBER(${cells}),${cells},"")`,
    `(${all(offers, 'medium')}=${at('medium')})*(${all(offers, 'state')}="ready")`,
  )
}
