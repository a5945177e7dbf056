import { headingRow, inOrder } from '../../core/definition/columns'
import { defineTable, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import type { Fact } from '../../core/definition/fact'
import { money, numbers, shares } from '../../core/definition/parameter'
import { resultOfSteps } from '../../core/definition/runSteps'
import { Decimal, one } from '../../core/quantity/decimal'
import { isAtMost, roundUpToWhole } from '../../core/quantity/rounding'
import { linerPrice } from './linerPrice'

/** Each quantity is held against all larger ones, which would take minutes for a whole sheet of them. */
const mostQuantities = 200

const columns = {
  quantity: { heading: 'quantity' },
  price: { heading: 'price each' },
  total: { heading: 'total' },
  marginKept: { heading: 'margin kept' },
  markup: { heading: 'markup' },
  floor: { heading: 'floor price' },
  warning: { heading: 'warning' },
}

export const quote = defineTable({
  id: 'QUOTE',
  subject: 'cost',
  parameters: {
    costPerLiner: money('money per saleable liner', {
      text: 'cost of one saleable liner, without the setup',
      example: 0.6,
      above: 0,
    }),
    quantities: numbers('liners', {
      text: 'quantities to quote, each once',
      example: 500,
      above: 0,
      atMost: 1_000_000_000,
      whole: true,
    }),
    margins: shares({
      text: 'margin wanted at each quantity, as a share of the selling price',
      example: 0.425,
      below: 1,
    }),
    setupCost: money('money per order', {
      text: 'what an order costs once, however large: picking, packing, papers',
      example: 0,
      default: 0,
    }),
    priceStep: money('money', {
      text: 'what prices are whole multiples of, such as 0.05; 0 for no rounding',
      example: 0.05,
      default: 0,
    }),
  },
  result: { name: 'quote', unit: 'table', columns },
  method: ({ costPerLiner, quantities, margins, setupCost, priceStep }) => {
    if (quantities.length > mostQuantities)
      return { problem: { code: 'tooManyRows', parameter: 'quantities', got: quantities.length, most: mostQuantities } }
    const twice = quantities.find((quantity, index) => quantities.findIndex((other) => other.eq(quantity)) !== index)
    if (twice !== undefined)
      return { problem: { code: 'givenTwice', parameter: 'quantities', value: twice.toString() } }
    const tiers = quantities.map((quantity, index): Tier => {
      const floor = costPerLiner.add(setupCost.div(quantity))
      const price = priceOf(floor, margins[index]!, priceStep)
      return { quantity, floor, price, total: quantity.mul(price) }
    })
    const rows = tiers.map((tier) => quotedOf(tier, tiers))
    return { table: rows.map(({ zone: _, ...row }) => row), working: () => workingOf(rows) }
  },
})

export const quoteText: TextsOf<typeof quote> = {
  summary:
    'Prices for several quantities, with the margin kept, the floor price, and a warning where a smaller order would cost more than a larger one.',
  convention:
    'Each price holds for every liner of an order from its quantity up to the next one. The setup is spread over the quantity of the row; price and step are those of LINERPRICE. Just below a price break an order can cost more than the break itself, a price break overlap: the warning names the first such order and the last, against the cheapest larger quantity. Rows stay in the order given. Without tax.',
  result: 'a row for each quantity',
  columns: {
    quantity: { text: 'liners from which this price is each', unit: 'liners' },
    price: { text: 'selling price of one liner', unit: 'money per liner' },
    total: { text: 'price of the whole quantity', unit: 'money' },
    marginKept: { text: 'what is left of the price, as a share of the price', unit: 'share' },
    markup: { text: 'what is left of the price, as a share of the cost', unit: 'share of the cost' },
    floor: {
      text: 'cost of one liner with its part of the setup: below it the order loses money',
      unit: 'money per liner',
    },
    warning: {
      text: 'orders that cost more than a larger one, and a price each that is higher than for fewer',
      unit: 'text',
    },
  },
  plain: (columns) => ({
    // MIN(IF(…)) takes the least of the larger quantities. MAX stands for those that are not: it is never less than
    // the least, and makes the zone of the largest quantity end before it begins. INT leaves whole quantities as they
    // are: the workbench's grid compares what TOCOL took straight from cells with the wrong numbers. The floor price is
    // told for the whole quantity and divided, so that it is a column where no setup is given, too.
    formula:
      'LET(sizeEach, INT(TOCOL(quantities, 1)), floorEach, (costPerLiner * sizeEach + setupCost) / sizeEach, exactEach, floorEach / (1 - TOCOL(margins, 1)), ' +
      'priceEach, IF(0 < priceStep, IF(exactEach < priceStep, priceStep, ROUNDUP(exactEach / priceStep, 0) * priceStep), exactEach), ' +
      'totalEach, sizeEach * priceEach, ' +
      'warningEach, MAP(sizeEach, priceEach, LAMBDA(size, price, LET(' +
      'nextSize, MIN(IF(sizeEach > size, sizeEach, MAX(sizeEach))), leastTotal, MIN(IF(sizeEach > size, totalEach, MAX(totalEach))), ' +
      'cheapestSize, MIN(IF((sizeEach > size) * (totalEach <= leastTotal * (1 + 10 ^ -12)), sizeEach, MAX(sizeEach))), ' +
      'first, MAX(size, INT(ROUND(leastTotal / price, 9)) + 1), ' +
      'cheaperSize, MAX((sizeEach < size) * (priceEach * (1 + 10 ^ -12) < price) * sizeEach), ' +
      'dearer, IF(cheaperSize > 0, "dearer each than " & cheaperSize, ""), ' +
      'zone, IF(first < nextSize, first & IF(first < nextSize - 1, " to " & nextSize - 1 & " cost", " costs") & " more than " & cheapestSize, ""), ' +
      'IF(dearer & zone = "", "none", TEXTJOIN("; ", TRUE, dearer, zone))))), ' +
      `VSTACK(${headingRow(columns)}, HSTACK(${inOrder(columns, {
        quantity: 'sizeEach',
        price: 'priceEach',
        total: 'totalEach',
        marginKept: '(priceEach - floorEach) / priceEach',
        markup: '(priceEach - floorEach) / floorEach',
        floor: 'floorEach',
        warning: 'warningEach',
      })})))`,
  }),
  examples: [
    {
      text: 'A break at 1,000: 953 liners at 1.05 cost 1,000.65, a thousand at 1.00 cost 1,000',
      given: [0.6, [500, 1000], [0.425, 0.4], 0, 0.05],
      gives: [
        [500, 1.05, 525, 0.428571428571429, 0.75, 0.6, '953 to 999 cost more than 1000'],
        [1000, 1, 1000, 0.4, 0.666666666666667, 0.6, 'none'],
      ],
      source: 'definition',
    },
    {
      text: 'A setup of 25 spread over the quantity; no step, so the margin kept is the one asked for',
      given: [0.4, [50, 250], [0.5, 0.5], 25],
      gives: [
        [50, 1.8, 90, 0.5, 1, 0.9, '139 to 249 cost more than 250'],
        [250, 1, 250, 0.5, 1, 0.5, 'none'],
      ],
      source: 'definition',
    },
  ],
}

interface Tier {
  readonly quantity: Decimal
  readonly floor: Decimal
  readonly price: Decimal
  readonly total: Decimal
}

/** Orders from `first` to `last` pieces cost more than the larger quantity of `than`. */
interface Overlap {
  readonly first: Decimal
  readonly last: Decimal
  readonly than: Tier
}

/** A row of the quote, and the orders that it makes dearer than a larger quantity. */
interface Quoted extends Tier {
  readonly marginKept: Decimal
  readonly markup: Decimal
  readonly warning: Fact
  readonly zone: Overlap | undefined
}

function quotedOf(tier: Tier, tiers: readonly Tier[]): Quoted {
  const { price, floor } = tier
  const zone = overlap(tier, tiers)
  return {
    ...tier,
    marginKept: price.sub(floor).div(price),
    markup: price.sub(floor).div(floor),
    warning: warningOf(tier, tiers, zone),
    zone,
  }
}

function workingOf(rows: readonly Quoted[]): readonly WorkingStep[] {
  return [
    {
      name: 'floor',
      text: 'cost of one liner with its part of the setup, at each quantity',
      formula: 'costPerLiner + setupCost / quantities',
      value: rows.map(({ floor }) => floor),
      unit: 'money per liner',
    },
    {
      name: 'price',
      text: 'selling price that keeps the margin, rounded up to the step',
      formula: 'LINERPRICE of floor, margins and priceStep',
      value: rows.map(({ price }) => price),
      unit: 'money per liner',
    },
    {
      name: 'total',
      text: 'price of each quantity',
      formula: 'quantities * price',
      value: rows.map(({ total }) => total),
      unit: 'money',
    },
    {
      name: 'marginKept',
      text: 'what is left, as a share of the price',
      formula: '(price - floor) / price',
      value: rows.map(({ marginKept }) => marginKept),
      unit: 'share',
    },
    {
      name: 'markup',
      text: 'the same as a share of the cost',
      formula: '(price - floor) / floor',
      value: rows.map(({ markup }) => markup),
      unit: 'share of the cost',
    },
    {
      name: 'overlap',
      text: 'the first order that costs more than a larger quantity',
      formula: 'least order with order * price > total of a larger quantity',
      value: rows.map((row) => zoneInMoney(row, row.zone)),
      unit: 'text',
    },
    {
      name: 'warning',
      text: 'what to look at before the quote goes out',
      formula: 'overlap, and a larger quantity at a higher price each',
      value: rows.map(({ warning }) => warning),
      unit: 'text',
    },
  ]
}

function priceOf(costPerLiner: Decimal, margin: Decimal, priceStep: Decimal): Decimal {
  return resultOfSteps(linerPrice, { costPerLiner, margin, priceStep }) as Decimal
}

function overlap({ quantity, price }: Tier, tiers: readonly Tier[]): Overlap | undefined {
  const larger = tiers.filter((tier) => tier.quantity.gt(quantity)).sort((a, b) => a.quantity.cmp(b.quantity))
  const [next] = larger
  if (next === undefined) return undefined
  // The cheapest of all larger quantities is passed first; of equally cheap ones the nearest is named.
  const leastTotal = Decimal.min(...larger.map(({ total }) => total))
  const than = larger.find(({ total }) => isAtMost(total, leastTotal))!
  const first = Decimal.max(quantity, leastWholeAbove(leastTotal.div(price)))
  const last = next.quantity.sub(1)
  return first.lte(last) ? { first, last, than } : undefined
}

/** Binary dust counts for nothing, as in roundUpToWhole: an order that costs just as much is not yet in the zone. */
function leastWholeAbove(value: Decimal): Decimal {
  return one.sub(roundUpToWhole(value.neg()))
}

function warningOf(tier: Tier, tiers: readonly Tier[], zone: Overlap | undefined): Fact {
  const cheaper = tiers
    .filter(({ quantity, price }) => quantity.lt(tier.quantity) && !isAtMost(tier.price, price))
    .map(({ quantity }) => quantity)
  if (cheaper.length === 0 && zone === undefined) return { fact: 'none' }
  return {
    fact: 'quoteWarning',
    ...(cheaper.length > 0 && { dearerThan: Decimal.max(...cheaper) }),
    ...(zone && { zone: { first: zone.first, last: zone.last, larger: zone.than.quantity } }),
  }
}

function zoneInMoney({ price }: Tier, zone: Overlap | undefined): Fact {
  if (zone === undefined) return { fact: 'none' }
  const { first, than } = zone
  return {
    fact: 'orderCosts',
    order: first,
    amount: asMoney(first.mul(price)),
    larger: than.quantity,
    largerAmount: asMoney(than.total),
  }
}

/** A price that keeps a margin exactly has many digits, of which nobody pays more than these. */
function asMoney(amount: Decimal): Decimal {
  return amount.toDecimalPlaces(6)
}
