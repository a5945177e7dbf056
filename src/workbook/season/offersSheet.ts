import { buyPlan } from '../../functions/buying/buyPlan'
import { bags } from '../../functions/buying/bags'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import {
  dayInput,
  formats,
  headings,
  headOf,
  input,
  ofTable,
  openInput,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { aboveTable, letterOf, spilledTable } from './spilledTable'
import { tableIn } from './tableIn'

/** Invented offers of invented suppliers for one medium. A break price counts for every pack of the line from that number on. */
interface Offer {
  readonly pack: string
  readonly supplier: string
  readonly litres: number
  readonly price: number
  readonly breakFrom?: number
  readonly breakPrice?: number
  readonly available?: number
  readonly soldBy: number
  readonly delivery: number
  /** As year-month-day. */
  readonly priceOf: string
}

const offers: readonly Offer[] = [
  {
    pack: 'Bag 70 L, Hillside',
    supplier: 'Hillside',
    litres: 70,
    price: 13.9,
    breakFrom: 12,
    breakPrice: 12.6,
    soldBy: 1,
    delivery: 38,
    priceOf: '2026-01-26',
  },
  {
    pack: 'Bulk bag 1,000 L, Hillside',
    supplier: 'Hillside',
    litres: 1000,
    price: 148,
    available: 1,
    soldBy: 1,
    delivery: 38,
    priceOf: '2026-01-26',
  },
  {
    pack: 'Bag 80 L, Quayside',
    supplier: 'Quayside',
    litres: 80,
    price: 15.2,
    breakFrom: 20,
    breakPrice: 14.1,
    soldBy: 2,
    delivery: 25,
    priceOf: '2025-12-03',
  },
]

/** A row for each pack that is bought, and the total. */
const mostPlanRows = offers.length + 1

function offerRow({
  pack,
  supplier,
  litres,
  price,
  breakFrom,
  breakPrice,
  available,
  soldBy,
  delivery,
  priceOf,
}: Offer): Row {
  const orOpen = (value: number | undefined, format: string) =>
    value === undefined ? openInput(format) : input(value, format)
  return [
    input(pack),
    input(supplier),
    input(litres, formats.count),
    input(price, formats.price),
    orOpen(breakFrom, formats.count),
    orOpen(breakPrice, formats.price),
    orOpen(available, formats.count),
    input(soldBy, formats.count),
    input(delivery, formats.price),
    dayInput(priceOf),
  ]
}

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), undefined, text(how)]
}

/** The cheapest order of one medium out of several packs, price breaks and suppliers. */
export function offersSheet(): NamedSheet {
  const lastOfPlan = ({ plan }: { readonly plan: number }) => plan + mostPlanRows
  const ofPlan = (key: keyof typeof buyPlan.result.columns, at: { readonly plan: number }) =>
    `${letterOf(buyPlan, key)}${at.plan}:${letterOf(buyPlan, key)}${lastOfPlan(at)}`
  const { rows, at } = layOut({
    ...headOf(
      'Offers',
      'One medium, two suppliers, three packs, price breaks and delivery: the cheapest order that covers what is needed.',
    ),
    gap: blank,
    units: () =>
      headings(
        'name',
        'name',
        'L a pack',
        'EUR a pack',
        'packs',
        'EUR a pack',
        'packs',
        'packs',
        'EUR an order',
        'year-month-day',
      ),
    heading: () =>
      headings(
        'Pack',
        'Supplier',
        'Loose',
        'Price',
        'From',
        'Then',
        'Available',
        'Sold by the',
        'Delivery',
        'Price of',
      ),
    offers: { height: offers.length, rows: () => offers.map(offerRow) },
    blanks: () => [
      text(
        'Left blank: no price break; no limit to what is available. Delivery is paid once for each supplier that is used.',
      ),
    ],
    gapBetween: blank,
    answer: () => headings('The order', 'Figure', 'Unit', '', 'Where it comes from', '', '', '', ''),
    medium: () => line('Medium', input('Premix'), '', 'A name as on Prices'),
    needed: (at) =>
      line(
        'Needed',
        result(
          `=MAX(INDEX(MediumWithWaste,MATCH(B${at.medium},MediumName,0))-INDEX(MediumOnHand,MATCH(B${at.medium},MediumName,0)),0)`,
          formats.litres,
        ),
        'L loose',
        'Buying: with waste, less the stock',
      ),
    listed: (at) =>
      line(
        'One pack of the price list',
        result(`=INDEX(MediumCost,MATCH(B${at.medium},MediumName,0))`, formats.price),
        'EUR',
        'Buying: what its line costs',
      ),
    planned: (at) =>
      line(
        'The order below',
        total(ofTable(`A${at.plan}`, `SUMIF(${ofPlan('pack', at)},"total",${ofPlan('cost', at)})`), formats.price),
        'EUR',
        'The table below',
      ),
    saved: (at) =>
      line(
        'Saved by the order below',
        total(`=B${at.listed}-B${at.planned}`, formats.price),
        'EUR',
        'Buying goes by the price list all the same',
      ),
    gapBelow: blank,
    cautions: cautionLines(bags),
    gapAbove: blank,
    planHeading: () =>
      aboveTable(buyPlan, {
        pack: 'The cheapest order',
        bags: 'packs',
        litres: 'L loose',
        cost: 'EUR',
        leftover: 'L loose',
      }),
    plan: {
      height: mostPlanRows + 1,
      rows: (at) => {
        const column = (letter: string) => `${letter}${at.offers}:${letter}${at.offers + offers.length - 1}`
        return spilledTable(
          buyPlan,
          `=STICK.BUYPLAN(B${at.needed},${['A', 'C', 'D', 'E', 'F', 'G', 'H', 'B', 'I'].map(column).join(',')})`,
          { pack: undefined, bags: formats.count, litres: formats.count, cost: formats.price, leftover: formats.count },
          mostPlanRows,
        )
      },
    },
  })
  const name = naming('Offers')
  return {
    sheet: {
      name: 'Offers',
      widths: [26, 14, 11, 13, 12, 13, 12, 13, 14, 15],
      frozenRows: at.invented,
      frozenColumns: 0,
      rows,
      tables: [tableIn('BuyingOffers', 'A', at.heading, 'J', at.offers + offers.length - 1)],
    },
    names: [name('SavedByOrder', 'B', at.saved)],
  }
}
