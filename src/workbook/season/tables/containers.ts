import { formats } from '../cells'
import { choiceOf, figure, money, openFigure, result, signedFigure, text } from '../table/column'
import { declareTable } from '../table/table'

/** What a container is decides what is filled into it. */
export const containerKinds = { name: 'ContainerKinds', words: ['tray', 'bed', 'vessel', 'block sheet'] } as const

/** Trays, beds, vessels and sheets of blocks: what stands on the bench and holds cuttings. */
export const containers = declareTable({
  sheet: 'Containers',
  row: 'Container',
  key: 'name',
  typed: {
    name: text('Container', 'name', { width: 24 }),
    kind: choiceOf('Kind', containerKinds),
    places: figure('Places', 'cuttings', formats.count, {
      note: 'Cells of a tray, blocks of a sheet, what a vessel or a bed holds.',
    }),
    placeMl: openFigure('Volume of a cell', 'mL', formats.litres, 'from the measures', {
      note: 'Brimful; trays only.',
    }),
    topLength: openFigure('Cell, top length', 'mm', formats.measure, 'the volume is typed', {
      note: 'Inside. Of a round cell the diameter.',
    }),
    topWidth: openFigure('Cell, top width', 'mm', formats.measure, 'the cell is round'),
    cellDepth: openFigure('Cell, depth', 'mm', formats.measure, 'the volume is typed'),
    bottomLength: openFigure('Cell, bottom length', 'mm', formats.measure, 'as the top'),
    bottomWidth: openFigure('Cell, bottom width', 'mm', formats.measure, 'as the top'),
    bedLength: openFigure('Bed, length', 'm', formats.measure, 'no bed', { note: 'Inside.' }),
    bedWidth: openFigure('Bed, width', 'm', formats.measure, 'no bed', { note: 'Inside.' }),
    bedDepth: openFigure('Bed, depth', 'm', formats.measure, 'no bed', { note: 'Once settled.' }),
    vesselLitres: openFigure('Vessel, water', 'L', formats.litres, 'no vessel'),
    ground: figure('Ground', 'm2', formats.measure, { note: 'Outside measures of one, on the bench or the ground.' }),
    price: figure('Price', money('piece'), formats.price, {
      note: 'With delivery, without recoverable tax. Of a bed: its frame.',
    }),
    rounds: figure('Rounds', 'rounds', formats.count, { note: 'How many it serves; 1 is single use.' }),
    wash: openFigure('Washing', money('later round'), formats.price, '0', {
      note: 'Washing or steaming one before each later round.',
    }),
    topUp: openFigure('Topped up', 'share of medium', formats.share, '0', {
      note: 'Beds: medium renewed before each later round.',
    }),
    broken: openFigure('Broken', 'share per round', formats.share, '0', {
      note: 'Not replaced in the cost per round.',
    }),
    endValue: signedFigure('Worth at the end', money('piece'), formats.price, '0', { note: 'Less than 0: disposal.' }),
    turnround: openFigure('Turn-round', 'weeks', formats.measure, '0', { note: 'From clearing to the next filling.' }),
    onHand: openFigure('On hand', 'pieces', formats.count, '0'),
    multiple: openFigure('Sold in multiples of', 'pieces', formats.count, '1'),
  },
  results: {
    cell: result('Cell', 'mL', formats.litres, { note: 'Brimful.' }),
    filled: result('Filled in the season', 'fillings', formats.count),
    peak: result('Most at once', 'pieces', formats.count, {
      note: 'The most that stand, or wait for their turn-round, in one week.',
    }),
    needed: result('Needed', 'pieces', formats.count, {
      note: 'Single use: all fillings. Else the most at once, and those that break in later rounds.',
    }),
    toBuy: result('To buy', 'pieces', formats.count),
    cost: result('Cost', money(), formats.price, {
      note: 'Rounded to the cent, as on an invoice. Cash to pay this season.',
    }),
  },
})
