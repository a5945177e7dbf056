import { formats } from '../cells'
import { figure, money, result, text } from '../table/column'
import { declareTable } from '../table/table'

/** Spans of the season in which a medium is bought, one after the other. */
export const periods = declareTable({
  sheet: 'Periods',
  row: 'Period',
  key: 'name',
  typed: {
    name: text('Period', 'name'),
    from: figure('From', 'year-month-day', formats.day, { width: 14 }),
    until: figure('Until before', 'year-month-day', formats.day, { width: 14 }),
    price: figure('Price', money('pack'), formats.price, { note: 'Expected, without delivery.' }),
  },
  results: {
    containers: result('Filled', 'containers', formats.count, {
      note: 'With the medium that Timing asks about, of its method.',
    }),
    packsSoFar: result('Packs so far', 'packs', formats.count),
    packs: result('Packs needed', 'packs', formats.count),
  },
})
