import { formats } from '../cells'
import { figure, money, oneOf, openFigure, text } from '../table/column'
import { declareTable } from '../table/table'
import { media } from './media'

/** Offers of suppliers: several packs of a medium, price breaks, delivery. */
export const offers = declareTable({
  sheet: 'Offers',
  row: 'Offer',
  key: 'pack',
  typed: {
    pack: text('Pack', 'name', { width: 28 }),
    medium: oneOf('Medium', media),
    supplier: text('Supplier'),
    litres: figure('Loose', 'L per pack', formats.count),
    price: figure('Price', money('pack'), formats.price),
    breakFrom: openFigure('Break from', 'packs', formats.count, 'no price break'),
    breakPrice: openFigure('Price from the break on', money('pack'), formats.price, 'no price break', {
      note: 'For every pack of the row.',
    }),
    available: openFigure('Available', 'packs', formats.count, 'as many as are wanted'),
    multiple: openFigure('Sold in multiples of', 'packs', formats.count, '1'),
    delivery: openFigure('Delivery', money('order'), formats.price, '0', {
      note: 'Paid once for each supplier that is used.',
    }),
    priceDay: openFigure('Price date', 'year-month-day', formats.day, 'not known'),
  },
  results: {},
})
