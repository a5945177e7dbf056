import type { Allowed, Cell } from '../book'
import {
  allowing,
  formats,
  headings,
  headOf,
  heading,
  input,
  openInput,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { orderBook, type OrderLine } from './orderBook'
import { pastBatches, spreadName } from './pastBatches'
import { tableIn } from './tableIn'

const rateNote = 'Invented rate. Take your own counts of past batches.'

const liners: Allowed = {
  from: 0,
  whole: true,
  sentence: 'Type the number of liners ordered: a whole number, 0 or more.',
}
const wayOnWays: Allowed = {
  list: 'WayName',
  sentence: 'Type one of the six ways of rooting as it is written on Ways, or choose it from the list.',
}

function batchSpread({ species, batchSpread }: OrderLine): Cell {
  if (pastBatches.some((past) => past.species === species)) return result(`=${spreadName(species)}`, formats.share)
  if (batchSpread === undefined) return openInput(formats.share)
  return input(
    batchSpread,
    formats.share,
    'Standard deviation of the overall rate from batch to batch; invented. It counts only with a confidence.',
  )
}

function orderRow(line: OrderLine, row: number): Row {
  const ofWay = (range: string) => `INDEX(${range},MATCH(C${row},WayName,0))`
  return [
    input(line.species),
    allowing(input(line.liners, formats.count), liners),
    allowing(input(line.way), wayOnWays),
    result(`=${ofWay('WaySuits')}`),
    // Some builds of Excel hand a blank cell over as 0, which is no confidence at all; so the blank is told apart here.
    result(
      `=IF(COUNTBLANK(K${row}:M${row})>0,STICK.CUTTINGS(B${row},P${row}),IF(N${row}="",STICK.CUTTINGS(B${row},K${row}:M${row}),STICK.CUTTINGS(B${row},K${row}:M${row},N${row},O${row})))`,
      formats.count,
    ),
    result(`=I${row}-J${row}`, formats.count),
    result(`=IF(ISNUMBER(R${row}),STICK.TRAYS(E${row},R${row},${ofWay('WaySpareShare')}),0)`, formats.countOrDash),
    result(`=STICK.PERLINER(S${row},P${row})`, formats.each),
    input(line.deliveryWeek, formats.count),
    input(line.weeks, formats.count),
    input(line.strike, formats.share, rateNote),
    input(line.pottingOn, formats.share, rateNote),
    input(line.gradeOut, formats.share, rateNote),
    line.confidence === undefined ? openInput(formats.share) : input(line.confidence, formats.share),
    batchSpread(line),
    // A blank rate would count as nothing lost, and too few cuttings would be stuck without a word; so this text is given to the functions, which refuse it.
    result(`=IF(COUNTBLANK(K${row}:M${row})>0,"rate missing",PRODUCT(K${row}:M${row}))`, formats.share),
    result(`=E${row}*P${row}`, formats.count),
    result(`=IF(ISNUMBER(SEARCH("trays",${ofWay('WayKeptIn')})),${ofWay('WayPlaces')},"–")`, formats.count),
    result(`=${ofWay('WayCostPerCutting')}`, formats.each),
    result(`=ROUND(E${row}*S${row},2)`, formats.price),
  ]
}

/** What was promised, and how many cuttings of each species that takes. */
export function ordersSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      'Order book',
      'What was promised, the cuttings to stick for it, the trays they fill and what rooting them costs.',
    ),
    rates: () => [
      text(
        'Rates multiply, losses divide. With a confidence the cuttings give that chance of having enough; without one a few are missing every second time.',
      ),
    ],
    waysKnown: () => [
      result(
        '=IFERROR("The way of rooting of "&INDEX(OrderSpecies,MATCH(1,(COUNTIF(WayName,OrderWay)=0)*(OrderWay<>""),0))&" is not on Ways: type it as one of the six is written there.","Every way of rooting is one of the six on Ways.")',
      ),
    ],
    units: () =>
      headings(
        'genus',
        'liners',
        'as named on Ways',
        '',
        'cuttings',
        'week',
        'trays',
        'EUR a liner',
        'week',
        'weeks',
        'share rooted',
        'share',
        'share saleable',
        'chance',
        'std. deviation',
        'share',
        'liners',
        'a tray',
        'EUR a cutting',
        'EUR',
      ),
    heading: () =>
      headings(
        'Species',
        'Ordered',
        'Way of rooting',
        'The way suits',
        'To stick',
        'Stick in',
        'Trays',
        'Rooting a liner',
        'Delivery',
        'Lead time',
        'Strike',
        'Potting on',
        'Grade-out',
        'Confidence',
        'Batch spread',
        'Overall rate',
        'Expected',
        'Cells',
        'Rooting a cutting',
        'Rooting the line',
      ),
    lines: { height: orderBook.length, rows: (at) => orderBook.map((line, index) => orderRow(line, at.lines + index)) },
    sums: (at) => {
      const last = at.lines + orderBook.length - 1
      const sum = (column: string, format: string) => total(`=SUM(${column}${at.lines}:${column}${last})`, format)
      const blanks = (count: number) => Array.from({ length: count }, () => undefined)
      return [
        heading('All lines'),
        sum('B', formats.count),
        ...blanks(2),
        sum('E', formats.count),
        undefined,
        sum('G', formats.count),
        ...blanks(9),
        sum('Q', formats.count),
        ...blanks(2),
        sum('T', formats.price),
      ]
    },
    gapBelow: blank,
    weeks: () => [
      text(
        'Weeks count within one calendar year: sticking week = delivery week - lead time. A dash: this way has no trays; else each line starts a new one.',
      ),
    ],
    cost: () => [text('EUR a liner: what rooting costs by the way of the line, over the overall rate of the line.')],
    costOfLine: () => [
      text(
        'EUR of a line: cuttings to stick x EUR a cutting, so the extra ones for the confidence are paid too; to the cent, so that the lines add up. Expected liners are averages and are added unrounded.',
      ),
    ],
    notIn: () => [
      text(
        'Rooting counts everything up to the rooted plant, and nothing after it: potting on, growing on and grading are on Quote.',
      ),
    ],
    spread: () => [
      text(
        'Batch spread: from the past batches on Batches where they were counted, else typed; blank where batches are taken to differ by chance only.',
      ),
    ],
  })
  const name = naming('Orders')
  const last = at.lines + orderBook.length - 1
  const column = (called: string, letter: string) => name(called, letter, at.lines, last)
  return {
    sheet: {
      name: 'Orders',
      widths: [16, 9, 20, 16, 10, 8, 8, 14, 9, 10, 13, 11, 14, 12, 14, 13, 10, 8, 14, 12],
      frozenRows: at.heading,
      frozenColumns: 1,
      rows,
      tables: [tableIn('OrderBook', 'A', at.heading, 'T', last)],
    },
    names: [
      column('OrderSpecies', 'A'),
      column('OrderLiners', 'B'),
      column('OrderWay', 'C'),
      column('OrderCuttings', 'E'),
      column('OrderStickWeek', 'F'),
      column('OrderTrays', 'G'),
      { name: 'OrderRates', refersTo: `Orders!$K$${at.lines}:$M$${last}` },
      column('OrderStrike', 'K'),
      column('OrderPottingOn', 'L'),
      column('OrderGradeOut', 'M'),
      column('OrderBatchSpread', 'O'),
      column('OrderExpected', 'Q'),
      column('OrderCostPerCutting', 'S'),
      column('OrderCost', 'T'),
    ],
  }
}
