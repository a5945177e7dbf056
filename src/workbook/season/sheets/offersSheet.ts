import { buyPlan } from '../../../functions/buying/buyPlan'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { tableSheet, type Typed } from '../table/tableSheet'
import { offers } from '../tables/offers'

export function offersSheet(mark: string, rows: Typed<typeof offers>, open: number): NamedSheet {
  return tableSheet(
    offers,
    {
      title: 'Offers',
      about: [
        'Packs, price breaks and delivery of several suppliers. Cheapest finds the order of one medium that costs least.',
      ],
      cautions: cautionRows(buyPlan),
      needs: ({ litres, breakFrom, breakPrice }) => [
        [`${litres}<=0`, '"Loose: more than 0"'],
        [`(LEN(${breakFrom})=0)<>(LEN(${breakPrice})=0)`, '"A price break takes its quantity and its price"'],
      ],
      results: {},
    },
    mark,
    rows,
    open,
  )
}
