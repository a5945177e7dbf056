/** Stock plants: how many the cuttings of a species take, and what a cutting off them costs. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { stockPlants } from '../../../../src/workbook/season/tables/stockPlants'
import { fraction, product, sum } from '../fraction'
import type { OrderRow } from './orders'
import type { Setup } from './setup'
import { typed, type ResultsOf } from './typed'

export function stockOf(row: SeasonData['stock'][number], orders: readonly OrderRow[], { hourCost }: Setup) {
  const ofSpecies = orders.filter((order) => order.typed.species === row.species)
  const cuttings = sum(ofSpecies.map(({ shown }) => shown.planned.plus(shown.batched)))
  const perPlant = product([typed(row.perFlush), typed(row.flushes), typed(row.usable, 1)])
  const plants = cuttings
    .over(perPlant)
    .over(fraction(1).minus(typed(row.spare, 0)))
    .up()
  const taking = row.work === undefined ? fraction(0) : hourCost.over(typed(row.work))
  return {
    cuttings,
    plants,
    toAdd: plants.minus(typed(row.kept, 0)).atLeast(0),
    perCutting: plants.times(typed(row.perPlant)).over(cuttings).plus(taking),
  } satisfies ResultsOf<typeof stockPlants>
}
