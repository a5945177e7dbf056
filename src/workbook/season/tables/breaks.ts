import { formats } from '../cells'
import { figure } from '../table/column'
import { declareTable } from '../table/table'

/** Quantities that are quoted, with the margin wanted for each. */
export const breaks = declareTable({
  sheet: 'Breaks',
  row: 'Break',
  key: 'quantity',
  typed: {
    quantity: figure('Order of', 'liners', formats.count),
    margin: figure('Margin', 'share of the price', formats.share),
  },
  results: {},
})
