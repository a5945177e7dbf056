import { formats } from '../cells'
import { figure, money, openFigure, result, text } from '../table/column'
import { declareTable } from '../table/table'

/** Mixes of the nursery's own. What goes into one stands on Components. */
export const blends = declareTable({
  sheet: 'Blends',
  row: 'Blend',
  key: 'name',
  typed: {
    name: text('Blend', 'name', { width: 24 }),
    before: figure('Test mix, parts', 'L', formats.measure, { note: 'Loose litres measured before mixing.' }),
    after: figure('Test mix, mixed', 'L', formats.measure, {
      note: 'Litres of the mix. Shrink has no constant: measure it.',
    }),
    lime: openFigure('Lime', 'kg per m3', formats.weight, '0', { note: 'On the finished mix.' }),
    wetting: openFigure('Wetting agent', 'kg per m3', formats.weight, '0', { note: 'On the finished mix.' }),
    feed: openFigure('Starter feed', 'kg per m3', formats.weight, '0', { note: 'On the finished mix.' }),
    additives: openFigure('Additives', money('m3'), formats.price, '0', {
      note: 'What lime, wetting agent and feed cost together.',
    }),
    pace: openFigure('Mixed in an hour', 'm3', formats.measure, 'mixing takes no work'),
    held: openFigure('Water held', 'share of volume', formats.share, 'its watered weight is not given', {
      note: 'Measure your own.',
    }),
  },
  results: {
    shrink: result('Mix shrink', 'share', formats.share, {
      note: 'Fine grains fill the pores of coarse ones. Shrink divides.',
    }),
    litre: result('A finished litre', money('L'), formats.each),
    dry: result('Dry weight', 'kg per L', formats.weight),
    watered: result('Watered weight', 'kg per L', formats.weight, {
      note: 'Weight adds up from the parts; air space and pH do not.',
    }),
    needed: result('Needed', 'L finished', formats.litres),
  },
})
