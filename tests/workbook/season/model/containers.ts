/** Containers: how many are filled, stand at once, and are to be bought. */
import type { containers } from '../../../../src/workbook/season/tables/containers'
import { greatest, sum, type Fraction } from '../fraction'
import { cellOf, type Container } from './cells'
import type { Sticking } from './orders'
import { typed, type ResultsOf } from './typed'

/** Standing and turn-round take whole weeks together. */
function peakOf(container: Container, fillings: readonly Sticking[]): Fraction {
  const spans = fillings.map(({ pieces, from, benchWeeks }) => ({
    pieces,
    from,
    until: from.plus(benchWeeks.plus(typed(container.turnround, 0)).up().times(7)),
  }))
  return greatest(
    spans.map(({ from: monday }) =>
      sum(
        spans.filter(({ from, until }) => !monday.isBelow(from) && monday.isBelow(until)).map(({ pieces }) => pieces),
      ),
    ),
  )
}

export function containerNeeds(container: Container, all: readonly Sticking[]) {
  const fillings = all.filter((sticking) => sticking.container === container.name)
  const filled = sum(fillings.map(({ pieces }) => pieces))
  const peak = peakOf(container, fillings)
  const brokenLater = filled.minus(peak).times(typed(container.broken, 0)).up()
  const needed = Number(container.rounds) === 1 ? filled : peak.plus(brokenLater)
  const toBuy = needed.minus(typed(container.onHand, 0)).atLeast(0).upTo(typed(container.multiple, 1))
  return {
    cell: container.kind === 'tray' ? cellOf(container) : '',
    filled,
    peak,
    needed,
    toBuy,
    cost: toBuy.times(typed(container.price)).toCent(),
  } satisfies ResultsOf<typeof containers>
}
