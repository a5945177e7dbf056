import { formats, headings, headOf, heading, input, openInput, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { orderBook, type OrderLine } from './orderBook'

const rateNote = 'Invented rate. Take your own counts of past batches.'

function orderRow(line: OrderLine, row: number): Row {
  return [
    input(line.species),
    input(line.liners, formats.count),
    input(line.deliveryWeek, formats.count),
    input(line.weeks, formats.count),
    input(line.way),
    input(line.strike, formats.share, rateNote),
    input(line.pottingOn, formats.share, rateNote),
    input(line.gradeOut, formats.share, rateNote),
    line.confidence === undefined ? openInput(formats.share) : input(line.confidence, formats.share),
    line.batchSpread === undefined ? openInput(formats.share) : input(line.batchSpread, formats.share, 'Standard deviation of the overall rate from batch to batch; invented. It counts only with a confidence.'),
    // A blank rate would count as nothing lost, and too few cuttings would be stuck without a word.
    result(`=IF(COUNTBLANK(F${row}:H${row})>0,"rate missing",PRODUCT(F${row}:H${row}))`, formats.share),
    result(`=C${row}-D${row}`, formats.count),
    // Some builds of Excel hand a blank cell over as 0, which is no confidence at all; so the blank is told apart here.
    result(`=IF(I${row}="",STICK.CUTTINGS(B${row},F${row}:H${row}),STICK.CUTTINGS(B${row},F${row}:H${row},I${row},J${row}))`, formats.count),
    result(`=M${row}*K${row}`, formats.count),
    result(`=IF(INDEX(WayKeptIn,MATCH(E${row},WayName,0))="Trays",INDEX(WayPlaces,MATCH(E${row},WayName,0)),"–")`, formats.count),
    result(`=IF(ISNUMBER(O${row}),STICK.TRAYS(M${row},O${row},INDEX(WaySpareShare,MATCH(E${row},WayName,0))),0)`, formats.countOrDash),
    result(`=INDEX(WayCostPerCutting,MATCH(E${row},WayName,0))`, formats.each),
    result(`=STICK.PERLINER(Q${row},F${row}:H${row})`, formats.each),
    result(`=M${row}*Q${row}`, formats.price),
  ]
}

/** What was promised, and how many cuttings of each species that takes. */
export function ordersSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf('Order book', 'What was promised, the cuttings to stick for it, the trays they fill and what rooting them costs.'),
    rates: () => [text('The rates multiply and the losses divide. With a confidence, the cuttings give that chance of having enough; without one they are right on average only, so about every second time a few are missing.')],
    gap: blank,
    heading: () => headings('Species', 'Ordered', 'Delivery', 'Lead time', 'Way of rooting', 'Strike', 'Potting on', 'Grade-out', 'Confidence', 'Batch spread', 'Overall rate', 'Stick in', 'To stick', 'Expected', 'Cells', 'Trays', 'Rooting', 'Rooting', 'Rooting'),
    units: () => headings('genus', 'liners', 'week', 'weeks', 'as named on Ways', 'share rooted', 'share', 'share saleable', 'chance', 'std. deviation', 'share', 'week', 'cuttings', 'liners', 'a tray', 'trays', 'EUR a cutting', 'EUR a saleable liner', 'EUR'),
    lines: { height: orderBook.length, rows: (at) => orderBook.map((line, index) => orderRow(line, at.lines + index)) },
    sums: (at) => {
      const last = at.lines + orderBook.length - 1
      const sum = (column: string, format: string) => total(`=SUM(${column}${at.lines}:${column}${last})`, format)
      const blanks = (count: number) => Array.from({ length: count }, () => undefined)
      return [heading('All lines'), sum('B', formats.count), ...blanks(10), sum('M', formats.count), sum('N', formats.count), undefined, sum('P', formats.count), ...blanks(2), sum('S', formats.price)]
    },
    gapBelow: blank,
    weeks: () => [text('Weeks count within one calendar year: sticking week = delivery week - lead time.')],
    traysOnly: () => [text('Trays: each line starts a new tray, and the spare cells of its way stay empty. A dash: this way has no trays.')],
    cost: () => [text('EUR a saleable liner: the cost of a cutting divided by the overall rate of the line. EUR of the line: cuttings to stick x EUR a cutting, so extra cuttings for the confidence are paid too.')],
    noCostPrice: () => [text('Rooting is no cost price to quote from: the cutting itself, bench, heat and overheads are not in it.')],
  })
  const name = naming('Orders')
  const last = at.lines + orderBook.length - 1
  return {
    sheet: {
      name: 'Orders',
      widths: [17, 10, 10, 10, 24, 13, 12, 15, 12, 15, 13, 9, 10, 10, 8, 8, 15, 21, 12],
      frozenRows: at.units,
      frozenColumns: 1,
      rows,
    },
    names: [
      name('OrderLiners', 'B', at.lines, last),
      name('OrderWay', 'E', at.lines, last),
      { name: 'OrderRates', refersTo: `Orders!$F$${at.lines}:$H$${last}` },
      name('OrderStickWeek', 'L', at.lines, last),
      name('OrderCuttings', 'M', at.lines, last),
      name('OrderExpected', 'N', at.lines, last),
      name('OrderTrays', 'P', at.lines, last),
      name('OrderCost', 'S', at.lines, last),
    ],
  }
}
