import { motherPlants } from '../../../functions/counting/motherPlants'
import { labourCost } from '../../../functions/cost/labourCost'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf } from '../table/figures'
import { countOf, sumWhere } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { orders } from '../tables/orders'
import { setup } from '../tables/setup'
import { stockPlants } from '../tables/stockPlants'

export function stockSheet(mark: string, rows: Typed<typeof stockPlants>, open: number): NamedSheet {
  return tableSheet(
    stockPlants,
    {
      title: 'Stock plants',
      about: [
        'How many stock plants the cuttings of a species take, and what a cutting off them costs. Methods and Orders go by the price typed there.',
      ],
      needs: ({ species, perFlush, flushes }) => [
        ['SetupState<>"ready"', '"see Setup"'],
        [`${countOf(orders, 'species', species)}=0`, '"Species: not on Orders"'],
        [`OR(${perFlush}<=0,${flushes}<1)`, '"Cuttings and flushes: more than 0"'],
      ],
      results: {
        cuttings: (r) =>
          `${sumWhere(orders, 'planned', 'species', r.species)}+${sumWhere(orders, 'batched', 'species', r.species)}`,
        plants: (r) =>
          call(motherPlants, {
            cuttings: r.cuttings,
            perPlantAndFlush: r.perFlush,
            flushes: r.flushes,
            usableShare: r.usable,
            spareShare: r.spare,
          }),
        toAdd: (r) => `MAX(0,${r.plants}-${r.kept})`,
        perCutting: (r) =>
          `${r.plants}*${r.perPlant}/${r.cuttings}+IF(LEN(${r.work})=0,0,${call(labourCost, {
            unitsPerHour: r.work,
            wagePerHour: figureOf(setup, 'wage'),
            onCostShare: figureOf(setup, 'onCosts'),
          })})`,
      },
    },
    mark,
    rows,
    open,
  )
}
