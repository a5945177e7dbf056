import type { Cell } from '../../book'
import { heading } from '../cells'
import type { Unit } from './table'

/** The unit above a heading; that of money follows the cell of the currency. */
export function unitCell(unit: Unit): Cell {
  if (typeof unit === 'string') return heading(unit)
  return { formula: unit.money === '' ? '=SetupCurrency' : `=SetupCurrency&"${unit.money}"`, look: 'heading' }
}
