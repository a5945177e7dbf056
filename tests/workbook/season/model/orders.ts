/** Orders and Batches: what to stick and when, what it stands in, and what can be expected of it. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { batches } from '../../../../src/workbook/season/tables/batches'
import type { orders } from '../../../../src/workbook/season/tables/orders'
import { fraction, product, sum, type Fraction } from '../fraction'
import { atLeast, chances, cuttingsFor, least, spreadBetween, together } from './chance'
import type { MethodCosts } from './methods'
import { mondayOf, rowCalled, typed, type ResultsOf } from './typed'

type Order = SeasonData['orders'][number]
type Batch = SeasonData['batches'][number]

/** What so many cuttings of a method stand in, from a day on. A bed of several rounds is topped up, all else filled anew. */
function standing(cuttings: Fraction, day: Fraction, { container, shown, typed: method }: MethodCosts) {
  const pieces = cuttings.over(shown.used).up()
  const m2 = pieces.times(typed(container.ground))
  const from = mondayOf(day)
  const isReusedBed = container.kind === 'bed' && Number(container.rounds) > 1
  const share = isReusedBed ? typed(container.topUp, 0) : fraction(1)
  return {
    container: String(container.name),
    pieces,
    benchWeeks: typed(method.weeks),
    medium: String(method.medium ?? ''),
    litres: method.medium === undefined ? fraction(0) : pieces.times(shown.loose).times(share),
    from,
    until: from.plus(typed(method.weeks).up().times(7)),
    benchM2: method.stands === 'bench' ? m2 : fraction(0),
    groundM2: method.stands === 'ground' ? m2 : fraction(0),
    groundWeeks: typed(method.weeks).plus(container.kind === 'bed' ? typed(container.turnround, 0) : 0),
    hours: cuttings.over(typed(method.stuckPerHour)).plus(pieces.over(typed(method.setPerHour))),
  }
}

function ratesOf(order: Order, method: MethodCosts['typed']): readonly [Fraction, Fraction, Fraction] {
  return [
    typed(order.strike ?? method.strike),
    typed(order.pottingOn ?? method.pottingOn),
    typed(order.grading ?? method.grading),
  ]
}

/** A stage that was counted has its loss behind it. */
export function batchOf(batch: Batch, data: SeasonData, methods: readonly MethodCosts[]) {
  const order = rowCalled(data.orders, 'line', batch.line)
  const method = rowCalled(methods, 'name', order.method)
  const [strike, pottingOn, grading] = ratesOf(order, method.typed)
  const [alive, left] =
    batch.saleable !== undefined
      ? [batch.saleable, []]
      : batch.potted !== undefined
        ? [batch.potted, [grading]]
        : batch.rooted !== undefined
          ? [batch.rooted, [pottingOn, grading]]
          : [batch.cuttings, [strike, pottingOn, grading]]
  const rateLeft = product(left)
  const expected = typed(alive).times(rateLeft)
  const asPlanned = typed(batch.cuttings).times(product([strike, pottingOn, grading]))
  return {
    line: batch.line,
    day: typed(batch.day),
    cuttings: typed(batch.cuttings),
    method,
    shown: {
      species: String(order.species),
      method: String(order.method),
      alive: typed(alive),
      rateLeft,
      expected,
      asPlanned,
      difference: expected.minus(asPlanned),
      ...standing(typed(batch.cuttings), typed(batch.day), method),
    } satisfies ResultsOf<typeof batches>,
  }
}

export type BatchRow = ReturnType<typeof batchOf>

function spreadOf(order: Order, data: SeasonData): Fraction | undefined {
  if (order.spread !== undefined) return typed(order.spread)
  const past = data.past.filter(({ species }) => species === order.species)
  if (past.length < 2) return undefined
  return spreadBetween(past.map(({ stuck, saleable }) => ({ stuck: typed(stuck), taken: typed(saleable) })))
}

const notes = {
  none: 'in time',
  begun: 'to be stuck before the season begins',
  short: 'lead time shorter than rooting',
} as const

interface Group {
  readonly alive: Fraction
  readonly rate: Fraction
}

/** The chances of all groups together; each batch, and what is still to plan, has a luck of its own. */
function growing(groups: readonly Group[], spread: number): Float64Array {
  return groups
    .filter(({ alive }) => !alive.equals(0))
    .map(({ alive, rate }) => chances(Number(alive.above), rate.toNumber(), spread))
    .reduce(together, Float64Array.of(1))
}

export function orderOf(order: Order, data: SeasonData, methods: readonly MethodCosts[], all: readonly BatchRow[]) {
  const method = rowCalled(methods, 'name', order.method)
  const batches = all.filter(({ line }) => line === order.line)
  const liners = Number(order.liners)
  const [strikeUsed, pottingOnUsed, gradingUsed] = ratesOf(order, method.typed)
  const rate = product([strikeUsed, pottingOnUsed, gradingUsed])
  const spreadUsed = spreadOf(order, data)
  const spread = spreadUsed?.toNumber() ?? 0
  const typedConfidence = order.confidence ?? data.setup.confidence
  const confidence = typedConfidence === undefined ? undefined : Number(typedConfidence)
  const cuttings = cuttingsFor(liners, rate, confidence, spread)
  const batched = sum(batches.map((batch) => batch.cuttings))
  const planned = cuttings.minus(batched).atLeast(0)
  const expected = sum([planned.times(rate), ...batches.map(({ shown }) => shown.expected)])
  const groups = batches.map(({ shown }) => ({ alive: shown.alive, rate: shown.rateLeft }))
  const grown = growing([...groups, { alive: planned, rate }], spread)
  const withFurther = (further: number) =>
    further === 0 ? atLeast(liners, grown) : atLeast(liners, together(grown, chances(further, rate.toNumber(), spread)))
  const short = fraction(liners).minus(expected).atLeast(0).down()
  const enough = (further: number) =>
    confidence === undefined ? !expected.plus(rate.times(further)).isBelow(liners) : withFurther(further) >= confidence
  const again = batches.length === 0 ? fraction(0) : fraction(least(0, enough))
  const stickDay = typed(order.delivery).minus(typed(order.weeks).times(7)).down()
  const lateness = stickDay.isBelow(typed(data.setup.firstDay))
    ? 'begun'
    : typed(order.weeks).isBelow(typed(method.typed.weeks))
      ? 'short'
      : 'none'
  const costPerCutting = method.shown.cost
  return {
    typed: order,
    method,
    batches,
    spread,
    isLate: lateness !== 'none',
    shown: {
      stickDay,
      note: notes[lateness],
      strikeUsed,
      pottingOnUsed,
      gradingUsed,
      rate,
      confidenceUsed: typedConfidence === undefined ? '' : fraction(Number(typedConfidence)),
      spreadUsed: spreadUsed ?? '',
      cuttings,
      batched,
      planned,
      expected,
      chance: withFurther(0),
      short,
      again,
      againBy: again.equals(0) ? '' : stickDay,
      costPerCutting,
      costPerLiner: costPerCutting.over(rate),
      cost: cuttings.times(costPerCutting).toCent(),
      ...standing(planned, stickDay, method),
    } satisfies ResultsOf<typeof orders>,
  }
}

export type OrderRow = ReturnType<typeof orderOf>

/** All that is stuck in the season: what is still to plan on its day, and each batch on its own. */
export function stickings(orders: readonly OrderRow[], batches: readonly BatchRow[]) {
  return [
    ...orders.map(({ method, shown }) => ({ ...shown, method, cuttings: shown.planned, day: shown.stickDay })),
    ...batches.map(({ method, cuttings, day, shown }) => ({ ...shown, method, cuttings, day })),
  ]
}

export type Sticking = ReturnType<typeof stickings>[number]
