import { columnOf, lastOf } from '../../core/definition/columns'
import {
  defineTable,
  type Arguments,
  type TableRow,
  type TextsOf,
  type WorkingStep,
} from '../../core/definition/definition'
import { money, number, numbers } from '../../core/definition/parameter'
import { Decimal, zero } from '../../core/quantity/decimal'

const mostPeriods = 1000

const parameters = {
  needsPerPeriod: numbers('units', { text: 'what each period needs, in any one unit', example: 10 }),
  orderCosts: numbers('money per order', {
    text: 'cost of placing and receiving an order, one for all periods or one for each',
    example: 30,
    oneForAll: true,
  }),
  holdingCostPerUnitPeriod: money('money per unit and period', { text: 'cost of holding a unit to the next period' }),
  unitPrices: numbers('money per unit', {
    text: 'price of a unit, one for all periods or one for each',
    example: 2,
    default: 0,
    oneForAll: true,
  }),
  onHand: number('units', { text: 'stock at the start', example: 50, default: 0, atLeast: 0 }),
}

type Given = Arguments<typeof parameters>

const columns = {
  period: { heading: 'period' },
  order: { heading: 'order' },
  stock: { heading: 'stock at end' },
  cost: { heading: 'cost' },
}

/** An order for the needs from its period on, on top of the cheapest way to cover those before. */
interface Start {
  readonly period: number
  readonly orders: number
  /** What it costs to cover the needs up to some later period is fixed + perUnit * those needs, but for what all starts share. */
  readonly fixed: Decimal
  readonly perUnit: Decimal
}

export const stockPlan = defineTable({
  id: 'STOCKPLAN',
  subject: 'review',
  parameters,
  result: { name: 'plan', unit: 'table', columns },
  method: (args) => {
    const periods = args.needsPerPeriod.length
    if (periods > mostPeriods)
      return { problem: { code: 'tooManyRows', parameter: 'needsPerPeriod', got: periods, most: mostPeriods } }
    const plan = planOf(args)
    return { table: tableOf(plan), working: () => workingOf(plan) }
  },
})

export const stockPlanText: TextsOf<typeof stockPlan> = {
  summary: 'When to order how much over the season, so that ordering, goods and holding stock together cost least.',
  convention:
    "An order arrives at the start of its period and pays that period's order cost and unit price. Holding is charged on the stock at the end of each period, onHand included, which is used up first and is worth nothing at the end. Equally cheap plans: the one with fewer orders, then the one whose last order is later, and so on backwards. Type 0 for a period without a need, since a blank cell is no period. The total row adds the stocks up, as holding is charged on their sum.",
  result: 'a row for each period, then the total',
  columns: {
    period: { text: 'the period, from 1', unit: 'period' },
    order: { text: 'units to order at its start', unit: 'units' },
    stock: { text: 'units in stock at its end', unit: 'units' },
    cost: { text: 'order cost, goods and holding', unit: 'money' },
  },
  plain: (columns) => ({
    reason:
      'Excel has no formula that weighs every timing of the orders. The check is whether the orders of the plan cover the needs of every period at the cost that the plan says; no other timing costs less.',
    check:
      `LET(periodEach, DROP(DROP(plan, 1), -1), orderEach, ${columnOf(columns, 'order', 'periodEach')}, ` +
      `stockEach, ${columnOf(columns, 'stock', 'periodEach')}, totalCost, ${lastOf(columns, 'cost', 'plan')}, ` +
      'lastStock, INDEX(stockEach, ROWS(stockEach)), moved, onHand + SUM(orderEach) - SUM(needsPerPeriod), ' +
      'paid, SUM((orderEach > 0) * TOCOL(orderCosts, 1) + orderEach * TOCOL(unitPrices, 1) + stockEach * holdingCostPerUnitPeriod), ' +
      'AND(MIN(stockEach) >= 0, ABS(moved - lastStock) <= SUM(needsPerPeriod) / 10 ^ 12, ABS(paid - totalCost) <= totalCost / 10 ^ 12))',
  }),
  examples: [
    {
      text: 'Two small needs are ordered together, the large ones each on its own',
      given: [[10, 20, 30, 40], [30], 1],
      gives: [
        [1, 30, 20, 50],
        [2, 0, 0, 0],
        [3, 30, 0, 30],
        [4, 40, 0, 30],
        ['total', 100, 20, 110],
      ],
      source: 'inventory-analytics',
    },
    {
      text: 'A higher price from the third period on is worth holding stock for',
      given: [[100, 100, 100], [40, 40, 40], 0.1, [2, 2, 3], 50],
      gives: [
        [1, 250, 200, 560],
        [2, 0, 100, 10],
        [3, 0, 0, 0],
        ['total', 250, 300, 570],
      ],
      source: 'definition',
    },
  ],
}

/** What is ordered and what it costs, by period. */
interface Plan {
  /** Needs up to the end of the period that the stock does not cover. */
  readonly short: readonly Decimal[]
  readonly orders: readonly Decimal[]
  readonly stocks: readonly Decimal[]
  readonly fees: readonly Decimal[]
  readonly goods: readonly Decimal[]
  readonly costs: readonly Decimal[]
  /** Of one unit to the next period. */
  readonly holdingCost: Decimal
}

function planOf(given: Given): Plan {
  const { needsPerPeriod, orderCosts, holdingCostPerUnitPeriod: holdingCost, unitPrices, onHand } = given
  const needs = runningSums(needsPerPeriod)
  const short = needs.map((needed) => Decimal.max(zero, needed.sub(onHand)))
  const orders = cheapestOrders(short, orderCosts, unitPrices, holdingCost)
  const ordered = runningSums(orders)
  const stocks = needs.map((needed, period) => onHand.add(ordered[period]!).sub(needed))
  const fees = orders.map((order, period) => (order.isZero() ? zero : orderCosts[period]!))
  const goods = orders.map((order, period) => order.mul(unitPrices[period]!))
  const costs = stocks.map((stock, period) => fees[period]!.add(goods[period]!).add(holdingCost.mul(stock)))
  return { short, orders, stocks, fees, goods, costs, holdingCost }
}

function tableOf({ orders, stocks, costs }: Plan): readonly TableRow<typeof columns>[] {
  return [
    ...orders.map((order, period) => ({
      period: new Decimal(period + 1),
      order,
      stock: stocks[period]!,
      cost: costs[period]!,
    })),
    { period: { fact: 'total' }, order: total(orders), stock: total(stocks), cost: total(costs) },
  ]
}

function workingOf({ short, orders, stocks, fees, goods, costs, holdingCost }: Plan): readonly WorkingStep[] {
  return [
    {
      name: 'short',
      text: 'what the periods need beyond onHand',
      formula: 'MAX(SUM(needsPerPeriod) - onHand, 0)',
      value: short.at(-1)!,
      unit: 'units',
    },
    {
      name: 'orders',
      text: 'number of orders',
      formula: 'periods with an order',
      value: new Decimal(orders.filter((order) => !order.isZero()).length),
      unit: 'orders',
    },
    {
      name: 'ordering',
      text: 'cost of the orders',
      formula: 'orderCosts of those periods',
      value: total(fees),
      unit: 'money',
    },
    {
      name: 'goods',
      text: 'price of the goods',
      formula: 'SUMPRODUCT(order, unitPrices)',
      value: total(goods),
      unit: 'money',
    },
    {
      name: 'holding',
      text: 'cost of holding stock',
      formula: 'holdingCostPerUnitPeriod * SUM(stock at end)',
      value: holdingCost.mul(total(stocks)),
      unit: 'money',
    },
    {
      name: 'cost',
      text: 'the least cost of the season',
      formula: 'ordering + goods + holding',
      value: total(costs),
      unit: 'money',
    },
  ]
}

/**
 * The orders of Wagner and Whitin's forward recursion, with a price for every period. An order covers the needs of
 * whole periods: in an optimal plan nothing is ordered while stock is left that was ordered before.
 *
 * An order of period s that covers the needs D(s-1) to D(t) holds D(t) - D(u) at the end of each u from s to t. So up
 * to t it costs [least(s-1) + orderCost - price D(s-1) + holding * (D(0) + ... + D(s-1))] + [price - holding s] * D(t)
 * + holding * (t D(t) - D(0) - ... - D(t-1)); the last part is the same for all starts s. Since D(t) never falls, a
 * start that is no better now and costs no less for each further unit is never better later: it is dropped.
 */
function cheapestOrders(
  short: readonly Decimal[],
  orderCosts: readonly Decimal[],
  unitPrices: readonly Decimal[],
  holding: Decimal,
): Decimal[] {
  const chosen: (Start | undefined)[] = []
  let starts: Start[] = []
  let [least, before, sumBefore] = [zero, zero, zero]
  let ordersBefore = 0
  short.forEach((needed, period) => {
    starts.push({
      period,
      orders: ordersBefore + 1,
      fixed: least.add(orderCosts[period]!).sub(unitPrices[period]!.mul(before)).add(holding.mul(sumBefore)),
      perUnit: unitPrices[period]!.sub(holding.mul(period)),
    })
    const shared = holding.mul(needed.mul(period).sub(sumBefore))
    if (needed.eq(before)) {
      // Nothing is needed here, so nothing is ordered for it: what covers the periods before covers this one.
      chosen.push(undefined)
    } else {
      const costs = starts.map((start) => start.fixed.add(start.perUnit.mul(needed)))
      const best = starts.reduce(
        (first, start, place) => (isNoWorse(start, costs[place]!, starts[first]!, costs[first]!) ? place : first),
        0,
      )
      least = costs[best]!.add(shared)
      const start = starts[best]!
      ordersBefore = start.orders
      chosen.push(start)
      starts = starts.filter((one) => one === start || one.perUnit.lt(start.perUnit))
    }
    sumBefore = sumBefore.add(needed)
    before = needed
  })
  const orders = short.map(() => zero)
  for (let period = short.length - 1; period >= 0;) {
    const start = chosen[period]
    if (start === undefined) {
      period--
      continue
    }
    orders[start.period] = short[period]!.sub(short[start.period - 1] ?? zero)
    period = start.period - 1
  }
  return orders
}

/** Of two starts that cost the same in as many orders, the later one. */
function isNoWorse(later: Start, cost: Decimal, earlier: Start, earlierCost: Decimal): boolean {
  return (cost.cmp(earlierCost) || later.orders - earlier.orders) <= 0
}

function runningSums(amounts: readonly Decimal[]): readonly Decimal[] {
  let sum = zero
  return amounts.map((amount) => (sum = sum.add(amount)))
}

function total(amounts: readonly Decimal[]): Decimal {
  return amounts.reduce((sum, amount) => sum.add(amount), zero)
}
