/**
 * The accountant: what a season's workbook must show, from what was typed alone. It shares no formula with the sheets;
 * its conventions are those of the headings, units and notes, and each stands where it is used.
 */
import type { SeasonData } from '../../../src/workbook/season/season'
import { sum } from './fraction'
import { blendNeeds, componentOf } from './model/blends'
import { weeksOf } from './model/calendar'
import { cheapestOf } from './model/cheapest'
import { comparedOf, compareOf, reuseOf } from './model/compare'
import { containerNeeds } from './model/containers'
import { doubtOf, widestOf } from './model/doubts'
import { looseOf, mediumNeeds, neededOf, packCostOf } from './model/media'
import { litresOf, methodNeeds, methodOf } from './model/methods'
import { mixingOf } from './model/mixing'
import { batchOf, orderOf, stickings } from './model/orders'
import { firstFullOf, overviewOf } from './model/overview'
import { timingOf } from './model/periods'
import { quotedAt, quoteOf } from './model/quote'
import { reviewOf, type Standard } from './model/review'
import { setupOf } from './model/setup'
import { stockOf } from './model/stock'
import { surplusOf } from './model/surplus'
import { rowCalled, typed } from './model/typed'

/** @param weeks How many weeks the calendar shows. */
export function modelOf(data: SeasonData, weeks: number) {
  const setup = setupOf(data)
  const costs = data.methods.map((method) => methodOf(method, data, setup))
  const batches = data.batches.map((batch) => batchOf(batch, data, costs))
  const orders = data.orders.map((order) => orderOf(order, data, costs, batches))
  const stuck = stickings(orders, batches)
  const containers = data.containers.map((container) => ({
    name: container.name,
    price: typed(container.price),
    shown: containerNeeds(container, stuck),
  }))
  const methods = costs.map((cost) => {
    const filled = sum(stuck.filter(({ method }) => method.name === cost.name).map(({ pieces }) => pieces))
    const { toBuy, filled: all } = rowCalled(containers, 'name', cost.container.name).shown
    // Methods that share a container share what is bought of it, by their fillings.
    const bought = all.equals(0) ? all : toBuy.times(filled).over(all)
    return { medium: cost.medium, litres: litresOf(cost, filled, bought), shown: methodNeeds(cost, filled, bought) }
  })
  const blends = data.blends.map((blend) => ({
    name: blend.name,
    shown: blendNeeds(blend, data, setup, methods),
  }))
  const components = data.components.map((component) => {
    const shown = componentOf(component, data, rowCalled(blends, 'name', component.blend).shown.needed)
    return { medium: component.medium, needed: shown.needed, shown }
  })
  const media = data.media.map((medium) => ({
    name: medium.name,
    onHand: typed(medium.onHand, 0),
    price: packCostOf(medium),
    pack: looseOf(medium),
    shown: mediumNeeds(medium, neededOf(medium, methods, components)),
  }))
  const calendar = weeksOf(data, stuck, weeks)
  const review = data.review.map((row) => reviewOf(row, standardOf(row)))

  /** Of a medium the whole packs that the season opens, those in stock too; of containers those to buy. */
  function standardOf({ item, kind }: SeasonData['review'][number]): Standard {
    if (kind === 'medium') {
      const { shown, price, pack } = rowCalled(media, 'name', item)
      return { quantity: shown.withWaste.over(pack).up(), price }
    }
    if (kind === 'container') {
      const { shown, price } = rowCalled(containers, 'name', item)
      return { quantity: shown.toBuy, price }
    }
    const { method, shown, batches: parts } = orders.find((order) => order.typed.line === item)!
    return kind === 'work'
      ? { quantity: sum([shown.hours, ...parts.map((part) => part.shown.hours)]), price: setup.hourCost }
      : { quantity: shown.cuttings, price: typed(method.typed.cutting) }
  }

  return {
    setup,
    methodCosts: costs,
    tables: {
      containers: containers.map(({ shown }) => shown),
      media: media.map(({ shown }) => shown),
      blends: blends.map(({ shown }) => shown),
      components: components.map(({ shown }) => shown),
      methods: methods.map(({ shown }) => shown),
      orders: orders.map(({ shown }) => shown),
      batches: batches.map(({ shown }) => shown),
      stock: data.stock.map((row) => stockOf(row, orders, setup)),
      review,
    },
    calendar,
    compare: compareOf(costs),
    compared: comparedOf(data, costs),
    season: overviewOf(data, {
      methods: costs,
      orders,
      stuck,
      calendar,
      mediaCosts: media.map(({ shown }) => shown.cost),
      containerCosts: containers.map(({ shown }) => shown.cost),
      variances: review.map(({ total }) => total),
    }),
    firstFull: firstFullOf(calendar),
    /** Of the sheets that answer a question, and of those that only they need; each only where something is asked. */
    doubts: () => data.doubts.map((doubt) => doubtOf(doubt, data, costs)),
    widest: () => widestOf(data, costs),
    timing: () => timingOf(data, costs, stuck),
    reuse: () => reuseOf(data, costs),
    mixing: () => mixingOf(data, rowCalled(blends, 'name', data.mixing.blend).shown.needed),
    quote: () => quoteOf(data, costs, setup),
    quoted: () => quotedAt(data, quoteOf(data, costs, setup).floor),
    surplus: () => {
      const { price, later } = quoteOf(data, costs, setup)
      return surplusOf(data, orders, price, later)
    },
    cheapest: () => {
      const { shown, onHand } = rowCalled(media, 'name', data.cheapest.medium)
      return cheapestOf(data, shown, onHand)
    },
  }
}

export type Model = ReturnType<typeof modelOf>
