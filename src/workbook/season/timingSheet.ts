import { stockPlan } from '../../functions/review/stockPlan'
import { bags } from '../../functions/buying/bags'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { formats, headings, headOf, input, result, text, type NamedSheet, type Row } from './cells'
import { blank, layOut, type RowNumbers } from './layOut'
import { sixWays } from './sixWays'
import { aboveTable, spilledTable } from './spilledTable'

/** Invented prices of a pack, without its delivery: they rise once spring orders come in. */
const unitPrices: readonly number[] = [13.9, 13.9, 15, 15, 14.6]

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), text(how)]
}

/** When to order one medium over the sticking weeks. */
export function timingSheet(): NamedSheet {
  const last = (at: RowNumbers<'periods'>) => at.periods + unitPrices.length - 1
  const ofMedium = (range: string, { way }: RowNumbers<'way'>) =>
    `INDEX(${range},MATCH(INDEX(WayProduct,MATCH(B${way},WayName,0)),MediumName,0))`
  const column = (letter: string, at: RowNumbers<'periods'>) => `${letter}${at.periods}:${letter}${last(at)}`
  const { rows, at } = layOut({
    ...headOf(
      'Timing',
      'One medium over the sticking weeks: fewer deliveries cost less freight and more room, and the price changes on the way.',
    ),
    gap: blank,
    heading: () => headings('What is asked', 'Figure', 'Unit', 'Where it comes from', '', ''),
    way: () => line('Way of rooting', input(sixWays.premix.name), '', 'One that fills trays'),
    pack: (at) =>
      line(
        'Litres in a pack',
        result(
          `=${ofMedium('DeclaredLitres', at)}*${ofMedium('Expansion', at)}*(1-${ofMedium('WasteShare', at)})`,
          formats.litres,
        ),
        'L loose',
        'Prices, waste taken off',
      ),
    litresPerTray: (at) =>
      line(
        'Litres in a tray',
        result(
          `=INDEX(WayLitres,MATCH(B${at.way},WayName,0))/INDEX(WayUnits,MATCH(B${at.way},WayName,0))`,
          formats.litres,
        ),
        'L loose',
        'Ways',
      ),
    firstWeek: () => line('First week', input(8, formats.count), 'week', 'Sticking weeks are on Orders'),
    length: () => line('Weeks in a period', input(4, formats.count), 'weeks', ''),
    delivery: () =>
      line(
        'Freight of a delivery',
        input(24, formats.price),
        'EUR an order',
        'Invented. It stands for the delivery of each pack on Prices, so the prices below are without that',
      ),
    holding: () =>
      line(
        'Room for a pack',
        input(1.3, formats.price),
        'EUR a period',
        'Invented: dry store, and what is torn or gets wet',
      ),
    onHand: (at) =>
      line(
        'Packs in stock',
        result(
          `=ROUNDDOWN(${ofMedium('MediumOnHand', at)}/${ofMedium('DeclaredLitres', at)}/${ofMedium('Expansion', at)},0)`,
          formats.count,
        ),
        'packs',
        'Buying: the whole packs of what is on hand there',
      ),
    gapBetween: blank,
    periodUnits: () => headings('', 'week', 'trays', 'packs', 'packs', 'EUR a pack'),
    periodHeading: () => headings('Period', 'From week', 'Trays', 'Packs so far', 'Packs needed', 'Price'),
    periods: {
      height: unitPrices.length,
      rows: (at) =>
        unitPrices.map((price, index) => {
          const row = at.periods + index
          const isFirst = index === 0
          return [
            text(`Period ${index + 1}`),
            result(isFirst ? `=B${at.firstWeek}` : `=B${row - 1}+B$${at.length}`, formats.count),
            result(
              `=SUMIFS(OrderTrays,OrderWay,B$${at.way},OrderStickWeek,">="&B${row},OrderStickWeek,"<"&B${row}+B$${at.length})`,
              formats.count,
            ),
            result(`=ROUNDUP(SUM(C$${at.periods}:C${row})*B$${at.litresPerTray}/B$${at.pack},0)`, formats.count),
            result(isFirst ? `=D${row}` : `=D${row}-D${row - 1}`, formats.count),
            input(price, formats.price),
          ]
        }),
    },
    missed: (at) => [
      text('Trays outside the periods'),
      undefined,
      result(`=SUMIF(OrderWay,B${at.way},OrderTrays)-SUM(${column('C', at)})`, formats.count),
      text('Must be 0: else a sticking week lies outside the periods'),
    ],
    gapAbove: blank,
    cautions: cautionLines(bags),
    gapBelow: blank,
    planHeading: () =>
      aboveTable(stockPlan, { period: 'The cheapest timing', order: 'packs', stock: 'packs', cost: 'EUR' }),
    plan: {
      height: unitPrices.length + 1 + 1,
      rows: (at) =>
        spilledTable(
          stockPlan,
          `=STICK.STOCKPLAN(${column('E', at)},B${at.delivery},B${at.holding},${column('F', at)},B${at.onHand})`,
          { period: formats.count, order: formats.count, stock: formats.count, cost: formats.price },
          unitPrices.length + 1,
        ),
    },
  })
  return {
    sheet: { name: 'Timing', widths: [26, 16, 16, 16, 16, 14], frozenRows: at.invented, frozenColumns: 0, rows },
    names: [{ name: 'TraysNotTimed', refersTo: `Timing!$C$${at.missed}` }],
  }
}
