import { isCellError } from '../../core/definition/problem'
import { sheets } from '../../wording/en/sheets'
import type { Cell, Sheet } from '../book'
import { freeName } from '../freeName'
import type { PlainFate } from './plainCells'

const words = sheets.copy

/** The sheet that says which cells became values, or stayed, and why. @param taken Names of sheets. */
export function listOfValues(fates: readonly PlainFate[], taken: readonly string[]): Sheet {
  const values = fates.filter(({ becomes }) => becomes !== 'formula')
  const lines = values.map(({ sheet, address, cell, because }): Cell[] => [
    { value: sheet },
    { value: address },
    isCellError(cell.value) ? { value: cell.value.code } : { value: cell.value ?? '' },
    { value: because === undefined ? '' : words.because(because) },
  ])
  return {
    name: freeName(words.sheet, taken),
    widths: [18, 10, 16, 90],
    frozenRows: 0,
    frozenColumns: 0,
    rows: [
      [{ value: words.sheet, look: 'title' }],
      [{ value: words.formulas(fates.length - values.length) }],
      [{ value: words.values(values.length) }],
      [],
      ...(values.length === 0 ? [] : [words.headings.map((value): Cell => ({ value, look: 'heading' })), ...lines]),
    ],
  }
}
