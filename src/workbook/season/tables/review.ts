import { formats } from '../cells'
import { choiceOf, figure, money, result, anyFigure, text } from '../table/column'
import { declareTable } from '../table/table'

export const reviewed = { name: 'ReviewedKinds', words: ['medium', 'container', 'cuttings', 'work'] } as const

/** At the season's end: what was used and paid, against what the workbook allows. */
export const review = declareTable({
  sheet: 'Review',
  row: 'Review',
  key: 'item',
  repeats: true,
  typed: {
    item: text('Item', 'as on its sheet', {
      width: 26,
      note: 'A medium or container by its name; an order line for its cuttings or work.',
    }),
    kind: choiceOf('Kind', reviewed),
    actualQuantity: figure('Actual quantity', 'packs, pieces, cuttings, hours', formats.measure),
    actualPrice: anyFigure('Actual price', money('unit'), formats.each),
  },
  results: {
    standardQuantity: result('Standard quantity', 'packs, pieces, cuttings, hours', formats.measure, {
      note: 'A medium: whole packs used, those in stock included. A container: pieces to buy, after those on hand.',
    }),
    standardPrice: result('Standard price', money('unit'), formats.each),
    standard: result('Standard', money(), formats.price),
    actual: result('Actual', money(), formats.price),
    price: result('Price variance', money(), formats.price, {
      note: 'Difference in price x actual quantity. Positive is adverse.',
    }),
    usage: result('Usage variance', money(), formats.price, {
      note: 'Difference in quantity x standard price. Positive is adverse.',
    }),
    total: result('Total variance', money(), formats.price),
    reads: result('Adverse or favourable', '', undefined, { width: 22 }),
  },
})
