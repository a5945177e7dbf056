/**
 * The formula of each calculated column of a table, as a file stores it beside the cells: Excel fills it into a line
 * that is typed below the table, and knows of none where a file names none. It stands as in the first row of the data
 * (ISO/IEC 29500-1, 18.5.1.1), and an array formula is marked as one, or Excel would take one cell of each range in it.
 */
import { addressOf } from '../../formula/address'
import { filledInto } from '../../formula/relativeFormula'
import type { Sheet } from '../../workbook/book'
import type { RealTable } from '../../workbook/realTables'
import { isArrayFormula } from './arrayEvaluation'
import { isWholeFormula, toFileSpelling } from './formulaSpelling'

/** The library writes no marks, so a brace stands for it until the file is there. */
const mark = '{'

/** By column; undefined where one is typed, or has several formulas. */
export function calculatedColumns(
  { rows }: Sheet,
  { top, bottom, left, headings }: RealTable,
  namesOneCell: (name: string) => boolean,
): readonly (string | undefined)[] {
  return headings.map((_heading, index) => {
    const column = left + index
    const first = rows[top + 1]?.[column]?.formula
    if (first === undefined || !isWholeFormula(first)) return undefined
    for (let row = top + 2; row <= bottom; row++) {
      const filled = filledInto(first, addressOf(top + 1, column), addressOf(row, column))
      if (rows[row]?.[column]?.formula !== filled) return undefined
    }
    return (isArrayFormula(first, namesOneCell) ? mark : '') + toFileSpelling(first)
  })
}

/** @param xml Of a table, as the library wrote it. */
export function withArrayMarks(xml: string): string {
  return xml.replaceAll(`<calculatedColumnFormula>${mark}`, '<calculatedColumnFormula array="1">')
}
