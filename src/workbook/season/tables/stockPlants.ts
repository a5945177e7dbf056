import { formats } from '../cells'
import { figure, money, openFigure, result, text } from '../table/column'
import { declareTable } from '../table/table'

/** Stock plants that the nursery keeps itself. */
export const stockPlants = declareTable({
  sheet: 'Stock',
  row: 'Stock',
  key: 'species',
  typed: {
    species: text('Species', 'as on Orders'),
    perFlush: figure('Cuttings', 'per plant and flush', formats.measure),
    flushes: figure('Flushes', 'in the season', formats.count),
    usable: openFigure('Usable', 'share', formats.share, 'all'),
    spare: openFigure('Spare plants', 'share', formats.share, '0', { note: 'Kept for losses.' }),
    perPlant: figure('A plant', money('season'), formats.price, {
      note: 'Pot, mix, space, heat, feed and care of one.',
    }),
    work: openFigure('Taken in an hour', 'cuttings', formats.count, 'taking them costs nothing'),
    kept: openFigure('Kept', 'plants', formats.count, '0'),
  },
  results: {
    cuttings: result('To take', 'cuttings', formats.count),
    plants: result('Plants', 'needed', formats.count),
    toAdd: result('To add', 'plants', formats.count),
    perCutting: result('A cutting', money('cutting'), formats.each, {
      note: 'The plants needed and the work, over the cuttings taken.',
    }),
  },
})
