import { formats } from '../cells'
import { figure, openText, text } from '../table/column'
import { declareTable } from '../table/table'

/** Batches of earlier seasons that were counted: how much the rate of a species differs from batch to batch. */
export const past = declareTable({
  sheet: 'Past',
  row: 'Past',
  key: 'species',
  repeats: true,
  typed: {
    species: text('Species'),
    stuck: figure('Stuck', 'cuttings', formats.count),
    saleable: figure('Saleable', 'liners', formats.count),
    remark: openText('Remark', '', { width: 40 }),
  },
  results: {},
})
