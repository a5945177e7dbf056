import { defineByMethod, type MethodResult, type WorkingStep } from '../../core/definition/definition'
import { numbers, quantities, quantity, texts } from '../../core/definition/parameter'
import { cheapestOrders, litresToBeHad, mostLookedAt, mostWorthBuying, type Order, type Pack, type Purchase } from '../../core/method/cheapestOrder'
import { Decimal, zero } from '../../core/quantity/decimal'
import { leastCovering, roundDownToWhole, roundUpToWhole } from '../../core/quantity/rounding'
import { splitByWeights } from '../../core/quantity/splitting'

/** Litres are counted to the millilitre at least, and to as many decimals as the packs have. */
const leastDecimals = 3
/** Up to here every whole number is one double, so the search adds exactly. */
const mostExact = Number.MAX_SAFE_INTEGER

/** The proof weighs all packs against each other, and a cell may not take many seconds. */
const mostPacks = 100

/** A row of the arguments. */
interface Row {
  readonly name: string
  /** In small letters, so that its spelling does not matter. */
  readonly supplier: string
  /** The supplier as it was typed. */
  readonly soldBy: string
  readonly price: Decimal
  readonly priceBreak: { readonly from: Decimal; readonly price: Decimal } | undefined
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

export const buyPlan = defineByMethod({
  id: 'BUYPLAN',
  subject: 'buying',
  summary: 'The cheapest order of whole bags that covers a need, from packs with price breaks, limits and suppliers, proven optimal.',
  convention: 'The need and the packs are loose litres: a compressed bale counts as its declared litres times its expansion. From breakQuantity on, the break price holds for every bag of its row. A delivery is paid once for each supplier used; rows without a name have one common supplier, and rows that name no delivery or 0 take that of their supplier. Cost holds the share of the delivery by litres, in cents, the cents left over to the largest remainders. Of equally cheap orders the one with less left over is taken, then the one with fewer bags, then the one with more bags of the earlier rows. A row leaves over what is not needed any more after the rows before it. What is short of the need by no more than binary dust covers it, as in BAGS.',
  parameters: {
    neededL: quantity('L', { text: 'loose litres that are needed', atLeast: 0 }),
    packNames: texts({ text: 'the packs that can be bought' }),
    packLitres: quantities('L', { text: 'loose litres from one bag: its declared litres times its expansion', atLeast: 0.001 }),
    packPrices: numbers('money per bag', { text: 'price of one bag; what is yours already is no purchase', above: 0 }),
    breakQuantities: numbers('bags', { text: 'bags from which the break price holds for all of them; blank or 0 for no break', default: 0, whole: true }),
    breakPrices: numbers('money per bag', { text: 'price of every bag from that many on, not above packPrices; blank or 0 for no break', default: 0 }),
    available: numbers('bags', { text: 'bags that can be had; blank for no limit', optional: true, above: 0, whole: true }),
    orderMultiples: numbers('bags', { text: 'bags that are sold together: a layer, a pallet', default: 1, above: 0, whole: true }),
    supplierNames: texts({ text: 'who sells the pack; blank for one common supplier', optional: true }),
    deliveryPerOrder: numbers('money per order', { text: 'delivery of one order of that supplier, whatever its size', optional: true }),
  },
  result: {
    name: 'plan',
    text: 'a row for each pack to buy, then the total',
    unit: 'table',
    columns: [
      { heading: 'pack', text: 'the pack', unit: 'text' },
      { heading: 'bags', text: 'bags to buy', unit: 'bags' },
      { heading: 'litres', text: 'loose litres in them', unit: 'L' },
      { heading: 'cost', text: 'their price and their share of the delivery', unit: 'money' },
      { heading: 'leftover', text: 'litres that are not needed after the rows before', unit: 'L' },
    ],
  },
  method: ({ neededL, packNames, packLitres, packPrices, breakQuantities, breakPrices, available, orderMultiples, supplierNames, deliveryPerOrder }): MethodResult => {
    if (packNames.length > mostPacks) return { problem: { code: 'tooManyRows', parameter: 'packNames', got: packNames.length, most: mostPacks } }
    // Some hosts hand a blank cell over as 0, so 0 in both columns is no break, and in one of them a slip.
    const lonely = breakQuantities.findIndex((from, row) => from.isZero() !== breakPrices[row]!.isZero())
    if (lonely !== -1) {
      const [parameter, other] = breakQuantities[lonely]!.isZero() ? ['breakPrices', 'breakQuantities'] : ['breakQuantities', 'breakPrices']
      return { problem: { code: 'needsOther', parameter: parameter!, row: lonely + 1, other: other! } }
    }
    const dearer = breakPrices.findIndex((price, row) => price.gt(packPrices[row]!))
    if (dearer !== -1) {
      return { problem: { code: 'aboveOther', parameter: 'breakPrices', row: dearer + 1, value: breakPrices[dearer]!.toString(), other: 'packPrices', otherValue: packPrices[dearer]!.toString() } }
    }
    const suppliers = packNames.map((_, row) => (supplierNames[row] ?? '').toLowerCase())
    const deliveries = new Map<string, Decimal>()
    for (const [row, supplier] of suppliers.entries()) {
      const delivery = deliveryPerOrder[row] ?? zero
      const known = deliveries.get(supplier) ?? zero
      if (!known.isZero() && !delivery.isZero() && !known.eq(delivery)) {
        return { problem: { code: 'deliveriesDiffer', parameter: 'deliveryPerOrder', row: row + 1, value: delivery.toString(), other: known.toString() } }
      }
      deliveries.set(supplier, known.isZero() ? delivery : known)
    }
    const rows = packNames.map((name, row): Row => {
      const [from, price] = [breakQuantities[row]!, breakPrices[row]!]
      return { name, supplier: suppliers[row]!, soldBy: supplierNames[row] ?? '', price: packPrices[row]!, priceBreak: from.isZero() ? undefined : { from, price } }
    })

    const money = [...rows.flatMap(({ price, priceBreak }) => [price, priceBreak?.price ?? zero]), ...deliveries.values()]
    const scale = tenTo(Math.max(2, ...money.map((amount) => amount.decimalPlaces())))
    const inUnits = (amount: Decimal) => amount.mul(scale).toNumber()
    const needed = leastCovering(neededL, Decimal.min(...packLitres))
    const purchaseIn = (litreScale: Decimal): Purchase => ({
      need: roundUpToWhole(needed.mul(litreScale)).toNumber(),
      packs: rows.map(({ price, priceBreak, supplier }, row) => ({
        litres: roundDownToWhole(packLitres[row]!.mul(litreScale)).toNumber(),
        price: inUnits(price),
        ...(priceBreak === undefined ? {} : { priceBreak: { from: priceBreak.from.toNumber(), price: inUnits(priceBreak.price) } }),
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
    const inLitres = (whole: number) => new Decimal(whole).div(litreScale)
    const purchase = purchaseIn(litreScale)
    const { packs, need } = purchase
    const tooLarge = need > mostExact ? 'neededL'
      : packs.some(({ litres }) => litres > mostExact) ? 'packLitres'
        : packs.some(({ litres, multiple }) => litres * multiple > mostExact) ? 'orderMultiples' : undefined
    if (tooLarge !== undefined) return { problem: { code: 'beyondExact', parameter: tooLarge } }
    if (litresToBeHad(packs) < need) {
      return { problem: { kind: 'noAnswer', code: 'cannotCover', needed: neededL.toString(), most: inLitres(litresToBeHad(packs)).toString() } }
    }
    if (!addsExactly(purchase)) return { problem: { code: 'beyondExact', parameter: 'packPrices' } }
    const found = need === 0 ? [] : cheapestOrders(purchase, 1)
    if (found === undefined) return { problem: { kind: 'noAnswer', code: 'searchGivenUp', most: mostLookedAt.toLocaleString('en-US') } }

    const order = found[0] ?? { bags: rows.map(() => 0), cost: 0, litres: 0 }
    const lines = linesOf(order, rows, purchase, deliveries, { neededL, inLitres })
    const total = ['total', new Decimal(order.bags.reduce((sum, bags) => sum + bags, 0)), inLitres(order.litres), new Decimal(order.cost).div(scale), leftoverOf(inLitres(order.litres), neededL)]
    return {
      table: [...lines.map(({ row, bags, litres, goods, delivery, leftover }) => [row.name, new Decimal(bags), litres, goods.add(delivery), leftover]), total],
      working: () => [
        ...lines.flatMap((line) => stepsOf(line, need, order)),
        ...[...deliveries].filter(([, delivery]) => !delivery.isZero()).flatMap(([supplier, delivery]) => deliveryStep(lines.filter(({ row }) => row.supplier === supplier), delivery)),
        ...runnerUp(purchase, rows, scale),
        { name: 'litres', text: 'loose litres in all', formula: 'sum of the rows', value: inLitres(order.litres), unit: 'L' },
        { name: 'leftover', text: 'litres beyond the need', formula: 'litres - neededL', value: leftoverOf(inLitres(order.litres), neededL), unit: 'L' },
        { name: 'cost', text: 'the least cost that covers the need', formula: 'goods + deliveries, every order weighed', value: new Decimal(order.cost).div(scale), unit: 'money' },
      ],
    }
  },
  plain: {
    reason: 'Excel has no formula that weighs every order of whole bags. The check is for packs of different names and a plan that buys some: whether the bags cover the need, and the costs of the rows make the total.',
    check: 'LET(boughtEach, DROP(DROP(plan, 1), -1), bagsEach, INDEX(boughtEach, 0, 2), litresEach, XLOOKUP(INDEX(boughtEach, 0, 1), packNames, packLitres), totalCost, INDEX(plan, ROWS(plan), 4), '
      + 'AND(SUM(bagsEach * litresEach) * (1 + 10 ^ -12) >= neededL, ABS(SUM(INDEX(boughtEach, 0, 4)) - totalCost) <= totalCost / 10 ^ 12))',
  },
  examples: [
    { text: '195 L at 49.50 a bag, and 48.00 from 200 on: five more bags cost less', given: [195, ['Loose fill'], [1], [49.5], [200], [48]], gives: [['Loose fill', 200, 200, 9600, 5], ['total', 200, 200, 9600, 5]], source: 'definition' },
    {
      text: 'The large bag has the best price per litre, two small ones fill up for less than another large one',
      given: [340, ['Perlite 100 L', 'Perlite 20 L'], [100, 20], [18, 4.2]],
      gives: [['Perlite 100 L', 3, 300, 54, 0], ['Perlite 20 L', 2, 40, 8.4, 0], ['total', 5, 340, 62.4, 0]],
      source: 'definition',
    },
    {
      text: 'Two suppliers: the bale is not worth a second delivery, and the delivery of 25 is shared by litres',
      given: [500, ['Mix 60 L', 'Mix 70 L', 'Bale 250 L'], [60, 70, 250], [9, 10, 40], [8, '', ''], [8.5, '', ''], ['', 100, 1], [1, 2, 1], ['North', 'North', 'South'], [25, '', 30]],
      gives: [['Mix 60 L', 6, 360, 72, 0], ['Mix 70 L', 2, 140, 27, 0], ['total', 8, 500, 99, 0]],
      source: 'definition',
    },
  ],
})

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
  order: Order, rows: readonly Row[], { packs }: Purchase, deliveries: ReadonlyMap<string, Decimal>,
  { neededL, inLitres }: { readonly neededL: Decimal; readonly inLitres: (whole: number) => Decimal },
): readonly Line[] {
  const bought = rows.flatMap((row, index) => (order.bags[index] === 0 ? [] : [{ row, pack: packs[index]!, bags: order.bags[index]! }]))
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
    splitByWeights(delivery, supplied.map(({ litres }) => litres)).forEach((share, index) => shares.set(supplied[index]!, share))
  }
  return lines.map((line) => ({ ...line, delivery: shares.get(line) ?? zero }))
}

function stepsOf(line: Line, need: number, order: Order): readonly WorkingStep[] {
  const { row, bags, goods } = line
  const price = pricePaid(row, bags)
  const step: WorkingStep = { name: row.name, text: 'price of the goods, without delivery', formula: `${bags} * ${price.toString()}`, value: goods, unit: 'money' }
  const distance = distanceToBreak(line, need, order)
  return distance === undefined ? [step] : [step, { name: `${row.name}: break`, text: 'how far the price break is, with the other rows as they are', formula: `from ${row.priceBreak!.from.toString()} bags at ${row.priceBreak!.price.toString()}`, value: distance, unit: 'money' }]
}

/** "2 more bags reach the break and save 14.20", of what was bought, or of what would have to be. */
function distanceToBreak({ row, pack, bags, goods }: Line, need: number, order: Order): string | undefined {
  const { priceBreak } = row
  if (priceBreak === undefined) return undefined
  const { multiple, litres, available } = pack
  if (priceBreak.from.gt(bags)) {
    const reaching = roundUpToWhole(priceBreak.from.div(multiple)).mul(multiple)
    if (reaching.gt(available)) return 'the break cannot be reached with what is available'
    const more = priceBreak.price.mul(reaching).sub(goods)
    return `${reachesBreak(reaching.sub(bags), 'cost', more)} more`
  }
  const others = order.litres - bags * litres
  const fewest = Math.ceil((need - others) / (litres * multiple)) * multiple
  if (priceBreak.from.lte(fewest)) return 'the need reaches the break'
  const saved = row.price.mul(fewest).sub(goods)
  return reachesBreak(new Decimal(bags - fewest), 'save', saved)
}

function reachesBreak(bags: Decimal, does: 'cost' | 'save', amount: Decimal): string {
  const shown = amount.toFixed(Math.max(2, amount.decimalPlaces()))
  return bags.eq(1) ? `1 more bag reaches the break and ${does}s ${shown}` : `${bags.toString()} more bags reach the break and ${does} ${shown}`
}

function deliveryStep(lines: readonly Line[], delivery: Decimal): readonly WorkingStep[] {
  const [first] = lines
  if (first === undefined) return []
  const { soldBy } = first.row
  const from = soldBy === '' ? '' : ` from ${soldBy}`
  return [{ name: `delivery${from}`, text: 'delivery, paid once', formula: lines.map((line) => `${line.delivery.toString()} for ${line.row.name}`).join(' + '), value: delivery, unit: 'money' }]
}

/** The best order other than the plan. */
function runnerUp(purchase: Purchase, rows: readonly Row[], scale: Decimal): readonly WorkingStep[] {
  if (purchase.need === 0) return []
  const step = { name: 'runnerUp', text: 'the best different order' }
  const orders = cheapestOrders(purchase, 2)
  if (orders === undefined) return [{ ...step, formula: 'the search for it was given up', value: 'not known', unit: 'money' }]
  const second = orders[1]
  if (second === undefined) return [{ ...step, formula: 'there is no other', value: 'none', unit: 'money' }]
  const bought = rows.flatMap(({ name }, index) => (second.bags[index] === 0 ? [] : [`${second.bags[index]} ${name}`]))
  return [{ ...step, formula: bought.join(' + '), value: new Decimal(second.cost).div(scale), unit: 'money' }]
}
