import { stockPlan } from '../../../functions/review/stockPlan'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { money } from '../table/column'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { spilled } from '../table/spilled'
import { all, type ColumnOf, countOf, countReady, lookUp, notComplete, sumWhere } from '../table/table'
import { timing } from '../tables/answers'
import { batches } from '../tables/batches'
import { media } from '../tables/media'
import { methods } from '../tables/methods'
import { orders } from '../tables/orders'
import { periods } from '../tables/periods'

const at = (key: FigureOf<typeof timing>) => figureOf(timing, key)
const ofMethod = (column: ColumnOf<typeof methods>) => lookUp(methods, at('method'), column)
const ofMedium = (column: ColumnOf<typeof media>) => lookUp(media, at('medium'), column)
const expansion = `IF(${ofMedium('expansion')}=0,1,${ofMedium('expansion')})`

export function timingSheet(mark: string, typed: TypedFigures<typeof timing>, spans: number): NamedSheet {
  return figuresSheet(
    timing,
    {
      title: 'Timing',
      about: [
        'One medium over the sticking weeks: fewer deliveries cost less freight and more room, and the price changes on the way.',
      ],
      needs: [
        [`${countOf(media, 'name', `${ofMethod('medium')}&""`)}=0`, '"Method: not filled with a medium as on Media"'],
      ],
      results: {
        medium: ofMethod('medium'),
        perContainer: ofMethod('loose'),
        pack: `${ofMedium('declared')}*${expansion}*(1-${ofMedium('waste')})`,
        onHand: `ROUNDDOWN(ROUND(${ofMedium('onHand')}/${ofMedium('declared')}/${expansion},9),0)`,
        missed: `${sumWhere(orders, 'pieces', 'method', at('method'))}+${sumWhere(batches, 'pieces', 'method', at('method'))}-SUM(${all(periods, 'containers')})`,
      },
      tables: [
        spilled(stockPlan, {
          name: 'TimingTable',
          formula: whenReady(
            timing,
            `IF(OR(${notComplete(periods)}>0,${countReady(periods)}=0),"Periods are not complete",${call(stockPlan, {
              needsPerPeriod: all(periods, 'packs'),
              orderCosts: at('delivery'),
              holdingCostPerUnitPeriod: at('holding'),
              unitPrices: all(periods, 'price'),
              onHand: at('onHand'),
            })})`,
          ),
          formats: { period: formats.count, order: formats.count, stock: formats.count, cost: formats.price },
          units: { period: 'The cheapest timing', order: 'packs', stock: 'packs', cost: money() },
          height: spans + 1,
        }),
      ],
    },
    mark,
    typed,
  )
}
