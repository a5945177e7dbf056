import { bags } from '../../functions/buying/bags'
import { weightToLitres } from '../../functions/volume/weightToLitres'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { dayInput, formats, headings, headOf, input, priced, result, text, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { priceList, type Medium } from './priceList'
import { tableIn } from './tableIn'

/** One formula for every way of measuring, so that a medium may be typed over with another. */
function declaredLitres(row: number): string {
  const kilograms = `STICK.UNITS(F${row},G${row},"kg")`
  return `=IF(O${row}="by weight",STICK.WEIGHTTOLITRES(${kilograms},I${row},J${row}),IF(O${row}="by litres per kg",${kilograms}*H${row},STICK.UNITS(F${row},G${row},"L")))`
}

function orDash(value: number | undefined, format: string): Cell {
  return value === undefined ? text('–') : input(value, format)
}

function mediumRow(medium: Medium, row: number): Row {
  return [
    input(medium.product),
    text(medium.soldAs),
    result(`=STICK.PACKPRICE(D${row},K${row},L${row},E${row},M${row})`, formats.each),
    input(medium.price, formats.price),
    input(medium.delivery, formats.price),
    input(medium.size, formats.measure),
    input(medium.unit),
    orDash(medium.litresPerKg, formats.measure),
    input(medium.density, formats.count, 'Common practice, no source; weigh a bucket of your own.'),
    orDash(medium.waterShare, formats.share),
    result(declaredLitres(row), formats.litres),
    input(medium.expansion, formats.price),
    input(medium.waste, formats.share),
    result(`=K${row}*L${row}`, formats.litres),
    input(medium.measured),
    input(medium.supplier),
    dayInput(medium.priceOf),
    text(medium.source),
  ]
}

/** What is bought has a supplier, and a day from which its price is. */
interface Bought {
  readonly from: string
  readonly priceOf: string
}

/** Suppliers and days are invented. */
const tradePost: Bought = { from: 'Quayside', priceOf: '2025-12-03' }
const cartons: Bought = { from: 'Stonewick', priceOf: '2026-01-19' }

function single(label: string, unit: string, cell: Cell, how = '', bought?: Bought): Row {
  return [
    text(label),
    text(unit),
    bought === undefined ? text('–') : input(bought.from),
    cell,
    bought === undefined ? text('–') : dayInput(bought.priceOf),
    text(how),
  ]
}

/** What every medium costs for a loose litre that reaches the bench. */
export function pricesSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      'Price list',
      'What a loose litre costs by the time it reaches the bench. Prices without recoverable tax; what that means for you is for your accountant to say.',
    ),
    convention: () => [
      text(
        'A bale declares pressed litres: expansion tells the loose litres in one of them. Measured: by volume, by weight, or by litres per kg. Suppliers and days are invented too.',
      ),
    ],
    gap: blank,
    units: () =>
      headings(
        'name',
        '',
        'EUR a loose L',
        'EUR a pack',
        'EUR a pack',
        'in its unit',
        'of the size',
        'L a kg',
        'kg a m3 loose',
        'share of weight',
        'L a pack',
        'loose per L',
        'share',
        'L a pack',
        '',
        '',
        'year-month-day',
        '',
      ),
    heading: () =>
      headings(
        'Product',
        'Sold as',
        'A litre',
        'Price',
        'Delivery',
        'Pack size',
        'Unit',
        'Label yield',
        'Dry density',
        'Water in it',
        'Declared',
        'Expansion',
        'Waste',
        'Loose',
        'Measured',
        'Supplier',
        'Price of',
        'Where the figure comes from',
      ),
    media: {
      height: priceList.length,
      rows: (at) => priceList.map((medium, index) => mediumRow(medium, at.media + index)),
    },
    gapBetween: blank,
    others: () => headings('Sold in other ways', 'Unit', 'Supplier', 'Figure', 'Price of', 'Note'),
    cartonPrice: () =>
      single('Rockwool blocks, price of a carton', 'EUR a carton', input(84, formats.price), '', cartons),
    cartonDelivery: () => single('Rockwool blocks, delivery', 'EUR a carton', input(4.5, formats.price), '', cartons),
    sheetsPerCarton: () => single('Rockwool blocks, sheets in a carton', 'sheets', input(20, formats.count)),
    sheetPrice: (at) =>
      single(
        'Rockwool blocks, price of a sheet',
        'EUR a sheet',
        result(`=(${priced(`D${at.cartonPrice}`)}+D${at.cartonDelivery})/D${at.sheetsPerCarton}`, formats.each),
        'Price and delivery of the carton over its sheets',
      ),
    rockwoolDisposal: () =>
      single(
        'Rockwool blocks, disposal',
        'EUR a sheet',
        input(0.12, formats.price),
        'Invented. How they are disposed of is for your local rules to say',
        { from: 'Tipworth', priceOf: '2025-11-10' },
      ),
    thinTray: () => single('Thin tray, single use', 'EUR a tray', input(0.46, formats.price), '', tradePost),
    thinTrayDisposal: () =>
      single('Thin tray, disposal', 'EUR a tray', input(0.02, formats.price), '', {
        from: 'Tipworth',
        priceOf: '2025-11-10',
      }),
    water: () =>
      single('Mains water', 'EUR a m3', input(2.6, formats.price), 'Metered, so it is on no buying list', {
        from: 'Town water',
        priceOf: '2026-01-01',
      }),
    acid: () =>
      single(
        'Acid to soak rockwool',
        'EUR a m3 of water',
        input(3.4, formats.price),
        'Invented. Follow the label; acids and bleach must never meet',
        tradePost,
      ),
    pot: () =>
      single(
        'Pot, square, 8 cm',
        'EUR a pot',
        input(0.028, formats.each),
        'For potting on, on Quote; on no buying list',
        tradePost,
      ),
    label: () =>
      single('Label', 'EUR a label', input(0.011, formats.each), 'For grading, on Quote; on no buying list', {
        from: 'Hillside',
        priceOf: '2026-01-26',
      }),
    gapBelow: blank,
    cautions: cautionLines(bags, weightToLitres),
  })
  const name = naming('Prices')
  const last = at.media + priceList.length - 1
  return {
    sheet: {
      name: 'Prices',
      widths: [36, 19, 14, 12, 12, 14, 12, 12, 15, 16, 12, 13, 9, 12, 16, 14, 15, 70],
      frozenRows: at.heading,
      frozenColumns: 1,
      rows,
      tables: [
        tableIn('MediaPrices', 'A', at.heading, 'R', last),
        tableIn('OtherPrices', 'A', at.others, 'F', at.label),
      ],
    },
    names: [
      name('MediumName', 'A', at.media, last),
      name('SoldAs', 'B', at.media, last),
      name('PackPrice', 'D', at.media, last),
      name('PackDelivery', 'E', at.media, last),
      name('LooseDensity', 'I', at.media, last),
      name('DeclaredLitres', 'K', at.media, last),
      name('Expansion', 'L', at.media, last),
      name('WasteShare', 'M', at.media, last),
      name('PricePerLooseLitre', 'C', at.media, last),
      name('MediumSupplier', 'P', at.media, last),
      name('OtherSupplier', 'C', at.cartonPrice, at.label),
      name('OtherPrice', 'D', at.cartonPrice, at.label),
      name('RockwoolCartonPrice', 'D', at.cartonPrice),
      name('RockwoolCartonDelivery', 'D', at.cartonDelivery),
      name('RockwoolSheetsPerCarton', 'D', at.sheetsPerCarton),
      name('RockwoolSheetPrice', 'D', at.sheetPrice),
      name('RockwoolDisposal', 'D', at.rockwoolDisposal),
      name('ThinTrayPrice', 'D', at.thinTray),
      name('ThinTrayDisposal', 'D', at.thinTrayDisposal),
      name('WaterPricePerM3', 'D', at.water),
      name('AcidPerM3', 'D', at.acid),
      name('PotPrice', 'D', at.pot),
      name('LabelPrice', 'D', at.label),
    ],
  }
}
