import { bags } from '../../functions/buying/bags'
import { blocks } from '../../functions/volume/blocks'
import { weightToLitres } from '../../functions/volume/weightToLitres'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { formats, heading, headings, headOf, input, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { priceList, type Medium } from './priceList'

function mediumRow({ product, onHand, orderMultiple, leastOrder }: Medium, row: number): Row {
  const fromPrices = (range: string) => `INDEX(${range},MATCH(A${row},MediumName,0))`
  return [
    text(product),
    result(`=${fromPrices('SoldAs')}`),
    result(`=SUMIF(WayProduct,A${row},WayLitres)+SUMIF(BlendComponent,A${row},PeatBlendLitres)+SUMIF(BlendComponent,A${row},CoirBlendLitres)+SUMIF(BlendComponent,A${row},SandLitres)`, formats.litres),
    result(`=${fromPrices('WasteShare')}`, formats.share),
    result(`=C${row}/(1-D${row})`, formats.litres),
    input(onHand, formats.count),
    result(`=${fromPrices('DeclaredLitres')}`, formats.litres),
    result(`=${fromPrices('Expansion')}`, formats.price),
    input(orderMultiple, formats.count),
    input(leastOrder, formats.count),
    result(`=STICK.BAGS(E${row},G${row},H${row},F${row},I${row},J${row})`, formats.count),
    result(`=K${row}*G${row}*H${row}`, formats.litres),
    result(`=F${row}+L${row}-E${row}`, formats.litres),
    result(`=${fromPrices('PackPrice')}+${fromPrices('PackDelivery')}`, formats.price),
    result(`=ROUND(K${row}*N${row},2)`, formats.price),
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
  { name: 'Rockwool blocks, sheets', soldAs: 'carton', needed: '=SUMIF(WayKeptIn,"Sheets",WayUnits)', onHand: 10, perPack: result('=RockwoolSheetsPerCarton', formats.count), pricePerPack: () => '=RockwoolCartonPrice+RockwoolCartonDelivery' },
  { name: 'Trays, washed and used again', soldAs: 'box', needed: '=SUMIF(WayKeptIn,"Washed trays",WayUnits)', onHand: 420, perPack: input(50, formats.count), pricePerPack: (row) => `=TrayPrice*G${row}` },
  { name: 'Thin trays, single use', soldAs: 'box', needed: '=SUMIF(WayKeptIn,"Thin trays",WayUnits)', onHand: 40, perPack: input(100, formats.count), pricePerPack: (row) => `=ThinTrayPrice*G${row}` },
  { name: 'Vessels for water', soldAs: 'piece', needed: '=SUMIF(WayKeptIn,"Vessels",WayUnits)', onHand: 60, perPack: input(1, formats.count), pricePerPack: (row) => `=VesselPrice*G${row}` },
  { name: 'Bed frames, m2', soldAs: 'm2', needed: '=SUMIF(WayKeptIn,"Beds",WayUnits)*BedArea', onHand: 36, perPack: input(1, formats.count), pricePerPack: (row) => `=FramePrice*G${row}` },
]

function pieceRow({ name, soldAs, needed, onHand, perPack, pricePerPack }: Piece, row: number): Row {
  return [
    text(name),
    text(soldAs),
    result(needed, formats.count),
    undefined,
    undefined,
    input(onHand, formats.count),
    perPack,
    undefined,
    undefined,
    undefined,
    result(`=ROUNDUP(MAX(C${row}-F${row},0)/G${row},0)`, formats.count),
    result(`=K${row}*G${row}`, formats.count),
    result(`=F${row}+L${row}-C${row}`, formats.count),
    result(pricePerPack(row), formats.price),
    result(`=ROUND(K${row}*N${row},2)`, formats.price),
  ]
}

/** One list of what to buy for the whole season, out of all ways and blends. */
export function buyingSheet(): NamedSheet {
  const between = (column: string, first: number, next: number) => `${column}${first}:${column}${next - 1}`
  const empty = (count: number) => Array.from({ length: count }, () => undefined)
  const { rows, at } = layOut({
    ...headOf('Buying list', 'One list for the whole season: the litres of all ways and blends, less the stock, in whole packs.'),
    rounding: () => [text('Every cost is rounded to the cent, as on an invoice, and the totals add the rounded costs. This is cash to pay; what a round costs is on Ways.')],
    gap: blank,
    heading: () => headings('Medium', 'Sold as', 'Needed', 'Waste', 'With waste', 'On hand', 'Declared', 'Expansion', 'Sold by the', 'Least order', 'To buy', 'That gives', 'Left over', 'With delivery', 'Cost'),
    units: () => headings('as on Prices', '', 'L loose', 'share', 'L loose', 'L loose', 'L a pack', 'loose per L', 'packs', 'packs', 'packs', 'L loose', 'L loose', 'EUR a pack', 'EUR'),
    media: { height: priceList.length, rows: (at) => priceList.map((medium, index) => mediumRow(medium, at.media + index)) },
    mediaTotal: (at) => [heading('All media'), ...empty(9), total(`=SUM(${between('K', at.media, at.mediaTotal)})`, formats.count), ...empty(3), total(`=SUM(${between('O', at.media, at.mediaTotal)})`, formats.price)],
    gapBetween: blank,
    pieceHeading: () => headings('By the piece', 'Sold as', 'Needed', '', '', 'On hand', 'In a pack', '', '', '', 'To buy', 'That gives', 'Left over', 'With delivery', 'Cost'),
    pieceUnits: () => headings('', '', 'pieces', '', '', 'pieces', 'pieces', '', '', '', 'packs', 'pieces', 'pieces', 'EUR a pack', 'EUR'),
    pieces: { height: pieces.length, rows: (at) => pieces.map((piece, index) => pieceRow(piece, at.pieces + index)) },
    piecesTotal: (at) => [heading('All pieces'), ...empty(13), total(`=SUM(${between('O', at.pieces, at.piecesTotal)})`, formats.price)],
    gapAbove: blank,
    everything: (at) => [heading('Everything'), ...empty(13), total(`=O${at.mediaTotal}+O${at.piecesTotal}`, formats.price)],
    gapBelow: blank,
    waste: () => [text('Waste: lost in store and handling, so the need is divided by 1 - waste. Expansion: a bale opens to more loose litres than it declares. Left over: stock + bought - need.')],
    reused: () => [text('Trays, vessels and frames are paid once and serve for many rounds; their share of each round is on Reuse. Cuttings, hormone, acid and metered water are not on the list. All beds are filled anew.')],
    cautions: cautionLines(bags, weightToLitres, blocks),
  })
  const name = naming('Buying')
  return {
    sheet: { name: 'Buying', widths: [30, 17, 11, 9, 12, 11, 11, 13, 13, 13, 10, 12, 11, 15, 13], frozenRows: at.units, frozenColumns: 1, rows },
    names: [
      name('MediaPacks', 'K', at.mediaTotal),
      name('MediaToBuy', 'O', at.mediaTotal),
      name('PiecesToBuy', 'O', at.piecesTotal),
      name('BuyingTotal', 'O', at.everything),
      name('MediumWithWaste', 'E', at.media, at.mediaTotal - 1),
      name('MediumOnHand', 'F', at.media, at.mediaTotal - 1),
      name('MediumCost', 'O', at.media, at.mediaTotal - 1),
      name('LeftOver', 'M', at.media, at.mediaTotal - 1),
    ],
  }
}
