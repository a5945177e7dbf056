/** The cells below a heading, or beside the label of a figure. */
import type { Cell, CellContent } from '../../book'
import { result } from '../cells'
import type { Column } from './table'

/** @param value What was typed; left out, nothing was. */
export function typedCell({ format, allowed }: Column, value: CellContent | undefined): Cell {
  return {
    look: 'input',
    ...(value === undefined ? {} : { value }),
    ...(format === undefined ? {} : { format }),
    ...(allowed === undefined ? {} : { allowed }),
  }
}

/** @param formula Without "=". */
export function resultCell({ format }: Column, formula: string): Cell {
  return result(`=${formula}`, format)
}
