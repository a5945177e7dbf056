import { columnOf, lastOf } from '../../core/definition/columns'
import {
  defineTable,
  type Arguments,
  type RefusalWithoutKind,
  type TableRow,
  type TextsOf,
  type WorkingStep,
} from '../../core/definition/definition'
import type { Fact } from '../../core/definition/fact'
import { numbers, quantities, quantity, texts } from '../../core/definition/parameter'
import type { NoAnswer } from '../../core/definition/problem'
import { cheapestOrders, mostLookedAt } from '../../core/method/cheapestOrder'
import { litresToBeHad, mostWorthBuying, type Order, type Pack, type Purchase } from '../../core/method/purchase'
import { Decimal, zero } from '../../core/quantity/decimal'
import { leastCovering, roundDownToWhole, roundUpToWhole } from '../../core/quantity/rounding'
import { splitByWeights } from '../../core/quantity/splitting'

/** Litres are counted to the millilitre at least, and to as many decimals as the packs have. */
const leastDecimals = 3
/** Up to here every whole number is one double, so the search adds exactly. */
const mostExact = Number.MAX_SAFE_INTEGER

/** The proof weighs all packs against each other, and a cell may not take many seconds. */
const mostPacks = 100

const parameters = {
  neededL: quantity('L', { text: 'loose litres that are needed', example: 195, atLeast: 0 }),
  packNames: texts({ text: 'the packs that can be bought', example: 'Loose fill' }),
  packLitres: quantities('L', {
    text: 'loose litres from one bag: its declared litres times its expansion',
    atLeast: 0.001,
  }),
  packPrices: numbers('money per bag', {
    text: 'price of one bag; what is yours already is no purchase',
    example: 49.5,
    above: 0,
  }),
  breakQuantities: numbers('bags', {
    text: 'bags from which the break price holds for all of them; blank or 0 for no break',
    example: 200,
    default: 0,
    whole: true,
  }),
  breakPrices: numbers('money per bag', {
    text: 'price of every bag from that many on, not above packPrices; blank or 0 for no break',
    example: 48,
    default: 0,
  }),
  available: numbers('bags', {
    text: 'bags that can be had; blank for no limit',
    example: 100,
    optional: true,
    above: 0,
    whole: true,
  }),
  orderMultiples: numbers('bags', {
    text: 'bags that are sold together: a layer, a pallet',
    default: 1,
    above: 0,
    whole: true,
  }),
  supplierNames: texts({ text: 'who sells the pack; blank for one common supplier', example: 'North', optional: true }),
  deliveryPerOrder: numbers('money per order', {
    text: 'delivery of one order of that supplier, whatever its size',
    example: 25,
    optional: true,
  }),
}

type Given = Arguments<typeof parameters>

const columns = {
  pack: { heading: 'pack' },
  bags: { heading: 'bags' },
  litres: { heading: 'litres' },
  cost: { heading: 'cost' },
  leftover: { heading: 'leftover' },
}

/** A row of the arguments. */
interface Row {
  readonly name: string
  /** In small letters, so that its spelling does not matter. */
  readonly supplier: string
  /** The supplier as it was typed. */
  readonly soldBy: string
  readonly price: Decimal
  readonly priceBreak: PriceBreak | undefined
}

/** The price of every bag from so many on. */
interface PriceBreak {
  readonly from: Decimal
  readonly price: Decimal
}

/** A row of the plan: a pack that is bought. */
interface Line {
  readonly row: Row
  readonly pack: Pack
  readonly bags: number
  readonly litres: Decimal
  readonly goods: Decimal
  readonly delivery: Decimal
  readonly leftover: Decimal
}

export const buyPlan = defineTable({
  id: 'BUYPLAN',
  subject: 'buying',
  parameters,
  result: { name: 'plan', unit: 'table', columns },
  method: (given) => {
    const plan = planOf(given)
    return 'problem' in plan ? plan : { table: tableOf(plan), working: () => workingOf(plan) }
  },
})

export const buyPlanText: TextsOf<typeof buyPlan> = {
  summary:
    'The cheapest order of whole bags that covers a need, from packs with price breaks, limits and suppliers, proven optimal.',
  convention:
    'The need and the packs are loose litres: a compressed bale counts as its declared litres times its expansion. From breakQuantity on, the break price holds for every bag of its row. A delivery is paid once for each supplier used; rows without a name have one common supplier, and rows that name no delivery or 0 take that of their supplier. Cost holds the share of the delivery by litres, in cents, the cents left over to the largest remainders. Of equally cheap orders the one with less left over is taken, then the one with fewer bags, then the one with more bags of the earlier rows. A row leaves over what is not needed any more after the rows before it. What is short of the need by no more than binary dust covers it, as in BAGS.',
  result: 'a row for each pack to buy, then the total',
  columns: {
    pack: { text: 'the pack', unit: 'text' },
    bags: { text: 'bags to buy', unit: 'bags' },
    litres: { text: 'loose litres in them', unit: 'L' },
    cost: { text: 'their price and their share of the delivery', unit: 'money' },
    leftover: { text: 'litres that are not needed after the rows before', unit: 'L' },
  },
  plain: (columns) => ({
    reason:
      'Excel has no formula that weighs every order of whole bags. The check is for packs of different names and a plan that buys some: whether the bags cover the need, and the costs of the rows make the total.',
    check:
      `LET(boughtEach, DROP(DROP(plan, 1), -1), bagsEach, ${columnOf(columns, 'bags', 'boughtEach')}, ` +
      `litresEach, XLOOKUP(${columnOf(columns, 'pack', 'boughtEach')}, packNames, packLitres), ` +
      `totalCost, ${lastOf(columns, 'cost', 'plan')}, ` +
      'AND(SUM(bagsEach * litresEach) * (1 + 10 ^ -12) >= neededL, ' +
      `ABS(SUM(${columnOf(columns, 'cost', 'boughtEach')}) - totalCost) <= totalCost / 10 ^ 12))`,
  }),
  examples: [
    {
      text: '195 L at 49.50 a bag, and 48.00 from 200 on: five more bags cost less',
      given: [195, ['Loose fill'], [1], [49.5], [200], [48]],
      gives: [
        ['Loose fill', 200, 200, 9600, 5],
        ['total', 200, 200, 9600, 5],
      ],
      source: 'definition',
    },
    {
      text: 'The large bag has the best price per litre, two small ones fill up for less than another large one',
      given: [340, ['Perlite 100 L', 'Perlite 20 L'], [100, 20], [18, 4.2]],
      gives: [
        ['Perlite 100 L', 3, 300, 54, 0],
        ['Perlite 20 L', 2, 40, 8.4, 0],
        ['total', 5, 340, 62.4, 0],
      ],
      source: 'definition',
    },
    {
      text: 'Two suppliers: the bale is not worth a second delivery, and the delivery of 25 is shared by litres',
      given: [
        500,
        ['Mix 60 L', 'Mix 70 L', 'Bale 250 L'],
        [60, 70, 250],
        [9, 10, 40],
        [8, '', ''],
        [8.5, '', ''],
        ['', 100, 1],
        [1, 2, 1],
        ['North', 'North', 'South'],
        [25, '', 30],
      ],
      gives: [
        ['Mix 60 L', 6, 360, 72, 0],
        ['Mix 70 L', 2, 140, 27, 0],
        ['total', 8, 500, 99, 0],
      ],
      source: 'definition',
    },
  ],
}

/** What is bought, with all that the working reads. */
interface Plan {
  readonly rows: readonly Row[]
  readonly deliveries: Deliveries
  readonly scaled: Scaled
  readonly order: Order
  readonly lines: readonly Line[]
  readonly total: Omit<TableRow<typeof columns>, 'pack'>
}

interface NoPlan {
  readonly problem: RefusalWithoutKind | NoAnswer
}

function planOf(given: Given): Plan | NoPlan {
  const slip = slipIn(given)
  if (slip !== undefined) return { problem: slip }
  const paid = deliveriesOf(given)
  if ('problem' in paid) return paid
  const { deliveries } = paid
  const { neededL } = given
  const rows = rowsOf(given)
  const scaled = inWholeNumbers(given, rows, deliveries)
  const order = cheapestOrder(scaled, neededL)
  if ('problem' in order) return order
  const { inLitres, inMoney } = scaled
  const total = {
    bags: new Decimal(order.bags.reduce((sum, bags) => sum + bags, 0)),
    litres: inLitres(order.litres),
    cost: inMoney(order.cost),
    leftover: leftoverOf(inLitres(order.litres), neededL),
  }
  return { rows, deliveries, scaled, order, lines: linesOf(order, rows, scaled, deliveries, neededL), total }
}

function cheapestOrder({ purchase, inLitres }: Scaled, neededL: Decimal): Order | NoPlan {
  const tooLarge = beyondExact(purchase)
  if (tooLarge !== undefined) return { problem: { code: 'beyondExact', parameter: tooLarge } }
  const most = litresToBeHad(purchase.packs)
  if (most < purchase.need) {
    const had = inLitres(most).toString()
    return { problem: { kind: 'noAnswer', code: 'cannotCover', needed: neededL.toString(), most: had } }
  }
  if (!addsExactly(purchase)) return { problem: { code: 'beyondExact', parameter: 'packPrices' } }
  const found = purchase.need === 0 ? [] : cheapestOrders(purchase, 1)
  if (found === undefined)
    return { problem: { kind: 'noAnswer', code: 'searchGivenUp', most: mostLookedAt.toLocaleString('en-US') } }
  return found[0] ?? { bags: purchase.packs.map(() => 0), cost: 0, litres: 0 }
}

function tableOf({ lines, total }: Plan): readonly TableRow<typeof columns>[] {
  return [
    ...lines.map(({ row, bags, litres, goods, delivery, leftover }) => ({
      pack: row.name,
      bags: new Decimal(bags),
      litres,
      cost: goods.add(delivery),
      leftover,
    })),
    { pack: { fact: 'total' }, ...total },
  ]
}

function workingOf({ rows, deliveries, scaled, order, lines, total }: Plan): readonly WorkingStep[] {
  return [
    ...lines.flatMap((line) => stepsOf(line, scaled.purchase.need, order)),
    ...[...deliveries].flatMap(([supplier, delivery]) =>
      deliveryStep(
        lines.filter(({ row }) => row.supplier === supplier),
        delivery,
      ),
    ),
    ...runnerUp(scaled, rows),
    { name: 'litres', text: 'loose litres in all', formula: 'sum of the rows', value: total.litres, unit: 'L' },
    { name: 'leftover', text: 'litres beyond the need', formula: 'litres - neededL', value: total.leftover, unit: 'L' },
    {
      name: 'cost',
      text: 'the least cost that covers the need',
      formula: 'goods + deliveries, every order weighed',
      value: total.cost,
      unit: 'money',
    },
  ]
}

/** What is wrong with a price or a break beside the others of its row. */
function slipIn({ packNames, packPrices, breakQuantities, breakPrices }: Given): RefusalWithoutKind | undefined {
  if (packNames.length > mostPacks) {
    return { code: 'tooManyRows', parameter: 'packNames', got: packNames.length, most: mostPacks }
  }
  // Some hosts hand a blank cell over as 0, so 0 in both columns is no break, and in one of them a slip.
  const lonely = breakQuantities.findIndex((from, row) => from.isZero() !== breakPrices[row]!.isZero())
  if (lonely !== -1) {
    const isWithoutQuantity = breakQuantities[lonely]!.isZero()
    return {
      code: 'needsOther',
      row: lonely + 1,
      parameter: isWithoutQuantity ? 'breakPrices' : 'breakQuantities',
      other: isWithoutQuantity ? 'breakQuantities' : 'breakPrices',
    }
  }
  const dearer = breakPrices.findIndex((price, row) => price.gt(packPrices[row]!))
  if (dearer === -1) return undefined
  return {
    code: 'aboveOther',
    row: dearer + 1,
    parameter: 'breakPrices',
    value: breakPrices[dearer]!.toString(),
    other: 'packPrices',
    otherValue: packPrices[dearer]!.toString(),
  }
}

/** What a delivery of each supplier costs, in the order in which the suppliers are first named. */
type Deliveries = ReadonlyMap<string, Decimal>

function deliveriesOf({
  packNames,
  supplierNames,
  deliveryPerOrder,
}: Given): { readonly deliveries: Deliveries } | { readonly problem: RefusalWithoutKind } {
  const deliveries = new Map<string, Decimal>()
  for (const row of packNames.keys()) {
    const supplier = supplierOf(supplierNames[row])
    const delivery = deliveryPerOrder[row] ?? zero
    const known = deliveries.get(supplier) ?? zero
    if (!known.isZero() && !delivery.isZero() && !known.eq(delivery)) {
      return {
        problem: {
          code: 'deliveriesDiffer',
          parameter: 'deliveryPerOrder',
          row: row + 1,
          value: delivery.toString(),
          other: known.toString(),
        },
      }
    }
    deliveries.set(supplier, known.isZero() ? delivery : known)
  }
  return { deliveries }
}

function supplierOf(name = ''): string {
  return name.toLowerCase()
}

function rowsOf({ packNames, packPrices, breakQuantities, breakPrices, supplierNames }: Given): readonly Row[] {
  return packNames.map((name, row): Row => {
    const [from, price] = [breakQuantities[row]!, breakPrices[row]!]
    return {
      name,
      supplier: supplierOf(supplierNames[row]),
      soldBy: supplierNames[row] ?? '',
      price: packPrices[row]!,
      priceBreak: from.isZero() ? undefined : { from, price },
    }
  })
}

/** The purchase in whole numbers, which the search adds exactly, and the way back from them. */
interface Scaled {
  readonly purchase: Purchase
  readonly inLitres: (whole: number) => Decimal
  readonly inMoney: (whole: number) => Decimal
}

function inWholeNumbers(
  { neededL, packLitres, available, orderMultiples }: Given,
  rows: readonly Row[],
  deliveries: Deliveries,
): Scaled {
  const money = [...rows.flatMap(({ price, priceBreak }) => [price, priceBreak?.price ?? zero]), ...deliveries.values()]
  const moneyScale = tenTo(Math.max(2, ...money.map((amount) => amount.decimalPlaces())))
  const inUnits = (amount: Decimal) => amount.mul(moneyScale).toNumber()
  const needed = leastCovering(neededL, Decimal.min(...packLitres))
  const purchaseIn = (litreScale: Decimal): Purchase => ({
    need: roundUpToWhole(needed.mul(litreScale)).toNumber(),
    packs: rows.map(({ price, priceBreak, supplier }, row) => ({
      litres: roundDownToWhole(packLitres[row]!.mul(litreScale)).toNumber(),
      price: inUnits(price),
      ...(priceBreak && { priceBreak: { from: priceBreak.from.toNumber(), price: inUnits(priceBreak.price) } }),
      available: available[row]?.toNumber() ?? Infinity,
      multiple: orderMultiples[row]!.toNumber(),
      supplier: [...deliveries.keys()].indexOf(supplier),
    })),
    deliveries: [...deliveries.values()].map(inUnits),
  })
  // 2 yd3 are two loads of 1 yd3, though neither is whole millilitres. Large sums are held exactly with fewer decimals.
  let decimals = Math.max(leastDecimals, ...packLitres.map((litres) => litres.decimalPlaces()))
  while (decimals > leastDecimals && !addsExactly(purchaseIn(tenTo(decimals)))) decimals--
  const litreScale = tenTo(decimals)
  return {
    purchase: purchaseIn(litreScale),
    inLitres: (whole) => new Decimal(whole).div(litreScale),
    inMoney: (whole) => new Decimal(whole).div(moneyScale),
  }
}

/** The argument in which a single number is too large to be held exactly. */
function beyondExact({ need, packs }: Purchase): keyof Given | undefined {
  if (need > mostExact) return 'neededL'
  if (packs.some(({ litres }) => litres > mostExact)) return 'packLitres'
  return packs.some(({ litres, multiple }) => litres * multiple > mostExact) ? 'orderMultiples' : undefined
}

/** Whether no sum of the search can leave the whole numbers that are held exactly. */
function addsExactly({ need, packs, deliveries }: Purchase): boolean {
  const most = packs.map((pack) => ({ pack, bags: mostWorthBuying(pack, need) }))
  const litres = most.reduce((sum, { pack, bags }) => sum + bags * pack.litres, 0)
  const cost = most.reduce((sum, { pack, bags }) => sum + bags * Math.max(pack.price, pack.priceBreak?.price ?? 0), 0)
  return litres + need <= mostExact && cost + deliveries.reduce((sum, delivery) => sum + delivery, 0) <= mostExact
}

function tenTo(power: number): Decimal {
  return new Decimal(10).pow(power)
}

function leftoverOf(litres: Decimal, needed: Decimal): Decimal {
  return Decimal.max(zero, litres.sub(Decimal.max(zero, needed)))
}

function pricePaid({ price, priceBreak }: Row, bags: number): Decimal {
  return priceBreak !== undefined && priceBreak.from.lte(bags) ? priceBreak.price : price
}

function linesOf(
  order: Order,
  rows: readonly Row[],
  { purchase, inLitres }: Scaled,
  deliveries: Deliveries,
  neededL: Decimal,
): readonly Line[] {
  const bought = rows.flatMap((row, index) =>
    order.bags[index] === 0 ? [] : [{ row, pack: purchase.packs[index]!, bags: order.bags[index]! }],
  )
  let before = zero
  const lines = bought.map(({ row, pack, bags }): Line => {
    const litres = inLitres(bags * pack.litres)
    const leftover = leftoverOf(litres, neededL.sub(before))
    before = before.add(litres)
    return { row, pack, bags, litres, goods: pricePaid(row, bags).mul(bags), delivery: zero, leftover }
  })
  const shares = new Map<Line, Decimal>()
  for (const [supplier, delivery] of deliveries) {
    const supplied = lines.filter(({ row }) => row.supplier === supplier)
    if (supplied.length === 0) continue
    splitByWeights(
      delivery,
      supplied.map(({ litres }) => litres),
    ).forEach((share, index) => shares.set(supplied[index]!, share))
  }
  return lines.map((line) => ({ ...line, delivery: shares.get(line) ?? zero }))
}

function stepsOf(line: Line, need: number, order: Order): readonly WorkingStep[] {
  const { row, bags, goods } = line
  const price = pricePaid(row, bags)
  const step: WorkingStep = {
    name: row.name,
    text: 'price of the goods, without delivery',
    formula: `${bags} * ${price.toString()}`,
    value: goods,
    unit: 'money',
  }
  const { priceBreak } = row
  if (priceBreak === undefined) return [step]
  return [
    step,
    {
      name: { fact: 'breakOf', pack: row.name },
      text: 'how far the price break is, with the other rows as they are',
      formula: { fact: 'breakFrom', bags: priceBreak.from, price: priceBreak.price },
      value: distanceToBreak(line, priceBreak, need, order),
      unit: 'money',
    },
  ]
}

/** How many more bags reach the break, of what was bought, or of what would have to be. */
function distanceToBreak(
  { row, pack, bags, goods }: Line,
  { from, price }: PriceBreak,
  need: number,
  order: Order,
): Fact {
  const { multiple, litres, available } = pack
  if (from.gt(bags)) {
    const reaching = roundUpToWhole(from.div(multiple)).mul(multiple)
    if (reaching.gt(available)) return { fact: 'breakOutOfReach' }
    return { fact: 'breakCosts', bags: reaching.sub(bags), amount: price.mul(reaching).sub(goods) }
  }
  const others = order.litres - bags * litres
  const fewest = Math.ceil((need - others) / (litres * multiple)) * multiple
  if (from.lte(fewest)) return { fact: 'breakNeeded' }
  return { fact: 'breakSaves', bags: new Decimal(bags - fewest), amount: row.price.mul(fewest).sub(goods) }
}

/** @param lines Those of one supplier. */
function deliveryStep(lines: readonly Line[], delivery: Decimal): readonly WorkingStep[] {
  const [first] = lines
  if (first === undefined || delivery.isZero()) return []
  return [
    {
      name: { fact: 'delivery', from: first.row.soldBy },
      text: 'delivery, paid once',
      formula: {
        fact: 'deliveryShares',
        shares: lines.map((line) => ({ amount: line.delivery, pack: line.row.name })),
      },
      value: delivery,
      unit: 'money',
    },
  ]
}

/** The best order other than the plan. */
function runnerUp({ purchase, inMoney }: Scaled, rows: readonly Row[]): readonly WorkingStep[] {
  if (purchase.need === 0) return []
  const step = { name: 'runnerUp', text: 'the best different order', unit: 'money' }
  const orders = cheapestOrders(purchase, 2)
  if (orders === undefined) return [{ ...step, formula: { fact: 'searchGivenUp' }, value: { fact: 'notKnown' } }]
  const second = orders[1]
  if (second === undefined) return [{ ...step, formula: { fact: 'noOtherOrder' }, value: { fact: 'none' } }]
  const bought = rows.flatMap(({ name }, index) => (second.bags[index] === 0 ? [] : [`${second.bags[index]} ${name}`]))
  return [{ ...step, formula: bought.join(' + '), value: inMoney(second.cost) }]
}
