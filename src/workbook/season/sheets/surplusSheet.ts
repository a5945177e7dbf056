import { overstick } from '../../../functions/counting/overstick'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf, stateOf, type FigureOf } from '../table/figures'
import { figuresSheet, type TypedFigures } from '../table/figuresSheet'
import { lookUp, type ColumnOf } from '../table/table'
import { quoting, surplus } from '../tables/answers'
import { orders } from '../tables/orders'

const at = (key: FigureOf<typeof surplus>) => figureOf(surplus, key)
const ofLine = (column: ColumnOf<typeof orders>) => lookUp(orders, at('line'), column)

export function surplusSheet(mark: string, typed: TypedFigures<typeof surplus>): NamedSheet {
  return figuresSheet(
    surplus,
    {
      title: 'How many pay',
      about: ['How many cuttings of an order line to stick where a missing liner costs more than a spare one.'],
      needs: [[`${stateOf(quoting)}<>"ready"`, '"Quote is not complete"']],
      results: {
        lost: `${figureOf(quoting, 'price')}-${figureOf(quoting, 'later')}+${at('penalty')}`,
        pays: call(overstick, {
          liners: ofLine('liners'),
          stageRates: ofLine('rate'),
          costPerCutting: ofLine('costPerCutting'),
          lostPerMissingLiner: at('lost'),
          valuePerSurplusLiner: at('value'),
          batchSpread: ofLine('spreadUsed'),
        }),
        planned: ofLine('cuttings'),
        more: `${at('pays')}-${at('planned')}`,
      },
    },
    mark,
    typed,
  )
}
