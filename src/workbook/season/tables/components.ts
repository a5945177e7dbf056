import { formats } from '../cells'
import { figure, money, oneOf, result } from '../table/column'
import { declareTable } from '../table/table'
import { blends } from './blends'
import { media } from './media'

/** What a blend is made of: a row for each medium in it. */
export const components = declareTable({
  sheet: 'Components',
  row: 'Component',
  key: 'blend',
  repeats: true,
  typed: {
    blend: oneOf('Blend', blends, { width: 24, isAwaited: true }),
    medium: oneOf('Medium', media),
    parts: figure('Parts', 'by volume, loose', formats.measure),
  },
  results: {
    litre: result('A loose litre', money('loose L'), formats.each),
    density: result('Dry density', 'kg per m3 loose', formats.count),
    needed: result('Needed', 'L loose', formats.litres, {
      note: 'Its part of what the season takes of the blend, before it shrinks.',
    }),
  },
})
