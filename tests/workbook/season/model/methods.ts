/** Methods: what a cutting and a saleable liner cost in each way of rooting. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { methods } from '../../../../src/workbook/season/tables/methods'
import { fraction, product, sum, type Fraction } from '../fraction'
import { blendOf } from './blends'
import { volumeOf, type Container } from './cells'
import { litrePriceOf } from './media'
import { discountOf, levelCost } from './reused'
import type { Setup } from './setup'
import { rowCalled, typed, type ResultsOf } from './typed'

type Method = SeasonData['methods'][number]

/** Fills of a vessel while the cuttings root: the first, and one each time the water is changed. */
const fillsOf = (method: Method): Fraction => typed(method.weeks).times(7).over(typed(method.waterChange)).up()

/** Litres that go into one piece: water for vessels and for soaking sheets, else loose medium. */
function looseIn(method: Method, container: Container): Fraction {
  if (method.kind === 'water') return typed(container.vesselLitres).times(fillsOf(method))
  if (method.kind === 'rockwool') return typed(method.soak, 0)
  return volumeOf(container).over(
    fraction(1)
      .minus(typed(method.settle, 0))
      .times(fraction(1).minus(typed(method.spill, 0))),
  )
}

function litreOf(method: Method, data: SeasonData, setup: Setup): Fraction {
  const water = typed(data.setup.water).over(1000)
  if (method.kind === 'water') return water
  if (method.kind === 'rockwool') return water.plus(typed(data.setup.acid).over(1000))
  const blend = data.blends.find(({ name }) => name === method.medium)
  return blend === undefined
    ? litrePriceOf(rowCalled(data.media, 'name', method.medium))
    : blendOf(blend, data, setup).litre
}

/** Hours for a cutting: stuck once, its part of a piece set out and tended, and lifted where it rooted. */
function hoursFor(method: Method, used: Fraction): Fraction {
  const each = (pace: Method['tendPerHour']) => (pace === undefined ? fraction(0) : fraction(1).over(typed(pace)))
  const changes = method.kind === 'water' ? fillsOf(method).minus(1) : fraction(1)
  return sum([
    each(method.stuckPerHour),
    each(method.setPerHour).over(used),
    each(method.tendPerHour).times(changes).over(used),
    each(method.liftPerHour).times(typed(method.strike)),
  ])
}

export function methodOf(method: Method, data: SeasonData, setup: Setup) {
  const container = rowCalled(data.containers, 'name', method.container)
  const isBed = container.kind === 'bed'
  const used = typed(container.places).times(fraction(1).minus(typed(method.spare, 0)))
  const loose = looseIn(method, container)
  const litre = litreOf(method, data, setup)
  const filling = loose.times(litre)
  const first = isBed ? typed(container.price).plus(filling) : typed(container.price)
  const piece = {
    first,
    wash: typed(container.wash, 0),
    topUp: isBed ? typed(container.topUp, 0).times(filling).over(first) : fraction(0),
    broken: typed(container.broken, 0),
    endValue: typed(container.endValue, 0),
  }
  const discount = discountOf(typed(data.setup.yearlyInterest), typed(data.setup.roundsPerYear))
  const containerCost = levelCost(piece, Number(container.rounds), discount).over(used)
  const mediumCost = isBed ? fraction(0) : filling.over(used)
  const labour = hoursFor(method, used).times(setup.hourCost)
  const rent = method.stands === 'bench' ? setup.benchRate : typed(data.setup.groundRate)
  const room = rent.times(typed(container.ground)).over(typed(data.setup.benchUse))
  const bench = typed(method.weeks).times(room).over(used)
  const otherCost = sum([
    mediumCost,
    labour,
    bench,
    typed(method.hormone, 0),
    typed(method.cutting),
    typed(method.other, 0),
  ])
  const cost = containerCost.plus(otherCost)
  const rate = product([typed(method.strike), typed(method.pottingOn), typed(method.grading)])
  const load = method.weight === undefined ? '' : typed(method.weight).over(typed(container.ground))
  const { benchLoad } = data.setup
  const isHeavy = method.stands === 'bench' && load !== '' && benchLoad !== undefined && typed(benchLoad).isBelow(load)
  return {
    typed: method,
    name: method.name,
    medium: method.medium,
    container,
    discount,
    flows: piece,
    shown: {
      used,
      loose,
      litre,
      first,
      rounds: typed(container.rounds),
      wash: piece.wash,
      topUp: piece.topUp,
      broken: piece.broken,
      endValue: piece.endValue,
      piece: containerCost,
      mediumCost,
      labour,
      bench,
      otherCost,
      cost,
      rate,
      perLiner: cost.over(rate),
      load,
      heavy: isHeavy ? 'more than the bench carries' : '',
    },
  }
}

export type MethodCosts = ReturnType<typeof methodOf>

/**
 * Litres of medium in the season. A bed that is reused is filled when it is bought; every other filling is a top-up.
 * @param bought Containers to buy for this method.
 */
export function litresOf(
  { container, shown, typed: method }: MethodCosts,
  filled: Fraction,
  bought: Fraction,
): Fraction {
  if (method.kind === 'water' || method.kind === 'rockwool') return fraction(0)
  if (container.kind !== 'bed' || Number(container.rounds) === 1) return filled.times(shown.loose)
  const first = bought.isBelow(filled) ? bought : filled
  return first.plus(filled.minus(first).times(typed(container.topUp, 0))).times(shown.loose)
}

export function methodNeeds(costs: MethodCosts, filled: Fraction, bought: Fraction) {
  return { ...costs.shown, filled, litres: litresOf(costs, filled, bought) } satisfies ResultsOf<typeof methods>
}
