import type { Cell } from '../../book'
import type { Unit } from './table'

/** The unit above a heading, or beside a figure, where it is a text; that of money follows the cell of the currency. */
export function unitCell(unit: Unit, look: 'heading' | 'text' = 'heading'): Cell {
  if (typeof unit === 'string') return { value: unit, look }
  return { formula: unit.money === '' ? '=SetupCurrency' : `=SetupCurrency&"${unit.money}"`, look }
}
