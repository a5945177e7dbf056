import { formats } from '../cells'
import { choiceOf, figure, money, openFigure, openText, result, text } from '../table/column'
import { declareTable } from '../table/table'

export const packUnits = { name: 'PackUnits', words: ['L', 'm3', 'ft3', 'yd3', 'kg', 't', 'lb'] } as const

/** Media as they are bought. */
export const media = declareTable({
  sheet: 'Media',
  row: 'Medium',
  key: 'name',
  typed: {
    name: text('Medium', 'name', { width: 22 }),
    soldAs: openText('Sold as'),
    size: figure('Pack size', 'in its unit', formats.measure),
    unit: choiceOf('Unit', packUnits, { width: 8 }),
    price: figure('Price', money('pack'), formats.price, { note: 'Without recoverable tax.' }),
    delivery: openFigure('Delivery', money('pack'), formats.price, '0'),
    expansion: openFigure('Expansion', 'loose per declared L', formats.price, '1', {
      note: 'Loose litres from a declared one, by your own test or the label.',
    }),
    labelYield: openFigure('Label yield', 'L per kg', formats.measure, 'sold by volume, or by weight and density', {
      note: 'Loose litres from a kilogram of coir.',
    }),
    density: figure('Dry density', 'kg per m3 loose', formats.count, { note: 'Weigh a bucket of your own.' }),
    water: openFigure('Water in it', 'share of weight', formats.share, '0', { note: 'Where it is sold by weight.' }),
    waste: openFigure('Waste', 'share', formats.share, '0', { note: 'Lost in store and handling.' }),
    onHand: openFigure('On hand', 'L loose', formats.count, '0'),
    multiple: openFigure('Sold in multiples of', 'packs', formats.count, '1'),
    minimum: openFigure('Least order', 'packs', formats.count, '0'),
    supplier: openText('Supplier'),
    priceDay: openFigure('Price date', 'year-month-day', formats.day, 'not known'),
  },
  results: {
    declared: result('Declared', 'L per pack', formats.litres),
    litre: result('A loose litre', money('loose L'), formats.each, { note: 'Delivery and waste included.' }),
    needed: result('Needed', 'L loose', formats.litres, {
      note: 'For all that is filled in the season, of blends and alone.',
    }),
    withWaste: result('With waste', 'L loose', formats.litres),
    toBuy: result('To buy', 'packs', formats.count),
    cost: result('Cost', money(), formats.price, { note: 'Rounded to the cent, as on an invoice.' }),
    leftOver: result('Left over', 'L loose', formats.litres),
  },
})
