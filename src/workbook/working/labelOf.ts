import type { RangeRead } from '../../formula/rangesRead'
import { beginsWithWord } from '../hasWords'
import type { ReadCell } from '../openBook'

/** How far up and to the left a label is looked for. */
const mostSteps = 200

/**
 * What the sheet itself calls these cells, empty where it does not say: the heading above their column, and the label
 * to the left of their row. In a table the label is the first text of the row; beside a single figure it is the nearest.
 */
export function labelOf({ top, left, bottom, right }: RangeRead, valueAt: (row: number, column: number) => ReadCell): string {
  const heading = left === right ? valuesAbove(top, left, valueAt).find(beginsWithWord) : undefined
  if (top !== bottom) return heading ?? ''
  const beside = textsBeside(top, left, valueAt)
  const label = heading === undefined ? beside[0] : beside.at(-1)
  return [label, heading].filter((text) => text !== undefined).join(', ')
}

/** From the cell upwards as far as cells are filled: in a column of figures, the first text is its heading. */
function valuesAbove(top: number, column: number, valueAt: (row: number, column: number) => ReadCell): readonly ReadCell[] {
  const values: ReadCell[] = []
  for (let row = top - 1; row >= Math.max(0, top - mostSteps); row -= 1) {
    const value = valueAt(row, column)
    if (value === null) break
    values.push(value)
  }
  return values
}

function textsBeside(row: number, left: number, valueAt: (row: number, column: number) => ReadCell): readonly string[] {
  const texts: string[] = []
  for (let column = left - 1; column >= Math.max(0, left - mostSteps); column -= 1) {
    const value = valueAt(row, column)
    if (beginsWithWord(value)) texts.push(value)
  }
  return texts
}
