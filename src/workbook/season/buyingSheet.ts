import { bags } from '../../functions/buying/bags'
import { blocks } from '../../functions/volume/blocks'
import { weightToLitres } from '../../functions/volume/weightToLitres'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import {
  formats,
  heading,
  headings,
  headOf,
  input,
  priced,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { priceList, type Medium } from './priceList'
import { tableIn } from './tableIn'

function mediumRow({ product, onHand, orderMultiple, leastOrder }: Medium, row: number): Row {
  const fromPrices = (range: string) => `INDEX(${range},MATCH(A${row},MediumName,0))`
  return [
    text(product),
    result(`=${fromPrices('SoldAs')}`),
    result(`=STICK.BAGS(H${row},J${row},K${row},I${row},L${row},M${row})`, formats.count),
    result(`=${priced(fromPrices('PackPrice'))}+${fromPrices('PackDelivery')}`, formats.price),
    result(`=ROUND(C${row}*D${row},2)`, formats.price),
    result(
      `=SUMIF(WayProduct,A${row},WayLitres)+SUMPRODUCT((BlendComponent=A${row})*(PeatBlendLitres+CoirBlendLitres+SandLitres))`,
      formats.litres,
    ),
    result(`=${fromPrices('WasteShare')}`, formats.share),
    result(`=F${row}/(1-G${row})`, formats.litres),
    input(onHand, formats.count),
    result(`=${fromPrices('DeclaredLitres')}`, formats.litres),
    result(`=${fromPrices('Expansion')}`, formats.price),
    input(orderMultiple, formats.count),
    input(leastOrder, formats.count),
    result(`=C${row}*J${row}*K${row}`, formats.litres),
    result(`=I${row}+N${row}-H${row}`, formats.litres),
  ]
}

interface Piece {
  readonly name: string
  readonly soldAs: string
  readonly needed: string
  readonly onHand: number
  readonly perPack: Cell
  readonly pricePerPack: (row: number) => string
}

const pieces: readonly Piece[] = [
  {
    name: 'Rockwool blocks, sheets',
    soldAs: 'carton',
    needed: '=SUMIF(WayKeptIn,"Sheets",WayUnits)',
    onHand: 10,
    perPack: result('=RockwoolSheetsPerCarton', formats.count),
    pricePerPack: () => `=${priced('RockwoolCartonPrice')}+RockwoolCartonDelivery`,
  },
  {
    name: 'Trays, washed and used again',
    soldAs: 'box',
    needed: '=SUMIF(WayKeptIn,"Washed trays",WayUnits)',
    onHand: 420,
    perPack: input(50, formats.count),
    pricePerPack: (row) => `=${priced('TrayPrice')}*J${row}`,
  },
  {
    name: 'Thin trays, single use',
    soldAs: 'box',
    needed: '=SUMIF(WayKeptIn,"Thin trays",WayUnits)',
    onHand: 40,
    perPack: input(100, formats.count),
    pricePerPack: (row) => `=${priced('ThinTrayPrice')}*J${row}`,
  },
  {
    name: 'Vessels for water',
    soldAs: 'piece',
    needed: '=SUMIF(WayKeptIn,"Vessels",WayUnits)',
    onHand: 60,
    perPack: input(1, formats.count),
    pricePerPack: (row) => `=${priced('VesselPrice')}*J${row}`,
  },
  {
    name: 'Bed frames, m2',
    soldAs: 'm2',
    needed: '=SUMIF(WayKeptIn,"Beds",WayUnits)*BedArea',
    onHand: 36,
    perPack: input(1, formats.count),
    pricePerPack: (row) => `=${priced('FramePrice')}*J${row}`,
  },
]

function pieceRow({ name, soldAs, needed, onHand, perPack, pricePerPack }: Piece, row: number): Row {
  return [
    text(name),
    text(soldAs),
    result(`=ROUNDUP(MAX(F${row}-I${row},0)/J${row},0)`, formats.count),
    result(pricePerPack(row), formats.price),
    result(`=ROUND(C${row}*D${row},2)`, formats.price),
    result(needed, formats.count),
    undefined,
    undefined,
    input(onHand, formats.count),
    perPack,
    undefined,
    undefined,
    undefined,
    result(`=C${row}*J${row}`, formats.count),
    result(`=I${row}+N${row}-F${row}`, formats.count),
  ]
}

/** One list of what to buy for the whole season, out of all ways and blends. */
export function buyingSheet(): NamedSheet {
  const between = (column: string, first: number, next: number) => `${column}${first}:${column}${next - 1}`
  const { rows, at } = layOut({
    ...headOf(
      'Buying list',
      'One list for the whole season: the litres of all ways and blends, less the stock, in whole packs.',
    ),
    rounding: () => [
      text(
        'Every cost is rounded to the cent, as on an invoice, and the totals add the rounded costs. This is cash to pay; what a round costs is on Ways.',
      ),
    ],
    gap: blank,
    units: () =>
      headings(
        'as on Prices',
        '',
        'packs',
        'EUR a pack',
        'EUR',
        'L loose',
        'share',
        'L loose',
        'L loose',
        'L a pack',
        'loose per L',
        'packs',
        'packs',
        'L loose',
        'L loose',
      ),
    heading: () =>
      headings(
        'Medium',
        'Sold as',
        'To buy',
        'With delivery',
        'Cost',
        'Needed',
        'Waste',
        'With waste',
        'On hand',
        'Declared',
        'Expansion',
        'Sold by the',
        'Least order',
        'That gives',
        'Left over',
      ),
    media: {
      height: priceList.length,
      rows: (at) => priceList.map((medium, index) => mediumRow(medium, at.media + index)),
    },
    mediaTotal: (at) => [
      heading('All media'),
      undefined,
      total(`=SUM(${between('C', at.media, at.mediaTotal)})`, formats.count),
      undefined,
      total(`=SUM(${between('E', at.media, at.mediaTotal)})`, formats.price),
    ],
    gapBetween: blank,
    pieceUnits: () =>
      headings(
        '',
        '',
        'packs',
        'EUR a pack',
        'EUR',
        'pieces',
        '',
        '',
        'pieces',
        'pieces',
        '',
        '',
        '',
        'pieces',
        'pieces',
      ),
    pieceHeading: () =>
      headings(
        'By the piece',
        'Sold as',
        'To buy',
        'With delivery',
        'Cost',
        'Needed',
        '–',
        '–',
        'On hand',
        'In a pack',
        '–',
        '–',
        '–',
        'That gives',
        'Left over',
      ),
    pieces: { height: pieces.length, rows: (at) => pieces.map((piece, index) => pieceRow(piece, at.pieces + index)) },
    piecesTotal: (at) => [
      heading('All pieces'),
      undefined,
      undefined,
      undefined,
      total(`=SUM(${between('E', at.pieces, at.piecesTotal)})`, formats.price),
    ],
    gapAbove: blank,
    everything: (at) => [
      heading('Everything'),
      undefined,
      undefined,
      undefined,
      total(`=E${at.mediaTotal}+E${at.piecesTotal}`, formats.price),
    ],
    gapBelow: blank,
    waste: () => [
      text(
        'Waste is lost in store and handling, so the need is divided by 1 - waste. A bale opens to more loose litres than it declares. All beds are filled anew.',
      ),
    ],
    reused: () => [
      text('Washed trays, vessels and frames are paid once and serve many rounds; what a round costs is on Reuse.'),
    ],
    notListed: () => [
      text(
        'Not on the list: cuttings, hormone, acid, metered water, and what comes after rooting: pots, their mix, labels. Cheaper packs and suppliers: see Offers; when to order: see Timing.',
      ),
    ],
    cautions: cautionLines(bags, weightToLitres, blocks),
  })
  const name = naming('Buying')
  return {
    sheet: {
      name: 'Buying',
      widths: [29, 16, 9, 14, 12, 11, 9, 12, 11, 11, 12, 13, 13, 12, 11],
      frozenRows: at.heading,
      frozenColumns: 1,
      rows,
      tables: [tableIn('MediaList', 'A', at.heading, 'O', at.mediaTotal - 1)],
    },
    names: [
      name('MediaPacks', 'C', at.mediaTotal),
      name('MediaToBuy', 'E', at.mediaTotal),
      name('PiecesToBuy', 'E', at.piecesTotal),
      name('BuyingTotal', 'E', at.everything),
      name('MediumWithWaste', 'H', at.media, at.mediaTotal - 1),
      name('MediumOnHand', 'I', at.media, at.mediaTotal - 1),
      name('MediumCost', 'E', at.media, at.mediaTotal - 1),
      name('LeftOver', 'O', at.media, at.mediaTotal - 1),
    ],
  }
}
