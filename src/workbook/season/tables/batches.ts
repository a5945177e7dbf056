import { formats } from '../cells'
import { figure, oneOf, openFigure, result, text } from '../table/column'
import { declareTable } from '../table/table'
import { orders } from './orders'
import { standingColumns } from './standingColumns'

/** Stickings of an order line, where it is stuck in parts or its day is known: planned, stuck, and what became of it. */
export const batches = declareTable({
  sheet: 'Batches',
  row: 'Batch',
  key: 'name',
  typed: {
    name: text('Batch', 'its number or name', { width: 12 }),
    line: oneOf('Line', orders, { width: 12, note: 'As on Orders.' }),
    day: figure('Stuck on', 'year-month-day', formats.day, {
      width: 14,
      note: 'Planned at first, then the day it was done.',
    }),
    cuttings: figure('Cuttings', 'stuck', formats.count),
    rooted: openFigure('Rooted', 'counted', formats.count, 'not counted yet'),
    potted: openFigure('Potted on', 'counted', formats.count, 'not counted yet'),
    saleable: openFigure('Saleable', 'counted', formats.count, 'not counted yet'),
  },
  results: {
    species: result('Species', '', undefined, { width: 18 }),
    method: result('Method', '', undefined, { width: 26 }),
    alive: result('Alive', 'as last counted', formats.count),
    rateLeft: result('Rate still to come', 'share', formats.share, {
      note: 'Of the stages that were not counted yet.',
    }),
    expected: result('Expected', 'liners', formats.count, { note: 'Alive x the rate still to come.' }),
    asPlanned: result('As planned', 'liners', formats.count, { note: 'Cuttings x the overall rate of the line.' }),
    difference: result('More or fewer', 'liners', formats.count),
    container: result('Container', '', undefined, { width: 22 }),
    pieces: result('Containers', 'pieces', formats.count),
    ...standingColumns,
    hours: result('Work', 'hours', formats.litres),
  },
})
